package org.cotyla.expression;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import java.util.List;
import java.util.stream.Stream;
import org.cotyla.value.ValueType;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class KindCellsTest {

  static Stream<Arguments> kindnesses() {
    Symbol size = SampleNames.SIZE;
    Symbol grade = SampleNames.GRADE;
    return Stream.of(
        arguments("signs typed by autocorrect", size, "\u2264 5", "<= 5"),
        arguments("signs typed by autocorrect", size, "\u22655", ">= 5"),
        arguments("signs typed by autocorrect", size, "\u2260 5", "!= 5"),
        arguments("an ellipsis for two points", size, "[1\u20265]", "[1..5]"),
        arguments("a long dash for anything", size, "\u2013", "-"),
        arguments("a long dash for anything", size, "\u2014", "-"),
        arguments("a minus sign", size, "> \u22125", "> -5"),
        arguments("a fraction alone", size, "< \u00bd", "< 0.5"),
        arguments("a fraction after digits", size, "< 2\u00be", "< 2.75"),
        arguments("a non-breaking space", size, ">\u00a05", "> 5"),
        arguments("a space of no width", size, "\u200b> 5\ufeff", "> 5"),
        arguments("no space", size, ">=5", ">= 5"),
        arguments("a bracket turned outwards", size, "]1..5[", "(1..5)"),
        arguments("an exclusive end and an inclusive one", size, "(1..5]", "(1..5]"),
        arguments("a multiplication sign", size, "> 2 \u00d7 size", "> (2 * size)"),
        arguments("a comma list", size, "< 5, > 20", "< 5, > 20"),
        arguments("curly quotes", grade, "\u201cmild\u201d", "\"mild\""),
        arguments("a bare choice", grade, "mild", "\"mild\""),
        arguments("a choice in capitals", grade, "MILD", "\"mild\""),
        arguments("a choice with a space", grade, "not assessed", "\"not assessed\""),
        arguments(
            "a choice with a hyphen for the space", grade, "Not-assessed", "\"not assessed\""),
        arguments("a choice that starts with a digit", grade, "3B, mild", "\"3B\", \"mild\""),
        arguments("none of several choices", grade, "not(mild, 3b)", "not(\"mild\", \"3B\")"),
        arguments("another field of the same choices", grade, "other grade", "other grade"),
        arguments("a yes with a capital", SampleNames.ANSWER, "Yes, NO", "true, false"),
        arguments("yes", SampleNames.ANSWER, "yes", "true"),
        arguments("no", SampleNames.ANSWER, "no", "false"),
        arguments("true", SampleNames.ANSWER, "true", "true"),
        arguments("null", grade, "null", "null"),
        arguments("a bare date", SampleNames.DAY, "2026-01-31", "date(\"2026-01-31\")"),
        arguments(
            "a date by function",
            SampleNames.DAY,
            "< date(\"2026-01-31\")",
            "< date(\"2026-01-31\")"),
        arguments(
            "an interval of bare dates",
            SampleNames.DAY,
            "[2026-01-31..2026-02-28]",
            "[date(\"2026-01-31\")..date(\"2026-02-28\")]"),
        arguments("a name with a space", size, "> lower limit", "> lower limit"),
        arguments("a name with an underscore", size, "> Lower_Limit", "> lower limit"),
        arguments("a name without accents", size, "> molnar line depth", "> Mölnar-line depth"),
        arguments(
            "a name in decomposed letters",
            size,
            "> Mo\u0308lnar line depth",
            "> Mölnar-line depth"),
        arguments(
            "a hyphen with spaces is a minus",
            size,
            "> lower limit - size",
            "> (lower limit - size)"),
        arguments(
            "a long dash with spaces is a minus",
            size,
            "> lower limit \u2013 size",
            "> (lower limit - size)"),
        arguments("a hyphen before what is no name", size, "> size-1", "> (size - 1)"));
  }

  @ParameterizedTest(name = "{0}: {2}")
  @DisplayName("Cells are read as people write them")
  @MethodSource("kindnesses")
  void kindness(String what, Symbol input, String cell, String printed) throws ExpressionException {
    assertThat(SampleNames.kind().test(cell, input).print()).isEqualTo(printed);
  }

  @Test
  @DisplayName("Choices and names with signs of autocorrect are found however they are typed")
  void autocorrectedNames() throws ExpressionException {
    Symbol choice =
        new Symbol(
            "state", 0, ValueType.TEXT, List.of("owner\u2019s choice", "\u00bd shell", "1\u20132"));
    Symbol name = new Symbol("front\u2013back width", 1, ValueType.NUMBER, List.of());
    CellParser parser =
        new CellParser(new Vocabulary(List.of(choice, name), List.of()), Dialect.KIND);
    for (String typed : List.of("owner's choice", "owner\u2019s choice")) {
      assertThat(parser.test(typed, choice).print()).isEqualTo("\"owner\\u2019s choice\"");
      assertThat(parser.result(typed, choice).print()).isEqualTo("\"owner\\u2019s choice\"");
    }
    assertThat(parser.test("\u00bd shell", choice).print()).isEqualTo("\"\\u00bd shell\"");
    assertThat(parser.test("1-2", choice).print()).isEqualTo("\"1\\u20132\"");
    assertThat(parser.test("> front-back width", name).references()).containsExactly(name);
    assertThat(parser.test("> front\u2013back width", name).references()).containsExactly(name);
  }

  @Test
  @DisplayName(
      "A field called date does not hide the function date, nor one called max the maximum")
  void namesOfFunctions() throws ExpressionException {
    Symbol date = new Symbol("date", 0, ValueType.DATE, List.of());
    Symbol max = new Symbol("max", 1, ValueType.NUMBER, List.of());
    CellParser parser =
        new CellParser(new Vocabulary(List.of(date, max), SampleNames.FUNCTIONS), Dialect.KIND);
    assertThat(parser.test("> date(\"2026-01-31\"), date", date).print())
        .isEqualTo("> date(\"2026-01-31\"), date");
    assertThat(parser.formula("max(max, 3)").print()).isEqualTo("max(max, 3)");
  }

  @Test
  @DisplayName("The strict dialect reads what the standard has and no kindness")
  void strict() throws ExpressionException {
    CellParser strict = SampleNames.parser(Dialect.STRICT);
    assertThat(strict.test("\"mild\",\"3B\"", SampleNames.GRADE).print())
        .isEqualTo("\"mild\", \"3B\"");
    assertThat(strict.test("? > 5 and ? < 9", SampleNames.SIZE))
        .isInstanceOf(CellTest.Condition.class);
    assertThat(strict.test("1,2", SampleNames.SIZE).print()).isEqualTo("1, 2");
    assertThatThrownBy(() -> strict.test("yes", SampleNames.ANSWER))
        .isInstanceOf(ExpressionException.class);
    assertThatThrownBy(() -> strict.test("\u2264 5", SampleNames.SIZE))
        .isInstanceOf(ExpressionException.class);
  }

  @Test
  @DisplayName("A text result stands without quotes, as the author wrote it")
  void textResult() throws ExpressionException {
    assertThat(
            SampleNames.kind()
                .result(" Ask \u201cwhy\u201d \u2013 twice, at 3,5 ", SampleNames.NOTE))
        .isEqualTo(
            new Expression.Literal(
                org.cotyla.value.Value.of("Ask \u201cwhy\u201d \u2013 twice, at 3,5")));
    assertThat(SampleNames.kind().result("null", SampleNames.NOTE))
        .isEqualTo(new Expression.Nothing(ValueType.TEXT));
    assertThat(SampleNames.kind().result("other grade", SampleNames.GRADE).references())
        .containsExactly(SampleNames.OTHER_GRADE);
  }
}
