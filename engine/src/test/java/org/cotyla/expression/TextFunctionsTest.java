package org.cotyla.expression;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.stream.IntStream;
import org.cotyla.value.PossibleValues;
import org.cotyla.value.Value;
import org.cotyla.value.ValueSet;
import org.cotyla.value.ValueType;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("The functions on texts (DMN clause 10.3.4.3)")
class TextFunctionsTest {

  private static final Symbol NAME = new Symbol("name", 0, ValueType.TEXT, List.of());
  private static final Symbol COUNT = new Symbol("count", 1, ValueType.NUMBER, List.of());
  private static final Vocabulary VOCABULARY =
      new Vocabulary(List.of(NAME, COUNT), StandardFunctions.all());

  @ParameterizedTest(name = "{0} is {1}")
  @DisplayName("give for single values what the standard says")
  @CsvSource(
      delimiter = '|',
      value = {
        "string(12.50)                          | \"12.5\"",
        "string(true)                           | \"true\"",
        "string(\"as is\")                      | \"as is\"",
        "string(date(\"2026-01-31\"))           | \"2026-01-31\"",
        "string(null)                           | null",
        "starts with(\"foobar\", \"foo\")       | true",
        "starts with(\"foobar\", \"bar\")       | false",
        "ends with(\"foobar\", \"bar\")         | true",
        "contains(\"foobar\", \"ob\")           | true",
        "contains(\"foobar\", \"of\")           | false",
        "string length(\"foo\")                 | 3",
        "string length(\"\\U01F40Eab\")         | 3",
        "upper case(\"aBc4\")                   | \"ABC4\"",
        "lower case(\"aBc4\")                   | \"abc4\"",
        "starts with(null, \"foo\")             | null",
        "string length(5)                       | null",
      })
  void singleValues(String formula, String expected) throws ExpressionException {
    PossibleValues value = parse(formula).evaluate(Scope.empty());
    assertThat(value.isNothing() ? "null" : value.single().orElseThrow().literal())
        .isEqualTo(expected);
  }

  @Test
  @DisplayName("are exact over a few possible values")
  void fewValues() throws ExpressionException {
    ValueSet names = ValueSet.of(ValueType.TEXT, List.of(Value.of("ant"), Value.of("bee")));
    Scope scope = symbol -> new PossibleValues(names, true);
    assertThat(parse("upper case(name)").evaluate(scope).plain()).isEqualTo("ANT, BEE or nothing");
    assertThat(parse("string length(name)").evaluate(scope).plain()).isEqualTo("3 or nothing");
    assertThat(parse("contains(name, \"e\")").evaluate(scope).plain())
        .isEqualTo("no, yes or nothing");
  }

  @Test
  @DisplayName("leave everything of their type possible over a range or over many values")
  void rangesAndManyValues() throws ExpressionException {
    PossibleValues range =
        PossibleValues.of(ValueSet.between(ValueType.NUMBER, Value.of(1), true, Value.of(2), true));
    assertThat(parse("string(count)").evaluate(symbol -> range))
        .isEqualTo(PossibleValues.of(ValueSet.all(ValueType.TEXT)));
    List<Value> many = IntStream.range(0, 65).mapToObj(i -> Value.of("n" + i)).toList();
    PossibleValues names = PossibleValues.of(ValueSet.of(ValueType.TEXT, many));
    assertThat(parse("starts with(name, \"n\")").evaluate(symbol -> names))
        .isEqualTo(PossibleValues.of(ValueSet.all(ValueType.YES_NO)));
  }

  @Test
  @DisplayName("refuse an argument of another type in a workbook")
  void wrongTypeInWorkbook() {
    CellParser workbook = new CellParser(VOCABULARY, Dialect.KIND);
    assertThatThrownBy(() -> workbook.formula("string length(count)"))
        .isInstanceOf(ExpressionException.class)
        .hasMessage("argument 1 of `string length` is a number but must be a text");
  }

  private static Expression parse(String formula) throws ExpressionException {
    return new CellParser(VOCABULARY, Dialect.STRICT).formula(formula);
  }
}
