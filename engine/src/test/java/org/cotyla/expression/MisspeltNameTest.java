package org.cotyla.expression;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.util.List;
import org.cotyla.value.ValueType;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("A misspelt name whose first words are a name themselves")
class MisspeltNameTest {

  private static final Symbol CRP = number("crp", 0);

  private static final CellParser PARSER =
      new CellParser(
          new Vocabulary(
              List.of(CRP, number("crp limit", 1), number("crp limit of the house", 2)),
              StandardFunctions.all()),
          Dialect.KIND);

  private static Symbol number(String name, int index) {
    return new Symbol(name, index, ValueType.NUMBER, List.of());
  }

  private static ExpressionException inFormula(String text) {
    return catchThrowableOfType(ExpressionException.class, () -> PARSER.formula(text));
  }

  private static ExpressionException inTest(String text) {
    return catchThrowableOfType(ExpressionException.class, () -> PARSER.test(text, CRP));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "crp limitt * 3|goes on with `limitt * 3` after a complete formula",
        "2 + crp lmit / 3|goes on with `lmit / 3` after a complete formula",
        "max(crp limitt, 3)|lacks `)` before `limitt, 3)`",
        "if crp limitt > 3 then 1 else 2|lacks `then` before `limitt > 3 then 1 else 2`",
      })
  @DisplayName("is told in a formula with the name that is meant")
  void formulas(String text, String message) {
    ExpressionException fault = inFormula(text);
    assertThat(fault.line()).isEqualTo("`" + text + "` " + message);
    assertThat(fault.help()).contains("did you mean `crp limit`?");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "> crp limitt|goes on with `limitt` after a complete test",
        "[1..crp limitt]|starts an interval and does not end it",
        "not(crp limitt)|lacks `)` before `limitt)`",
      })
  @DisplayName("is told in a test with the name that is meant")
  void tests(String text, String message) {
    ExpressionException fault = inTest(text);
    assertThat(fault.help()).contains("did you mean `crp limit`?");
    assertThat(fault.line()).isEqualTo("`" + text + "` " + message);
  }

  @Test
  @DisplayName("is told with a longer name when more of its words stand there")
  void longer() {
    assertThat(inFormula("crp limit of teh house").help())
        .contains("did you mean `crp limit of the house`?");
  }

  @Test
  @DisplayName("is no such name when nothing like it begins so")
  void nothingAlike() {
    assertThat(inFormula("crp 5").help()).isEmpty();
    assertThat(inFormula("crp times three").help()).isEmpty();
    assertThat(inTest("> crp, crp 5").help())
        .contains("separate alternatives with a comma and a space");
  }
}
