package org.cotyla.json;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.cotyla.evaluate.Engine;
import org.cotyla.evaluate.Recommendation;
import org.cotyla.finding.Case;
import org.cotyla.finding.Given;
import org.cotyla.issue.RejectedException;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("A plan that was kept as JSON")
class RecordedPlanTest {

  private static final Engine ENGINE = Engine.of(AnkleFields.protocol());
  private static final Recommendation ADVICE =
      ENGINE.evaluate(
          new Case(
              "an ankle",
              Optional.of("review"),
              List.of(
                  finding("days since injury", Given.of(new BigDecimal("3.5"))),
                  finding("date of injury", Given.of(java.time.LocalDate.of(2026, 3, 1))),
                  finding(
                      "swelling", new Given.OneOf(List.of(Given.of("mild"), Given.of("severe")))),
                  finding("able to walk", Given.of(false)),
                  finding(
                      "calf girth gain",
                      new Given.OneOf(
                          List.of(
                              Given.between(new BigDecimal("1"), new BigDecimal("2.5")),
                              Given.of(new BigDecimal("7"))))),
                  finding("remark", Given.of("slipped")))));
  private static final String JSON = RecommendationJson.write(ADVICE);

  @Test
  @DisplayName(
      "as a recommendation gives back every finding, the title, the stage and its protocol")
  void recommendation() {
    RecordedPlan recorded = RecordedPlan.read(JSON.getBytes(UTF_8));
    assertThat(ENGINE.evaluate(recorded.plan()).findings()).isEqualTo(ADVICE.findings());
    RecordedPlan.Origin origin = recorded.origin().orElseThrow();
    assertThat(origin.digest()).isEqualTo(ADVICE.protocolDigest());
    assertThat(origin.identifier()).isEqualTo("ankle");
    assertThat(origin.version()).isEqualTo("1.0");
  }

  @Test
  @DisplayName("as a case is that case, and says nothing of a protocol")
  void plainCase() {
    String json = "{\"title\": \"x\", \"findings\": {\"swelling\": \"mild\"}}";
    RecordedPlan recorded = RecordedPlan.read(json.getBytes(UTF_8));
    assertThat(recorded.plan()).isEqualTo(CaseJson.read(json));
    assertThat(recorded.origin()).isEmpty();
  }

  @ParameterizedTest(name = "{0} -> {1}")
  @CsvSource(
      delimiter = ';',
      value = {
        "\"format\": 1; \"format\": 2; error C028 case: the recommendation cannot be read: `format` is not 1",
        "\"digest\": \"sha; \"digest\": 4, \"d\": \"sha; error C028 case: the recommendation cannot be read: there is no text `digest` in protocol",
        "\"value\": 3.5; \"value\": [3.5]; error C028 case field `days since injury`: the recommendation cannot be read: what it can be is not said in a way that can be read",
        "\"low\": 1,; \"low\": null,; error C028 case field `calf girth gain`: the recommendation cannot be read: what it can be is not said in a way that can be read",
        "\"findings\": [; \"findings\": 3, \"other\": [; error C028 case: the recommendation cannot be read: `findings` in `case` is not a list"
      })
  @DisplayName("as a recommendation that was tampered with is refused with what is wrong")
  void tampered(String from, String to, String says) {
    assertThat(refused(text -> text.replaceFirst(quoted(from), to)))
        .isEqualTo(
            says
                + "\n      help: give the file as `recommend --format json` wrote it, or the case"
                + " itself");
  }

  @Test
  @DisplayName("as a recommendation that is cut short is refused as no JSON")
  void cutShort() {
    assertThat(refused(text -> text.substring(0, text.length() - 10)))
        .startsWith("error C028 case: the recommendation cannot be read: it is not sound JSON");
  }

  @Test
  @DisplayName("that is neither is refused as a case is")
  void neither() {
    assertThat(refused(text -> "[1]")).startsWith("error C021 case: the file holds a list");
    assertThat(refused(text -> "{\"a\": ".repeat(5000))).startsWith("error C02");
    assertThat(refused(text -> "")).startsWith("error C021 case: the file is empty");
  }

  private static String refused(UnaryOperator<String> change) {
    return catchThrowableOfType(
            RejectedException.class, () -> RecordedPlan.read(change.apply(JSON).getBytes(UTF_8)))
        .getMessage();
  }

  private static String quoted(String text) {
    return java.util.regex.Pattern.quote(text);
  }

  private static Case.Finding finding(String field, Given given) {
    return new Case.Finding(field, given);
  }
}
