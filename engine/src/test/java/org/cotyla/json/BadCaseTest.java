package org.cotyla.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import java.nio.charset.StandardCharsets;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.cotyla.finding.FindingsReader;
import org.cotyla.issue.Issue;
import org.cotyla.issue.RejectedException;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

@DisplayName("A bad case is refused with a plain message that names the place and what to do")
class BadCaseTest {

  private static final FindingsReader READER = new FindingsReader(AnkleFields.protocol());

  @ParameterizedTest(name = "{0}")
  @MethodSource({"notJson", "wrongFormat", "wrongObject", "tooMuch", "wrongFinding"})
  void saysWhatIsWrong(String kind, String json, String message) {
    assertThat(complaint(json.getBytes(StandardCharsets.UTF_8))).isEqualTo(message.strip());
  }

  static Stream<Arguments> notJson() {
    return Stream.of(
        bad(
            "an empty file",
            "",
            """
            error C021 case: the file is empty
                  help: a case is an object such as {"findings": {...}}
            """),
        bad(
            "a file that ends too early",
            "{\"findings\": {\n  \"swelling\": \"mild\"",
            """
            error C020 case: the text ends at line 2 before the JSON does
                  help: a closing }, ] or quotation mark is missing
            """),
        bad(
            "a comma too many",
            "{\"findings\": {\"swelling\": \"mild\",}}",
            """
            error C020 case: this is not JSON at line 1, column 34
                  help: often a comma is missing or too many, or a name or a text lacks its quotation marks
            """),
        bad(
            "a comma that is missing",
            "{\"findings\": {\n\"swelling\": \"mild\"\n\"able to walk\": true}}",
            """
            error C020 case: this is not JSON at line 3, column 1
                  help: often a comma is missing or too many, or a name or a text lacks its quotation marks
            """),
        bad(
            "a text without quotation marks",
            "{\"findings\": {\"swelling\": mild}}",
            """
            error C020 case: this is not JSON at line 1, column 27
                  help: often a comma is missing or too many, or a name or a text lacks its quotation marks
            """),
        bad(
            "a comment",
            "{\"findings\": {} // nothing yet\n}",
            """
            error C020 case: this is not JSON at line 1, column 17
                  help: often a comma is missing or too many, or a name or a text lacks its quotation marks
            """),
        bad(
            "a number with a decimal comma",
            "{\"findings\": {\"days since injury\": 3,5}}",
            """
            error C020 case: this is not JSON at line 1, column 38
                  help: often a comma is missing or too many, or a name or a text lacks its quotation marks
            """),
        bad(
            "two cases in one file",
            "{\"findings\": {}}\n{\"findings\": {}}",
            """
            error C020 case: the text goes on at line 2 after its end
                  help: one file holds one case
            """));
  }

  static Stream<Arguments> wrongFormat() {
    return Stream.of(
        bad(
            "a list instead of a case",
            "[1, 2]",
            """
            error C021 case: the file holds a list
                  help: a case is an object such as {"findings": {...}}
            """),
        bad(
            "a case without findings",
            "{\"title\": \"x\"}",
            """
            error C021 case: there is no `findings`
                  help: a case is an object such as {"findings": {...}}
            """),
        bad(
            "a misspelt key",
            "{\"titel\": \"x\", \"findings\": {}}",
            """
            error C022 case: `titel` is not a key of the case format
                  help: did you mean `title`? (title, stage, note, findings)
            """),
        bad(
            "a finding outside of the findings",
            "{\"days since injury\": 3, \"findings\": {}}",
            """
            error C022 case: `days since injury` is not a key of the case format
                  help: if it is a field of the protocol, it stands inside `findings`
            """),
        bad(
            "a title that is a number",
            "{\"title\": 7, \"findings\": {}}",
            """
            error C023 case: `title` is a number
                  help: expected a text
            """),
        bad(
            "a stage that is a list",
            "{\"stage\": [\"review\"], \"findings\": {}}",
            """
            error C023 case: `stage` is a list
                  help: expected a text
            """),
        bad(
            "findings that are a list",
            "{\"findings\": [\"swelling\"]}",
            """
            error C023 case: `findings` is a list
                  help: expected an object with each field's name and value: {"name of a field": 12}
            """),
        bad(
            "a key that stands twice",
            "{\"title\": \"a\", \"title\": \"b\", \"findings\": {}}",
            """
            error C024 case: the key `title` stands twice
                  help: keep one of them
            """),
        bad(
            "a field that stands twice in the same spelling",
            "{\"findings\": {\"swelling\": \"mild\", \"swelling\": \"severe\"}}",
            """
            error C024 case field `swelling`: the key `swelling` stands twice
                  help: keep one of them
            """),
        bad(
            "a finding that is a list",
            "{\"findings\": {\"swelling\": [\"mild\", \"severe\"]}}",
            """
            error C023 case field `swelling`: the finding is a list
                  help: for one of several, it is not known which, write {"one of": [...]}
            """));
  }

  static Stream<Arguments> wrongObject() {
    return Stream.of(
        finding(
            "a misspelt part of a finding",
            "\"calf girth gain\": {\"vlaue\": 12}",
            """
            error C022 case field `calf girth gain`: `vlaue` is not a key of the case format
                  help: did you mean `value`? (value, unit, low, high, one of, about)
            """),
        finding(
            "a part that stands twice",
            "\"calf girth gain\": {\"value\": 12, \"value\": 13}",
            """
            error C024 case field `calf girth gain`: the key `value` stands twice
                  help: keep one of them
            """),
        finding(
            "a unit that is a number",
            "\"calf girth gain\": {\"value\": 12, \"unit\": 10}",
            """
            error C023 case field `calf girth gain`: `unit` is a number
                  help: expected a text
            """),
        finding(
            "an object without a value",
            "\"calf girth gain\": {\"unit\": \"mm\"}",
            """
            error C027 case field `calf girth gain`: the object states no value
                  help: write {"value": 34, "unit": "mm"}, {"low": 30, "high": 40} or {"one of": [...]}
            """),
        finding(
            "a value and a range at once",
            "\"calf girth gain\": {\"value\": 12, \"low\": 10, \"high\": 14}",
            """
            error C027 case field `calf girth gain`: the object mixes two forms
                  help: write {"value": 34, "unit": "mm"}, {"low": 30, "high": 40} or {"one of": [...]}
            """),
        finding(
            "a unit for a word",
            "\"swelling\": {\"value\": \"mild\", \"unit\": \"mm\"}",
            """
            error C027 case field `swelling`: a unit goes with a number only
                  help: write {"value": 34, "unit": "mm"}, {"low": 30, "high": 40} or {"one of": [...]}
            """),
        finding(
            "a range without its upper end",
            "\"calf girth gain\": {\"low\": 10}",
            """
            error C027 case field `calf girth gain`: the range has no `high`
                  help: state both ends; an end that is not known is the end of what is allowed
            """),
        finding(
            "a range whose end is a text",
            "\"calf girth gain\": {\"low\": 10, \"high\": \"much\"}",
            """
            error C023 case field `calf girth gain`: `high` is a text
                  help: expected a number
            """),
        finding(
            "alternatives that are no list",
            "\"swelling\": {\"one of\": \"mild\"}",
            """
            error C023 case field `swelling`: `one of` is a text
                  help: expected a list: ["a", "b"]
            """),
        finding(
            "an alternative that is null",
            "\"swelling\": {\"one of\": [\"mild\", null]}",
            """
            error C023 case field `swelling`: an alternative is null
                  help: expected a number, a text, true or false
            """),
        finding(
            "an alternative that states nothing",
            "\"calf girth gain\": {\"one of\": [{\"value\": null}, 3]}",
            """
            error C027 case field `calf girth gain`: an alternative states nothing
                  help: write {"value": 34, "unit": "mm"}, {"low": 30, "high": 40} or {"one of": [...]}
            """));
  }

  static Stream<Arguments> tooMuch() {
    return Stream.of(
        bad(
            "nesting without end",
            "{\"findings\": {\"swelling\": " + "[".repeat(100_000),
            """
            error C023 case field `swelling`: the finding is a list
                  help: for one of several, it is not known which, write {"one of": [...]}
            error C026 case: lists and objects are nested deeper than 20 levels
                  help: a case needs no more than 5
            """),
        bad(
            "a file of more than 1 MiB",
            "{\"findings\": {}" + " ".repeat(1 << 20) + "}",
            """
            error C025 case: the file is larger than 1 MiB
                  help: a case with every field stated needs some kilobytes
            """),
        finding(
            "findings without end",
            IntStream.range(0, 3_000)
                .mapToObj(i -> "\"field " + i + "\": null")
                .collect(Collectors.joining(", ")),
            """
            error C025 case: there are more than 2000 keys
                  help: a case has far fewer
            """),
        finding(
            "a number with too many digits",
            "\"days since injury\": 3." + "1".repeat(40),
            """
            error C025 case field `days since injury`: the number `3.1111111111111111111111111111111111111111` is too long or too large
                  help: a number has at most 34 digits and an exponent up to 6144
            """),
        finding(
            "a number with an absurd exponent",
            "\"days since injury\": 1e999999999",
            """
            error C025 case field `days since injury`: the number `1e999999999` is too long or too large
                  help: a number has at most 34 digits and an exponent up to 6144
            """),
        finding(
            "a text without end",
            "\"remark\": \"" + "a".repeat(10_001) + "\"",
            """
            error C025 case field `remark`: the finding has 10001 characters
                  help: at most 10000
            """),
        finding(
            "a name without end",
            "\"" + "n".repeat(201) + "\": 1",
            """
            error C025 case field `nnnnnnnnnnnnnnnnnnnnnnnnnnnnnnnnnnnnnnnnnnnnnnnnnnnnnnnnn...`: the name has 201 characters
                  help: at most 200
            """));
  }

  static Stream<Arguments> wrongFinding() {
    return Stream.of(
        finding(
            "a misspelt field",
            "\"sweling\": \"mild\"",
            """
            error C001 case field `sweling`: this protocol has no such field
                  help: did you mean `swelling`?
            """),
        finding(
            "a field that is like no other",
            "\"blood group\": \"0\"",
            """
            error C001 case field `blood group`: this protocol has no such field
            """),
        finding(
            "a field in two spellings",
            "\"able to walk\": true, \"Able_To-Walk\": false",
            """
            error C002 case field `Able_To-Walk`: the field is stated twice, also as `able to walk`
            """),
        finding(
            "what the protocol decides itself",
            "\"grade\": \"bad\"",
            """
            error C003 case field `grade`: the protocol decides this itself, so a case cannot state it
            """),
        finding(
            "a word for a number",
            "\"days since injury\": \"a week\"",
            """
            error C004 case field `days since injury`: `a week` is not a number
                  help: write a number in d
            """),
        finding(
            "a number for yes or no",
            "\"able to walk\": 1",
            """
            error C004 case field `able to walk`: `1` is not a yes/no
                  help: write yes or no
            """),
        finding(
            "a number as large as the format holds for yes or no",
            "\"able to walk\": 1e6000",
            """
            error C004 case field `able to walk`: `1E+6000` is not a yes/no
                  help: write yes or no
            """),
        finding(
            "a date in another order",
            "\"date of injury\": \"31.01.2026\"",
            """
            error C004 case field `date of injury`: `31.01.2026` is not a date
                  help: write a date, as 2026-01-31
            """),
        finding(
            "a day that no calendar has",
            "\"date of injury\": \"2026-02-30\"",
            """
            error C004 case field `date of injury`: `2026-02-30` is not a date
                  help: write a date, as 2026-01-31
            """),
        finding(
            "a number for a text",
            "\"remark\": 12",
            """
            error C004 case field `remark`: `12` is not a text
                  help: write a text
            """),
        finding(
            "a range for a choice",
            "\"swelling\": {\"low\": 1, \"high\": 2}",
            """
            error C004 case field `swelling`: a range is not a choice
                  help: write none, mild, moderate, severe
            """),
        finding(
            "a misspelt choice",
            "\"swelling\": \"sevre\"",
            """
            error C005 case field `swelling`: `sevre` is not a value of it
                  help: did you mean `severe`? (none, mild, moderate, severe)
            """),
        finding(
            "a value that is not allowed",
            "\"days since injury\": -1",
            """
            error C006 case field `days since injury`: `-1 d` is outside what is allowed
                  help: allowed: [0..60] d
            """),
        finding(
            "a value that is not allowed once it is converted",
            "\"calf girth gain\": {\"value\": 9, \"unit\": \"cm\"}",
            """
            error C006 case field `calf girth gain`: `90 mm` is outside what is allowed
                  help: allowed: [0..80] mm
            """),
        finding(
            "a unit of another kind",
            "\"calf girth gain\": {\"value\": 9, \"unit\": \"kg\"}",
            """
            error C007 case field `calf girth gain`: the unit `kg` does not fit
                  help: this field is in mm
            """),
        finding(
            "a unit that nobody knows",
            "\"calf girth gain\": {\"value\": 9, \"unit\": \"MM\"}",
            """
            error C008 case field `calf girth gain`: `MM` is not a unit of UCUM
                  help: this field is in mm; capitals matter
            """),
        bad(
            "a stage that the protocol lacks",
            "{\"stage\": \"reveiw\", \"findings\": {}}",
            """
            error C009 case: `reveiw` is not a stage of this protocol
                  help: did you mean `review`? (first visit, review)
            """),
        finding(
            "a finding of a later stage",
            "\"talar tilt\": 12",
            """
            error C010 case field `talar tilt`: this is a finding of the stage `review`, but the case is at `first visit`
                  help: state the stage of the case as `review`
            """),
        finding(
            "no alternative at all",
            "\"swelling\": {\"one of\": []}",
            """
            error C011 case field `swelling`: the list of alternatives is empty
            """),
        finding(
            "a range the wrong way round",
            "\"calf girth gain\": {\"low\": 40, \"high\": 30}",
            """
            error C011 case field `calf girth gain`: the range from 40 to 30 is empty
            """),
        finding(
            "a decimal comma in a text",
            "\"days since injury\": \"3,5\"",
            """
            error C012 case field `days since injury`: `3,5` has a comma
                  help: write a decimal with a point, as 3.5
            """));
  }

  @Test
  @DisplayName("Every fault of a file is listed at once, those of its form and those of its end")
  void listsAll() {
    String json =
        """
        {"titel": "x", "findings": {"swelling": ["mild"], "calf girth gain": {"low": 3}}
        """;
    assertThat(codes(json)).containsExactly("C022", "C023", "C027", "C020");
  }

  @Test
  @DisplayName("Every fault of the findings is listed at once")
  void listsAllFindings() {
    String json =
        """
        {"stage": "x", "findings": {"sweling": "mild", "able to walk": 2, "days since injury": 99}}
        """;
    assertThat(codes(json)).containsExactly("C009", "C001", "C004", "C006");
  }

  @Test
  @DisplayName("A file in another encoding than UTF-8 is refused")
  void refusesOtherEncodings() {
    byte[] latin =
        "{\"title\": \"Köhler\", \"findings\": {}}".getBytes(StandardCharsets.ISO_8859_1);
    assertThat(complaint(latin))
        .isEqualTo(
            "error C020 case: the file is not UTF-8 text\n"
                + "      help: save it as plain text with the encoding UTF-8");
    byte[] wide = "{\"findings\": {}}".getBytes(StandardCharsets.UTF_16);
    assertThat(complaint(wide)).startsWith("error C020 case: the file is not UTF-8 text");
  }

  private static Arguments bad(String kind, String json, String message) {
    return arguments(kind, json, message);
  }

  private static Arguments finding(String kind, String finding, String message) {
    return arguments(kind, "{\"findings\": {" + finding + "}}", message);
  }

  private static String complaint(byte[] json) {
    return rejection(json).issues().stream().map(Issue::plain).collect(Collectors.joining("\n"));
  }

  private static Stream<String> codes(String json) {
    return rejection(json.getBytes(StandardCharsets.UTF_8)).issues().stream().map(Issue::code);
  }

  private static RejectedException rejection(byte[] json) {
    return catchThrowableOfType(RejectedException.class, () -> READER.read(CaseJson.read(json)));
  }
}
