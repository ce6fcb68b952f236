package org.cotyla.expression;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import java.util.stream.Stream;
import org.cotyla.name.NearestWord;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class CellMessagesTest {

  private static Arguments fault(Symbol input, String cell, String line, String help) {
    return arguments(input, cell, line, help);
  }

  static Stream<Arguments> faultyTests() {
    Symbol size = SampleNames.SIZE;
    Symbol grade = SampleNames.GRADE;
    Symbol answer = SampleNames.ANSWER;
    Symbol day = SampleNames.DAY;
    return Stream.of(
        fault(size, " ", "the test is empty", "write - for anything"),
        fault(
            size,
            "3,5",
            "`3,5` has a comma between two digits, which may be a decimal or a list",
            "write a decimal with a point, as 3.5, and a list with a space after the comma, as 3,"
                + " 5"),
        fault(
            size,
            "[1,5..2]",
            "`[1,5..2]` has a comma between two digits, which may be a decimal or a list",
            "write a decimal with a point, as 3.5, and a list with a space after the comma, as 3,"
                + " 5"),
        fault(
            size,
            "5 6",
            "`5 6` goes on with `6` after a complete test",
            "separate alternatives with a comma and a space"),
        fault(
            size,
            "? > 5",
            "`?` is FEEL beyond S-FEEL and is not read in a workbook",
            "write the test itself, as > 5 instead of ? > 5"),
        fault(
            size,
            "[1..5",
            "`[1..5` starts an interval and does not end it",
            "close it with ] when the end belongs to it, with ) when not"),
        fault(
            size,
            "[5..1]",
            "`[5..1]` is an interval whose low end is above its high end",
            "write the smaller value first"),
        fault(
            size,
            "(5..5)",
            "`(5..5)` is an interval that holds no value",
            "write the value alone, or include the ends with [ and ]"),
        fault(size, "[1, 2", "`[1, 2` lacks `]` at its end", ""),
        fault(size, "\"big\"", "`\"big\"` has a text where `size` is a number", "write a number"),
        fault(
            grade,
            "15",
            "`15` has a number where `grade` is a choice",
            NearestWord.help("15", grade.choices())),
        fault(answer, "15", "`15` has a number where `answer` is a yes/no", "write yes or no"),
        fault(size, "yes", "`yes` has a yes/no where `size` is a number", "write a number"),
        fault(
            answer,
            "yess",
            "`yess` is neither a value nor a name that is known here",
            "did you mean `yes`?"),
        fault(
            answer,
            "not(noo)",
            "`noo` is neither a value nor a name that is known here",
            "did you mean `no`?"),
        fault(
            size,
            "> lower limt",
            "`lower limt` is neither a value nor a name that is known here",
            "did you mean `lower limit`?"),
        fault(size, "> zzzzzz", "`zzzzzz` is neither a value nor a name that is known here", ""),
        fault(size, ">", "`>` ends where a value or a name should follow", ""),
        fault(size, "> (1 + 2", "`> (1 + 2` lacks `)` at its end", ""),
        fault(size, "> min 3", "`> min 3` lacks `(` before `3`", ""),
        fault(
            grade,
            "moderat",
            "`moderat` is not a value of `grade`",
            "did you mean `moderate`? (mild, moderate, 3B, not assessed)"),
        fault(
            grade,
            "\"4C\"",
            "`\"4C\"` is not a value of `grade`",
            "expected one of: mild, moderate, 3B, not assessed"),
        fault(
            grade,
            "severe!",
            "`severe` is not a value of `grade`",
            "expected one of: mild, moderate, 3B, not assessed"),
        fault(
            grade,
            ">= moderate",
            "`>= moderate` compares a choice, which has no order here",
            "list the values: mild, moderate, 3B, not assessed"),
        fault(
            grade,
            "[\"mild\"..\"moderate\"]",
            "`[\"mild\"..\"moderate\"]` compares a choice, which has no order here",
            "list the values: mild, moderate, 3B, not assessed"),
        fault(answer, "> no", "`> no` compares a yes/no, which has no order", "write yes or no"),
        fault(answer, "perhaps", "`perhaps` is neither a value nor a name that is known here", ""),
        fault(
            day,
            "> 2026-13-01",
            "`2026-13-01` is not a date",
            "write year-month-day, as 2026-01-31"),
        fault(
            day,
            "date(\"31.1.2026\")",
            "`31.1.2026` is not a date",
            "write year-month-day, as 2026-01-31"),
        fault(day, "> 5", "`> 5` has a number where `day` is a date", "write a date"));
  }

  @ParameterizedTest(name = "{0} {1}")
  @DisplayName("A faulty test says what is wrong in the author's own words, and what to write")
  @MethodSource("faultyTests")
  void faultyTest(Symbol input, String cell, String line, String help) {
    ExpressionException fault =
        catchThrowableOfType(ExpressionException.class, () -> SampleNames.kind().test(cell, input));
    assertFault(fault, line, help);
  }

  static Stream<Arguments> faultyFormulas() {
    String digits = "1".repeat(101);
    String deep = "(".repeat(60) + "1" + ")".repeat(60);
    return Stream.of(
        arguments("", "the formula is empty", "write a number or a formula"),
        arguments(
            "10 mg/L",
            "`10 mg/L` goes on with `mg/L` after a complete formula",
            "write the number alone; its unit stands in another column"),
        arguments("size 5", "`size 5` goes on with `5` after a complete formula", ""),
        arguments(
            "size + grade",
            "right of + stands `grade`, which is a text",
            "a number is needed there"),
        arguments(
            "-answer", "after - stands `answer`, which is a yes/no", "a number is needed there"),
        arguments(
            "size = answer",
            "left of = stands a number but right of it a yes/no",
            "both must be of one type"),
        arguments(
            "if answer then 1 else yes",
            "then stands a number but else a yes/no",
            "both must be of one type"),
        arguments("if answer then 1", "`if answer then 1` lacks `else` at its end", ""),
        arguments("if answer 1 else 2", "`if answer 1 else 2` lacks `then` before `1 else 2`", ""),
        arguments("sqrt(1, 2)", "`sqrt` takes 1 argument but has 2", ""),
        arguments("max()", "`max` takes 1 or more arguments but has 0", ""),
        arguments("round half up(1)", "`round half up` takes 2 arguments but has 1", ""),
        arguments("abs(yes)", "argument 1 of `abs` is a yes/no but must be a number", ""),
        arguments(
            "sqr(4)",
            "`sqr` is neither a value nor a name that is known here",
            "did you mean `sqrt`?"),
        arguments(digits, "a number has more than 100 digits", ""),
        arguments("\"abc", "a text starts with a quote and does not end with one", ""),
        arguments(deep, "brackets nest deeper than 50", ""),
        arguments(
            "1" + " + 1".repeat(2000),
            "the cell joins more than 200 values and names",
            "split it into calculations"));
  }

  @ParameterizedTest(name = "formula {0}")
  @DisplayName("A faulty formula says what is wrong in the author's own words, and what to write")
  @MethodSource("faultyFormulas")
  void faultyFormula(String cell, String line, String help) {
    ExpressionException fault =
        catchThrowableOfType(ExpressionException.class, () -> SampleNames.kind().formula(cell));
    assertFault(fault, line, help);
  }

  static Stream<Arguments> faultyResults() {
    return Stream.of(
        fault(SampleNames.SIZE, "", "the result is empty", "write null for no result"),
        fault(SampleNames.SIZE, "yes", "`yes` is a yes/no", "`size` needs a number"),
        fault(SampleNames.ANSWER, "1", "`1` is a number", "`answer` needs a yes/no"),
        fault(
            SampleNames.GRADE,
            "middling",
            "`middling` is not a value of `grade`",
            "expected one of: mild, moderate, 3B, not assessed"),
        fault(
            SampleNames.SIZE,
            "3,5",
            "`3,5` has a comma between two digits, which may be a decimal or a list",
            "write a decimal with a point, as 3.5, and a list with a space after the comma, as"
                + " 3, 5"));
  }

  @ParameterizedTest(name = "{0} {1}")
  @DisplayName("A faulty result says what is wrong in the author's own words, and what to write")
  @MethodSource("faultyResults")
  void faultyResult(Symbol output, String cell, String line, String help) {
    ExpressionException fault =
        catchThrowableOfType(
            ExpressionException.class, () -> SampleNames.kind().result(cell, output));
    assertFault(fault, line, help);
  }

  private static void assertFault(ExpressionException fault, String line, String help) {
    assertThat(fault).isNotNull();
    assertThat(fault.line()).isEqualTo(line);
    assertThat(fault.help().orElse("")).isEqualTo(help);
  }
}
