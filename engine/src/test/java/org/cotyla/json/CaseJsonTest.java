package org.cotyla.json;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.cotyla.finding.Case;
import org.cotyla.finding.Datum;
import org.cotyla.finding.Findings;
import org.cotyla.finding.FindingsReader;
import org.cotyla.finding.Given;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("A case file")
class CaseJsonTest {

  private static final FindingsReader READER = new FindingsReader(AnkleFields.protocol());

  @Test
  @DisplayName("states title, stage and findings in the order of the file")
  void statesAll() {
    Case read =
        CaseJson.read(
            """
            {
              "title": "Fell off a kerb", "stage": "review", "note": "for people",
              "findings": {
                "swelling": "mild",
                "calf girth gain": {"value": 1.2, "unit": "cm", "about": "with a tape"},
                "days since injury": {"low": 3, "high": 5},
                "able to walk": true,
                "remark": null,
                "talar tilt": {"one of": [4, {"value": 6, "unit": "deg"}, {"low": 8, "high": 9}]}
              }
            }
            """);
    assertThat(read)
        .isEqualTo(
            new Case(
                "Fell off a kerb",
                Optional.of("review"),
                List.of(
                    new Case.Finding("swelling", Given.of("mild")),
                    new Case.Finding("calf girth gain", Given.of(new BigDecimal("1.2"), "cm")),
                    new Case.Finding(
                        "days since injury", Given.between(new BigDecimal(3), new BigDecimal(5))),
                    new Case.Finding("able to walk", Given.of(true)),
                    new Case.Finding(
                        "talar tilt",
                        new Given.OneOf(
                            List.of(
                                Given.of(new BigDecimal(4)),
                                Given.of(new BigDecimal(6), "deg"),
                                Given.between(new BigDecimal(8), new BigDecimal(9))))))));
  }

  @Test
  @DisplayName("is read to the last digit: no number passes through binary arithmetic")
  void isExact() {
    assertThat(value("{\"days since injury\": 0.1000000000000000000000000000000001}"))
        .isEqualTo("0.1000000000000000000000000000000001");
    assertThat(value("{\"days since injury\": 1.5e1}")).isEqualTo("15");
  }

  @Test
  @DisplayName("may spell a field's name with other case, separators and accents")
  void namesAreRelaxed() {
    assertThat(value("{\"Days_since-ïnjury\": 3}")).isEqualTo("3");
  }

  @Test
  @DisplayName("may start with a byte order mark")
  void mayStartWithAMark() {
    assertThat(CaseJson.read("\uFEFF{\"findings\": {}}").findings()).isEmpty();
  }

  @Test
  @DisplayName("leaves open what is null, in each of the forms")
  void nullIsNotRecorded() {
    String json =
        """
        {"title": null, "stage": null, "findings": {
          "swelling": null,
          "calf girth gain": {"value": null, "unit": "mm"},
          "days since injury": {"low": null, "high": null}}}
        """;
    assertThat(CaseJson.read(json)).isEqualTo(new Case("", Optional.empty(), List.of()));
  }

  @Test
  @DisplayName("that states an unusual value is read, and that is said")
  void remarksOnTheUnusual() {
    Findings findings = read("{\"days since injury\": 40}");
    assertThat(findings.remarks())
        .singleElement()
        .hasToString(
            "warning C030 case field `days since injury`: `40 d` is unusual (usually [0..21])\n"
                + "      help: check the value and its unit");
  }

  @Test
  @DisplayName("that is blank is a case in which nothing is recorded")
  void blankRoundTrip() {
    Case blank = CaseJson.read(BlankCaseJson.write(AnkleFields.protocol()));
    assertThat(blank).isEqualTo(new Case("", Optional.of("first visit"), List.of()));
    assertThat(READER.read(blank).data())
        .extracting(Datum::knowledge)
        .doesNotContain(Datum.Knowledge.RECORDED, Datum.Knowledge.PARTLY);
  }

  @Test
  @DisplayName("that is blank shows each given field in order, with unit, values and meaning")
  void blankShowsAll() {
    assertThat(BlankCaseJson.write(AnkleFields.protocol()))
        .isEqualTo(
            """
            {
              "title": "",
              "stage": "first visit",
              "note": "Replace null under `value` by what is known, and leave null what is not: it is never guessed. For a range write {\\"low\\": 30, \\"high\\": 40} instead of the object, for several possibilities {\\"one of\\": [...]}. State nothing that identifies a patient. Stages: first visit, review.",
              "findings": {
                "days since injury": {
                  "value": null, "unit": "d",
                  "about": "a number, 0 to 60, usually 0 to 21. Whole days."
                },
                "date of injury": {
                  "value": null,
                  "about": "a date such as 2026-01-31. The day itself."
                },

                "swelling": {
                  "value": null,
                  "about": "none, mild, moderate, severe. By eye."
                },
                "able to walk": {
                  "value": null,
                  "about": "true or false. Four steps."
                },
                "calf girth gain": {
                  "value": null, "unit": "mm",
                  "about": "a number, 0 to 80, usually 0 to 40. Against the other side."
                },
                "steps managed": {
                  "value": null,
                  "about": "a number, 0 to 1000. Counted."
                },
                "remark": {
                  "value": null,
                  "about": "a text. Anything else."
                },
                "talar tilt": {
                  "value": null, "unit": "deg",
                  "about": "a number, 0 to 40; from the stage review on. On the stress film."
                }
              }
            }
            """);
  }

  private static Findings read(String findings) {
    return READER.read(CaseJson.read("{\"findings\": " + findings + "}"));
  }

  private static String value(String findings) {
    return read(findings).datum("days since injury").orElseThrow().value().plain();
  }
}
