package org.cotyla.expression;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.cotyla.value.PossibleValues;
import org.cotyla.value.Value;
import org.cotyla.value.ValueType;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("Formulas as the DMN standard has them, and where a workbook is stricter")
class StrictDialectTest {

  private static final Symbol HOST =
      new Symbol("host bone", 0, ValueType.TEXT, List.of("good", "poor"));
  private static final Vocabulary VOCABULARY =
      new Vocabulary(List.of(HOST), StandardFunctions.all());

  @ParameterizedTest(name = "{0}")
  @DisplayName("types that cannot meet give null")
  @ValueSource(
      strings = {
        "100 = \"100\"",
        "true = 1",
        "true < false",
        "10 * \"10\"",
        "\"10\" + 10",
        "\"10\" - \"10\"",
        "true ** 4",
        "-\"10\"",
        "floor(\"5\")",
        "abs(true)",
        "\"b\" between 1 and 3"
      })
  void mixedTypesGiveNull(String formula) throws ExpressionException {
    assertThat(strict(formula).isNothing()).isTrue();
  }

  @ParameterizedTest(name = "{0}")
  @DisplayName("types that cannot meet are refused in a workbook")
  @ValueSource(
      strings = {
        "100 = \"100\"",
        "10 * \"10\"",
        "-\"10\"",
        "floor(\"5\")",
        "\"b\" between 1 and 3",
        "5 in (\"a\", \"b\")"
      })
  void mixedTypesAreRefusedInWorkbook(String formula) {
    CellParser workbook = new CellParser(VOCABULARY, Dialect.KIND);
    assertThatThrownBy(() -> workbook.formula(formula)).isInstanceOf(ExpressionException.class);
  }

  @ParameterizedTest(name = "{0} is {1}")
  @DisplayName("a test after `in` tests what stands before it, whatever its type")
  @CsvSource(
      delimiter = '|',
      value = {
        "false in (false)         | yes",
        "true in (false, false)   | no",
        "true in (=true)          | yes",
        "\"a\" in (\"a\", \"b\")  | yes",
        "\"c\" in [\"a\"..\"b\"]  | no",
        "7 in (? > 5)             | yes",
        "\"ab\" in (starts with(?, \"b\")) | no"
      })
  void membership(String formula, String expected) throws ExpressionException {
    assertThat(strict(formula).plain()).isEqualTo(expected);
  }

  @Test
  @DisplayName("in a workbook a choice after `in` needs no quotes and must be a value of the field")
  void membershipOfChoice() throws ExpressionException {
    CellParser workbook = new CellParser(VOCABULARY, Dialect.KIND);
    Expression formula = workbook.formula("host bone in (poor)");
    Scope poor = symbol -> PossibleValues.of(Value.of("poor"));
    assertThat(formula.evaluate(poor).plain()).isEqualTo("yes");
    assertThatThrownBy(() -> workbook.formula("host bone in (bad)"))
        .isInstanceOf(ExpressionException.class)
        .hasMessageContaining("`bad` is not a value of `host bone`");
  }

  @Test
  @DisplayName("a number may have a power of ten, of at most 6144")
  void exponents() throws ExpressionException {
    assertThat(strict("1.23e4").plain()).isEqualTo("12300");
    assertThat(strict("1.23E-4").plain()).isEqualTo("0.000123");
    assertThatThrownBy(() -> strict("1e999999")).isInstanceOf(ExpressionException.class);
  }

  @Test
  @DisplayName("date of a text that is no date is null")
  void noDate() throws ExpressionException {
    assertThat(strict("date(\"2017-13-10\")").isNothing()).isTrue();
    assertThat(strict("date(\"2017-12-31\")").plain()).isEqualTo("2017-12-31");
  }

  @Test
  @DisplayName("a duration is refused, not taken for null")
  void durationsAreRefused() {
    assertThatThrownBy(() -> strict("date(\"2026-01-02\") - date(\"2026-01-01\")"))
        .isInstanceOf(ExpressionException.class)
        .hasMessageContaining("is a duration");
    assertThatThrownBy(() -> strict("@\"P1D\"")).isInstanceOf(ExpressionException.class);
  }

  private static PossibleValues strict(String formula) throws ExpressionException {
    return new CellParser(VOCABULARY, Dialect.STRICT).formula(formula).evaluate(Scope.empty());
  }
}
