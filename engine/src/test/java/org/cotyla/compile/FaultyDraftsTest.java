package org.cotyla.compile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.cotyla.issue.Issue;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class FaultyDraftsTest {

  private static Arguments fault(
      String what, UnaryOperator<SampleDraft> edit, String line, String help) {
    return arguments(what, edit, line, help);
  }

  static Stream<Arguments> faultySheets() {
    return Stream.of(
        fault(
            "no title",
            d -> d.without("title"),
            "W101 sample: the sheet Protocol lacks the key `title`",
            ""),
        fault(
            "an empty caution",
            d -> d.about("caution", "-"),
            "W101 Protocol!B9: `caution` has no value",
            ""),
        fault(
            "an unknown status",
            d -> d.about("status", "drafty"),
            "W102 Protocol!B4: `drafty` is not a status",
            "did you mean `draft`? (draft, in force, superseded, withdrawn)"),
        fault(
            "a date in another order",
            d -> d.about("review due", "31.12.2026"),
            "W103 Protocol!B6: `31.12.2026` is not a date for `review due`",
            "write year-month-day, as 2026-01-31"),
        fault(
            "a reason without name",
            d -> d.add("Reasons", "-", "M"),
            "W230 Reasons!A2: the reason has no name",
            ""),
        fault(
            "a reason twice",
            d -> d.add("Reasons", "own way", "M").add("Reasons", "Own-Way", "M"),
            "W231 Reasons!A3: the reason `Own-Way` already stands at Reasons!A2",
            ""),
        fault(
            "an outcome without meaning",
            d -> d.add("Outcomes", "broke", "event", ""),
            "W232 Outcomes!C2: outcome `broke` has no meaning",
            ""),
        fault(
            "an outcome that counts in no known way",
            d -> d.add("Outcomes", "broke", "evnt", "M"),
            "W233 Outcomes!B2: `evnt` does not say how the outcome counts",
            "did you mean `event`? (event, censoring)"),
        fault(
            "a stage twice",
            d -> d.about("stages", "planning, theatre, planning"),
            "W104 Protocol!B10: stage `planning` stands twice",
            ""),
        fault(
            "a field without name",
            d -> d.set("Fields", 0, "name", "").set("Calculations", 1, "expression", "1"),
            "W110 Fields!A2: the field has no name",
            ""),
        fault(
            "two names that are one",
            d -> d.add("Fields", "W-i_d th", "given", "number", "-", "-", "-", "-", "-", "M", "S"),
            "W111 Fields!A7: the name `W-i_d th` is already used at Fields!A2",
            "case, spaces, underscores, hyphens and accents make no difference in names"),
        fault(
            "a name with a sign",
            d -> d.add("Fields", "a+b", "given", "number", "-", "-", "-", "-", "-", "M", "S"),
            "W112 Fields!A7: the name `a+b` contains `+`",
            "use plain words with spaces"),
        fault(
            "a name with a word of formulas",
            d -> d.add("Fields", "Between", "given", "number", "-", "-", "-", "-", "-", "M", "S"),
            "W112 Fields!A7: the name `Between` has a meaning of its own in cells",
            "use plain words with spaces"),
        fault(
            "a name that starts as a condition does",
            d -> d.add("Fields", "if firm", "given", "yes/no", "-", "-", "-", "-", "-", "M", "S"),
            "W112 Fields!A7: the name `if firm` starts with `if`, which begins a condition in"
                + " cells",
            "use plain words with spaces"),
        fault(
            "a name that starts with a digit",
            d -> d.add("Calculations", "2 times", "2", "-", "M", "S"),
            "W112 Calculations!A4: the name `2 times` does not start with a letter",
            "use plain words with spaces"),
        fault(
            "an unknown kind",
            d -> d.set("Fields", 1, "kind", "givn"),
            "W114 Fields!B3: `givn` is not a kind of field",
            "did you mean `given`? (given, derived)"),
        fault(
            "an unknown type",
            d -> d.set("Fields", 2, "type", "boolean"),
            "W115 Fields!C4: `boolean` is not a type of field",
            "expected one of: number, choice, yes/no, text, date"),
        fault(
            "an unknown unit",
            d -> d.set("Fields", 0, "unit", "millimetres"),
            "W116 Fields!D2: `millimetres` is not a unit of UCUM",
            "for example mm, cm, mg/L, %, deg, a (years); capitals matter"),
        fault(
            "a unit of a choice",
            d -> d.set("Fields", 1, "unit", "mm"),
            "W116 Fields!D3: `mm` is a unit, but only a number has one",
            ""),
        fault(
            "a choice twice",
            d -> d.set("Fields", 1, "allowed", "low, high, LOW"),
            "W117 Fields!E3: `LOW` stands twice in the values of `grade`",
            ""),
        fault(
            "an empty choice",
            d -> d.set("Fields", 1, "allowed", "low,, high"),
            "W117 Fields!E3: an allowed value of `grade` is empty",
            ""),
        fault(
            "an interval that is not one",
            d -> d.set("Fields", 0, "allowed", "0 to 120"),
            "W117 Fields!E2: allowed values of `width`: `0 to 120` goes on with `to 120` after a"
                + " complete test",
            "separate alternatives with a comma and a space"),
        fault(
            "an empty usual range",
            d -> d.set("Fields", 0, "usual", "[80..10]"),
            "W118 Fields!F2: usual values of `width`: `[80..10]` is an interval whose low end is"
                + " above its high end",
            "write the smaller value first"),
        fault(
            "a measurement error below 0",
            d -> d.set("Fields", 0, "measurement error", "-3"),
            "W124 Fields!K2: `-3` is not a measurement error",
            "write a number from 0 up, in the field's unit, or - for none"),
        fault(
            "a measurement error with a unit",
            d -> d.set("Fields", 0, "measurement error", "3 mm"),
            "W124 Fields!K2: `3 mm` is not a measurement error",
            "write a number from 0 up, in the field's unit, or - for none"),
        fault(
            "a measurement error of a choice",
            d -> d.set("Fields", 1, "measurement error", "1"),
            "W124 Fields!K3: `grade` has a measurement error, but only a number has one",
            "clear the cell, or write -"),
        fault(
            "an unknown stage",
            d -> d.set("Fields", 2, "stage", "theater"),
            "W119 Fields!G4: `theater` is not a stage of this protocol",
            "did you mean `theatre`? (planning, theatre)"),
        fault(
            "no meaning",
            d -> d.set("Fields", 0, "meaning", "-"),
            "W120 Fields!I2: field `width` has no meaning",
            ""),
        fault(
            "no source",
            d -> d.set("Fields", 0, "source", ""),
            "W121 Fields!J2: field `width` has no source",
            "name a key of the sheet Sources"),
        fault(
            "an unknown source",
            d -> d.set("Fields", 0, "source", "S, T"),
            "W122 Fields!J2: source `T` does not stand in the sheet Sources",
            ""),
        fault(
            "an option without ranking",
            d -> d.set("Options", 1, "ranking", "").cell(2, 1, 3, "rest"),
            "W130 Options!A3: the option has no ranking",
            ""),
        fault(
            "an option twice",
            d -> d.add("Options", "plan", "Rest", "M", "-", "-", "S"),
            "W131 Options!B4: the option `Rest` already stands at Options!B2",
            ""),
        fault(
            "an option with a comma",
            d -> d.add("Options", "plan", "wait, and see", "M", "-", "-", "S"),
            "W132 Options!B4: the option `wait, and see` has a comma in its name",
            ""),
        fault(
            "an option without meaning",
            d -> d.set("Options", 0, "meaning", ""),
            "W133 Options!C2: option `rest` has no meaning",
            ""),
        fault(
            "a lead time in words",
            d -> d.set("Options", 0, "lead time", "a week"),
            "W134 Options!E2: `a week` is not a lead time",
            "write a whole number of days from 0 to 9999, or -"),
        fault(
            "a formula that cannot be read",
            d -> d.set("Calculations", 1, "expression", "wdth * 2"),
            "W140 Calculations!B3: `wdth` is neither a value nor a name that is known here",
            "did you mean `width`?"),
        fault(
            "a source without key",
            d -> d.add("Sources", "", "Another", "-", "low"),
            "W190 Sources!A3: the source has no key",
            ""),
        fault(
            "an unknown certainty",
            d -> d.set("Sources", 0, "certainty", "hi"),
            "W191 Sources!D2: `hi` is not a certainty",
            "expected one of: high, moderate, low, very low, common practice, house opinion, from"
                + " memory"),
        fault(
            "a source without citation",
            d -> d.set("Sources", 0, "citation", ""),
            "W192 Sources!B2: source `S` has no citation",
            ""),
        fault(
            "a source key twice",
            d -> d.add("Sources", "s", "Another", "-", "low"),
            "W193 Sources!A3: source key `s` is already used at Sources!A2",
            "give one of them another key"));
  }

  static Stream<Arguments> faultyDecisions() {
    return Stream.of(
        fault(
            "no because",
            d -> d.cell(0, 0, 4, "-"),
            "W123 Class!E8: row `K-1` has no because",
            "give its reason in one sentence"),
        fault(
            "an unknown hit policy",
            d -> d.head(0, 1, "X"),
            "W150 Class!B2: `X` is not a hit policy",
            "expected one of: U, A, P, F, R, O, C, C+, C<, C>, C#"),
        fault(
            "no question",
            d -> d.head(0, 2, ""),
            "W151 Class!B3: decision `Class` does not say what it asks",
            ""),
        fault(
            "an unknown ranking",
            d -> d.head(2, 3, "plans"),
            "W152 Votes!B4: `plans` is not a ranking of the sheet Options",
            "did you mean `plan`? (plan)"),
        fault(
            "an unknown way to show",
            d -> d.head(0, 4, "headlines"),
            "W153 Class!B5: `headlines` is not a way to show a decision",
            "did you mean `headline`? (headline, list, working)"),
        fault(
            "an unknown input",
            d -> d.when(1, 0, "clas"),
            "W154 Load!B7: `clas` is neither a field, a calculation nor a decision's result",
            "did you mean `class`?"),
        fault(
            "a list as input",
            d -> d.head(0, 1, "C"),
            "W154 Load!B7: `class` is a list, which no test can read",
            "test the findings that lead to it"),
        fault(
            "an output that is given",
            d -> d.then(1, 0, "width"),
            "W155 Load!C7: `width` is given by the case, so no decision can give it",
            "make its kind derived in the sheet Fields"),
        fault(
            "an output that is no field",
            d -> d.then(1, 0, "laod"),
            "W155 Load!C7: `laod` is not a field",
            "did you mean `load`? (class, load)"),
        fault(
            "an output given twice",
            d ->
                d.then(1, 0, "class")
                    .head(1, 1, "U")
                    .cell(1, 0, 2, "A")
                    .cell(1, 1, 2, "B")
                    .when(1, 0, "width")
                    .cell(1, 0, 1, "1")
                    .cell(1, 1, 1, "2"),
            "W156 Load!C7: `class` is already given at Class!D7",
            "each derived field is the result of exactly one decision"),
        fault(
            "a derived field that nothing gives",
            d -> d.add("Fields", "spare", "derived", "number", "-", "-", "-", "-", "-", "M", "S"),
            "W157 Fields!A7: `spare` is derived, but no decision gives it",
            "add it as a then column, or make its kind given"),
        fault(
            "votes without points",
            d -> d.then(2, 2, "point"),
            "W158 Votes!B1: `Votes` votes, so its then columns must be option, effect, points",
            "it has: option, effect, point"),
        fault(
            "votes that are summed",
            d -> d.head(2, 1, "C+"),
            "W159 Votes!B2: a sheet that votes cannot have the hit policy C+",
            "use C, or U, A or F when only one row may speak"),
        fault(
            "votes by priority, which they have not",
            d -> d.head(2, 1, "P"),
            "W159 Votes!B2: a sheet that votes cannot have the hit policy P",
            "use C, or U, A or F when only one row may speak"),
        fault(
            "a row without id",
            d -> d.cell(0, 0, 0, ""),
            "W160 Class!A8: the row has no id",
            "give it an id that was never used"),
        fault(
            "a row id twice, in two sheets",
            d -> d.cell(1, 0, 0, "k 1"),
            "W161 Load!A8: row id `k 1` is already used at Class!A8",
            "give one of the two an id that was never used"),
        fault(
            "a choice that is misspelt",
            d -> d.cell(0, 0, 2, "lwo"),
            "W162 Class!C8: `lwo` is not a value of `grade`",
            "did you mean `low`? (low, high)"),
        fault(
            "an empty test",
            d -> d.cell(0, 1, 2, ""),
            "W162 Class!C9: the test is empty",
            "write - for anything"),
        fault(
            "a difference where a range is meant",
            d -> d.cell(0, 1, 1, "7-15"),
            "W171 Class!B9: `7-15` is arithmetic with two numbers",
            "write the number itself; a range is written [7..15]"),
        fault(
            "a constant in another unit than what it is compared with",
            d -> d.set("Calculations", 0, "unit", "cm"),
            "W172 Class!B8: `house line` is in cm where `width` is in mm",
            "state both in one unit"),
        fault(
            "two names of two units in one sum",
            d ->
                d.add("Calculations", "reserve", "4", "cm", "M", "S")
                    .set("Calculations", 1, "expression", "width + reserve"),
            "W174 Calculations!B3: `width` is in mm, but `reserve`, which it is put together with,"
                + " is in cm",
            "state both in one unit, or multiply by what turns the one into the other"),
        fault(
            "a formula in another unit than what it is compared with",
            d ->
                d.add("Calculations", "reserve", "4", "cm", "M", "S")
                    .cell(0, 1, 1, "<= reserve + 1"),
            "W172 Class!B9: `reserve` is in cm where `width` is in mm",
            "state both in one unit"),
        fault(
            "a result that its field does not allow",
            d ->
                d.add("Fields", "size", "derived", "number", "-", "[1..3]", "-", "-", "-", "M", "S")
                    .table("Size", "U", "class", "size")
                    .row(3, "Z-1", "A", "4"),
            "W175 Size!C8: `4` is outside what `size` can be",
            "allowed: [1..3]; check the number, and the allowed values in the sheet Fields"),
        fault(
            "a date that a spreadsheet program made of a constant",
            d -> d.set("Calculations", 1, "expression", "2026-05-03"),
            "W141 Calculations!B3: `2026-05-03` gives a date, but the calculation has the unit mm",
            "write a number; if a spreadsheet program made a date of it, give the cell the format"
                + " Text"),
        fault(
            "a result that is misspelt",
            d -> d.cell(0, 0, 3, "D"),
            "W163 Class!D8: `D` is not a value of `class`",
            "expected one of: A, B, C"),
        fault(
            "an unknown option",
            d -> d.cell(2, 0, 3, "rset"),
            "W164 Votes!D8: `rset` is not an option of this ranking",
            "did you mean `rest`? (rest, brace)"),
        fault(
            "an unknown effect",
            d -> d.cell(2, 0, 4, "favor"),
            "W165 Votes!E8: `favor` is not an effect",
            "did you mean `favour`? (favour, oppose, rule out)"),
        fault(
            "points below 0",
            d -> d.cell(2, 0, 5, "-2"),
            "W166 Votes!F8: `-2` is not a number of points",
            "points are a number above 0 or a house constant; the effect says for or against"),
        fault(
            "points that change with the case",
            d -> d.cell(2, 0, 5, "twice"),
            "W166 Votes!F8: `twice` is not a number of points",
            "points are a number above 0 or a house constant; the effect says for or against"),
        fault(
            "points in words, for which no field is suggested",
            d -> d.cell(2, 0, 5, "firn"),
            "W166 Votes!F8: `firn` is neither a value nor a name that is known here",
            "points are a number above 0 or a house constant; the effect says for or against"),
        fault(
            "a misspelt constant as points",
            d -> d.cell(2, 0, 5, "house lne"),
            "W166 Votes!F8: `house lne` is neither a value nor a name that is known here",
            "did you mean `house line`?"),
        fault(
            "points for ruling out",
            d -> d.cell(2, 1, 5, "3"),
            "W166 Votes!F9: a row that rules out gives no points, but `3` stands here",
            "write -"),
        fault(
            "priority without an order",
            d -> d.head(1, 1, "P"),
            "W167 Load!B2: hit policy P needs a result with an order of priority",
            "make one result a choice whose allowed values stand in order, highest first"),
        fault(
            "the sum of a choice",
            d -> d.head(0, 1, "C+"),
            "W168 Class!D7: hit policy C+ cannot work on `class`",
            "its type must be number"),
        fault(
            "the count of a choice",
            d -> d.head(0, 1, "C#"),
            "W168 Class!D7: hit policy C# cannot work on `class`",
            "its type must be number"),
        fault(
            "a default row with a test",
            d -> d.row(0, "default", "-", "low", "B"),
            "W169 Class!C11: the default row has a test `low`",
            "write -"),
        fault(
            "two default rows",
            d -> d.row(0, "default", "-", "-", "B").row(0, "Default", "-", "-", "A"),
            "W169 Class!A12: the sheet has two default rows",
            ""),
        fault(
            "a default row among votes",
            d -> d.row(2, "default", "-", "-", "rest", "favour", "1"),
            "W169 Votes!A10: a sheet that votes has no default row",
            ""),
        fault("no rows", d -> d.noRows(1), "W170 Load!B1: decision `Load` has no rows", ""),
        fault(
            "a circle of calculations",
            d ->
                d.set("Calculations", 0, "expression", "twice")
                    .set("Calculations", 1, "expression", "house line * 2"),
            "W180 Calculations!A2: a circle: `house line` needs `twice` needs `house line`",
            "let one of them be decided without the next"),
        fault(
            "a circle of decisions",
            d -> d.when(0, 1, "load").cell(0, 0, 2, "1").cell(0, 2, 2, "2"),
            "W180 Class!B1: a circle: `Class` needs `Load` needs `Class`",
            "let one of them be decided without the next"),
        fault(
            "a ranking that hangs on its own first place",
            d -> d.when(2, 1, "first plan").cell(2, 1, 2, "rest"),
            "W180 Votes!B1: a circle: `Votes` needs `plan` needs `Votes`",
            "let one of them be decided without the next"),
        fault(
            "a list inside a formula",
            d ->
                d.head(1, 1, "C")
                    .cell(1, 1, 2, "3")
                    .set("Calculations", 1, "expression", "load + 1"),
            "W154 Calculations!A3: `load` is a list, which no formula can read",
            "use the findings that lead to it"),
        fault(
            "a list inside a test",
            d -> d.head(1, 1, "C").when(2, 1, "width").cell(2, 0, 2, "> load").cell(2, 1, 2, "-"),
            "W154 Votes!C8: `load` is a list, which no formula can read",
            "use the findings that lead to it"));
  }

  @Test
  @DisplayName("The sample itself is sound, so that each fault is the only one")
  void sound() {
    assertThat(new SampleDraft().issues()).isEmpty();
  }

  @ParameterizedTest(name = "{0}")
  @DisplayName("A faulty sheet is refused with code, place, message and help")
  @MethodSource("faultySheets")
  void sheets(String what, UnaryOperator<SampleDraft> edit, String line, String help) {
    assertOnlyFault(edit, line, help);
  }

  @ParameterizedTest(name = "{0}")
  @DisplayName("A faulty decision is refused with code, place, message and help")
  @MethodSource("faultyDecisions")
  void decisions(String what, UnaryOperator<SampleDraft> edit, String line, String help) {
    assertOnlyFault(edit, line, help);
  }

  private static void assertOnlyFault(UnaryOperator<SampleDraft> edit, String line, String help) {
    List<Issue> issues = edit.apply(new SampleDraft()).issues();
    assertThat(issues).extracting(FaultyDraftsTest::line).contains(line);
    Issue found =
        issues.stream().filter(issue -> line(issue).equals(line)).findFirst().orElseThrow();
    assertThat(found.help().orElse("")).isEqualTo(help);
  }

  private static String line(Issue issue) {
    return issue.code() + " " + issue.place().plain() + ": " + issue.message();
  }

  @Test
  @DisplayName("All faults are reported at once, each in its own cell")
  void allAtOnce() {
    List<Issue> issues =
        new SampleDraft()
            .about("status", "?")
            .set("Fields", 0, "unit", "?")
            .set("Options", 0, "lead time", "?")
            .set("Calculations", 0, "expression", "?")
            .set("Sources", 0, "certainty", "?")
            .cell(0, 0, 1, "> ?")
            .cell(0, 1, 3, "?")
            .cell(1, 0, 4, "?")
            .cell(2, 0, 4, "?")
            .issues();
    assertThat(issues)
        .extracting(Issue::code)
        .contains("W102", "W116", "W134", "W140", "W191", "W162", "W163", "W122", "W165");
  }

  @Test
  @DisplayName("A test that no allowed value meets is accepted with a warning at its cell")
  void neverHolds() {
    SampleDraft draft =
        new SampleDraft()
            .add("Fields", "depth", "given", "number", "mm", "[0..20]", "-", "-", "-", "M", "S")
            .when(1, 0, "depth")
            .cell(1, 0, 1, "> 500")
            .cell(1, 1, 1, "<= 20");
    assertThat(draft.protocol().remarks())
        .extracting(Issue::plain)
        .containsExactly(
            "warning W173 Load!B8: `> 500` can never hold: `depth` is [0..20]\n"
                + "      help: check the number, and the allowed values in the sheet Fields");
  }

  @Test
  @DisplayName("A chain of thousands of calculations, written backwards, is put in order at once")
  @Timeout(20)
  void longChain() {
    SampleDraft draft = new SampleDraft();
    for (int i = 5000; i > 0; i--) {
      String before = i == 1 ? "width" : "link " + (i - 1);
      draft.add("Calculations", "link " + i, before + " + 1", "mm", "M", "S");
    }
    assertThat(draft.protocol().steps()).hasSize(5000 + 6);
  }

  @Test
  @DisplayName(
      "A chain of conditions that only name each other, written backwards, has the right types")
  void longChainOfConditions() {
    SampleDraft draft = new SampleDraft();
    for (int i = 90; i > 0; i--) {
      String before = i == 1 ? "firm" : "link " + (i - 1);
      draft.add("Calculations", "link " + i, before, "-", "M", "S");
    }
    assertThat(draft.protocol().vocabulary().symbol("link 90").orElseThrow().type())
        .isEqualTo(org.cotyla.value.ValueType.YES_NO);
  }
}
