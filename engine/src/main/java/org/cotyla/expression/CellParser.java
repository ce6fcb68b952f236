package org.cotyla.expression;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.cotyla.expression.Expression.Literal;
import org.cotyla.expression.Expression.Nothing;
import org.cotyla.name.NameIndex;
import org.cotyla.name.NearestWord;
import org.cotyla.value.Value;
import org.cotyla.value.ValueType;

/** Reads the cells of a protocol: tests, results and formulas. Immutable. */
public final class CellParser {

  private static final String NO_UNIT = "write the number alone; its unit stands in another column";

  private final Vocabulary vocabulary;
  private final Dialect dialect;

  public CellParser(Vocabulary vocabulary, Dialect dialect) {
    this.vocabulary = vocabulary;
    this.dialect = dialect;
  }

  /** The test in a cell under the given input. */
  public CellTest test(String cell, Symbol input) throws ExpressionException {
    String text = tidy(cell);
    if (text.isBlank()) {
      throw new ExpressionException("the test is empty", "write - for anything");
    }
    if (dialect == Dialect.KIND && input.type() == ValueType.NUMBER) {
      CellText.refuseCommaDecimal(text);
    }
    return new TestParser(new Cursor(text), input, vocabulary, dialect).cell();
  }

  /** A formula that stands alone. */
  public Expression formula(String cell) throws ExpressionException {
    String text = tidy(cell);
    if (text.isBlank()) {
      throw new ExpressionException("the formula is empty", "write a number or a formula");
    }
    if (dialect == Dialect.KIND) {
      CellText.refuseCommaDecimal(text);
    }
    Symbol noInput = new Symbol("?", -1, ValueType.NUMBER, List.of());
    Cursor cursor = new Cursor(text);
    Expression formula = new TestParser(cursor, noInput, vocabulary, dialect).formulas().formula();
    if (!cursor.atEnd()) {
      throw MisspeltName.fault(
          cursor,
          vocabulary,
          "`" + text + "` goes on with `" + cursor.rest() + "` after a complete formula",
          startsWithNumber(text) ? Optional.of(NO_UNIT) : Optional.empty());
    }
    return formula;
  }

  private static boolean startsWithNumber(String text) {
    return Character.isDigit(text.charAt(0));
  }

  /** The result in a cell under an output; in a workbook a text needs no quotes. */
  public Expression result(String cell, Symbol output) throws ExpressionException {
    String text = tidy(cell);
    if (text.isBlank()) {
      throw new ExpressionException("the result is empty", "write null for no result");
    }
    if (text.equals("null")) {
      return new Nothing(output.type());
    }
    if (dialect == Dialect.KIND && output.type() == ValueType.TEXT) {
      return output.isChoice() ? choice(text, output) : new Literal(Value.of(cell.strip()));
    }
    Expression formula = formula(text);
    if (formula.type() != output.type() && dialect == Dialect.KIND) {
      throw new ExpressionException(
          "`" + text + "` is a " + formula.type().word(),
          "`" + output.name() + "` needs a " + output.type().word());
    }
    return formula;
  }

  private Expression choice(String text, Symbol output) throws ExpressionException {
    NameIndex<String> choices = NameIndex.of(output.choices(), CellText::plain);
    boolean quoted = text.length() > 1 && text.startsWith("\"") && text.endsWith("\"");
    String word = quoted ? text.substring(1, text.length() - 1) : text;
    Optional<String> known = choices.find(word);
    if (known.isPresent()) {
      return new Literal(Value.of(known.get()));
    }
    Optional<Symbol> name = vocabulary.symbol(word).filter(symbol -> symbol.isChoice());
    if (name.isPresent() && output.choices().containsAll(name.get().choices())) {
      return new Expression.Reference(name.get());
    }
    throw new ExpressionException(
        "`" + word + "` is not a value of `" + output.name() + "`",
        NearestWord.help(word, output.choices()));
  }

  /** A parser of the same dialect that knows these names only, and no function. */
  public CellParser knowing(Collection<Symbol> names) {
    return new CellParser(new Vocabulary(names, List.of()), dialect);
  }

  private String tidy(String cell) {
    return dialect == Dialect.KIND ? CellText.plain(cell) : cell.strip();
  }
}
