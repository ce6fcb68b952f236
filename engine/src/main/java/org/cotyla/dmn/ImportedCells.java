package org.cotyla.dmn;

import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.cotyla.expression.CellParser;
import org.cotyla.expression.CellTest;
import org.cotyla.expression.CellTest.Condition;
import org.cotyla.expression.Dialect;
import org.cotyla.expression.Expression;
import org.cotyla.expression.Expression.Literal;
import org.cotyla.expression.Expression.Nothing;
import org.cotyla.expression.ExpressionException;
import org.cotyla.expression.StandardFunctions;
import org.cotyla.expression.Symbol;
import org.cotyla.expression.Vocabulary;
import org.cotyla.value.Value;
import org.cotyla.value.ValueType;

/** Reads a file's cells as the standard has them and writes them as a workbook has them. */
final class ImportedCells {

  private final CellParser parser;
  private final CellWriter writer;

  /**
   * @param names what stands in the workbook for each name of the file
   * @param choices the names whose values are lists of texts
   */
  ImportedCells(Map<Symbol, String> names, Set<Symbol> choices) {
    this.parser =
        new CellParser(new Vocabulary(names.keySet(), StandardFunctions.all()), Dialect.STRICT);
    this.writer = new CellWriter(new WorkbookWording(names, choices));
  }

  /** Reads what a cell says. */
  private interface Reading<T> {
    T read() throws ExpressionException;
  }

  private static <T> T held(Reading<T> reading) throws NotHeldException {
    try {
      return reading.read();
    } catch (ExpressionException unreadable) {
      throw new NotHeldException(unreadable.line());
    }
  }

  /** The test; an empty entry is a dash (DMN clause 8.2.3). */
  String test(String text, Symbol input) throws NotHeldException {
    if (text.isBlank()) {
      return "-";
    }
    CellTest test = held(() -> parser.test(text, input));
    refuseConditions(test);
    return writer.test(test, input);
  }

  private static void refuseConditions(CellTest test) throws NotHeldException {
    if (test instanceof Condition condition && CellWriter.ownComparison(condition).isEmpty()) {
      throw new NotHeldException(
          "`"
              + condition.print()
              + "` is a condition of full FEEL, which no cell of a workbook has");
    }
    if (test instanceof CellTest.NoneOf none) {
      refuseConditions(none.inner());
    }
    if (test instanceof CellTest.AnyOf any) {
      for (CellTest one : any.tests()) {
        refuseConditions(one);
      }
    }
  }

  String formula(String text) throws NotHeldException {
    return writer.formula(held(() -> parser.formula(text)));
  }

  /** The kind of value that a formula gives; nothing when it cannot be read. */
  Optional<ValueType> type(String text) {
    try {
      return Optional.of(parser.formula(text).type());
    } catch (ExpressionException unreadable) {
      return Optional.empty();
    }
  }

  /** A result; a text stands in a workbook without quotes. */
  String result(String text, ValueType type) throws NotHeldException {
    if (text.isBlank()) {
      return "null";
    }
    Expression result = held(() -> parser.formula(text));
    if (result instanceof Nothing) {
      return "null";
    }
    if (result instanceof Literal literal && literal.value() instanceof Value.TextValue plain) {
      return plain.text();
    }
    boolean isName = result instanceof Expression.Reference;
    if (type == ValueType.TEXT && !isName) {
      throw new NotHeldException(
          "`" + text + "` works out a text, which no result of a workbook does");
    }
    return result instanceof Literal literal ? literal.value().plain() : writer.formula(result);
  }
}
