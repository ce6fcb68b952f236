package org.cotyla.expression;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.PropertyDefaults;
import org.cotyla.value.ValueType;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

@PropertyDefaults(tries = 1500, edgeCases = EdgeCasesMode.NONE)
class PrintedCellsTest {

  @Property
  @Label("A formula that is printed and read again is the same formula, in both dialects")
  void formulas(@ForAll long seed, @ForAll Dialect dialect, @ForAll ValueType type)
      throws ExpressionException {
    Expression formula = new RandomCells(new Random(seed)).formula(type, 4);
    assertThat(SampleNames.parser(dialect).formula(formula.print())).isEqualTo(formula);
  }

  @Property
  @Label("A test that is printed and read again is the same test, in both dialects")
  void tests(@ForAll long seed, @ForAll Dialect dialect, @ForAll boolean constant)
      throws ExpressionException {
    RandomCells cells = new RandomCells(new Random(seed));
    Symbol input =
        cells.pick(
            List.of(SampleNames.SIZE, SampleNames.ANSWER, SampleNames.GRADE, SampleNames.DAY));
    CellTest test = cells.cell(input, 3, constant);
    assertThat(SampleNames.parser(dialect).test(test.print(), input)).isEqualTo(test);
  }

  @ParameterizedTest(name = "{0}")
  @DisplayName("What people write in a number column is the same after printing")
  @ValueSource(
      strings = {
        "1, [2, 3]",
        "[1, 2, 3]",
        "[2]",
        "((5))",
        "]1..2[",
        "= 5",
        "not(1, 2)",
        "-size",
        "size in [1..3]",
        "size in (1, 2)",
        "size between 1 and 3",
        "1 + 2 * 3 ** 2 - 4 / 2",
        "Mölnar line depth - 5",
        "lower_limit-size",
        "if answer then 1 else null",
        "-5 ** 2"
      })
  void numberCells(String cell) throws ExpressionException {
    String wholly =
        cell.contains("in ") || cell.contains("between") ? "if " + cell + " then 1 else 2" : cell;
    CellTest test = SampleNames.kind().test(wholly, SampleNames.SIZE);
    assertThat(SampleNames.kind().test(test.print(), SampleNames.SIZE)).isEqualTo(test);
  }

  @ParameterizedTest(name = "{0}")
  @DisplayName("What people write in a yes/no column is the same after printing")
  @ValueSource(
      strings = {
        "= not(answer 2)",
        "not(answer 2)",
        "not(answer 2), yes",
        "grade = \"mild\"",
        "grade in (\"mild\", \"3B\")",
        "grade in \"mild\"",
        "day in [2026-01-01..2026-02-01]"
      })
  void answerCells(String cell) throws ExpressionException {
    CellTest test = SampleNames.kind().test(cell, SampleNames.ANSWER);
    assertThat(SampleNames.kind().test(test.print(), SampleNames.ANSWER)).isEqualTo(test);
  }

  @ParameterizedTest
  @DisplayName("A text with quotes, signs, tabs and odd spaces survives printing")
  @EnumSource(Dialect.class)
  void texts(Dialect dialect) throws ExpressionException {
    String odd =
        "a \"b\" \\ c \u2264 \u201cd\u201d \u2013 e\u00a0f\tg\nh \u00bd \ud83d\ude00 \u00e9";
    Expression literal = new Expression.Literal(org.cotyla.value.Value.of(odd));
    assertThat(SampleNames.parser(dialect).formula(literal.print())).isEqualTo(literal);
  }
}
