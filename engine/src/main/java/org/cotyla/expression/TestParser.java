package org.cotyla.expression;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.cotyla.expression.CellTest.AnyOf;
import org.cotyla.expression.CellTest.Anything;
import org.cotyla.expression.CellTest.Between;
import org.cotyla.expression.CellTest.Compared;
import org.cotyla.expression.CellTest.Condition;
import org.cotyla.expression.CellTest.NoneOf;
import org.cotyla.expression.Expression.Literal;
import org.cotyla.expression.Expression.Nothing;
import org.cotyla.name.NameIndex;
import org.cotyla.name.NearestWord;
import org.cotyla.value.Value;
import org.cotyla.value.ValueType;

/**
 * Reads the tests of a decision table's cells. The grammar (DMN clause 9, S-FEEL unary tests):
 *
 * <pre>
 * cell     := '-' | 'not' '(' tests ')' | tests
 * tests    := test (',' test)*
 * test     := relation formula | interval | '[' tests ']' | formula
 * interval := ('[' | '(' | ']') formula '..' formula (']' | ')' | '[')
 * </pre>
 */
final class TestParser {

  private final Cursor cursor;
  private final Symbol input;
  private final Vocabulary vocabulary;
  private final Dialect dialect;
  private final FormulaParser formulas;
  private final NameIndex<String> choices;

  TestParser(Cursor cursor, Symbol input, Vocabulary vocabulary, Dialect dialect) {
    this.cursor = cursor;
    this.input = input;
    this.vocabulary = vocabulary;
    this.dialect = dialect;
    this.formulas = new FormulaParser(cursor, vocabulary, dialect, this);
    this.choices = NameIndex.of(input.choices(), this::typed);
  }

  /** The text as it stands in a cell that was tidied. */
  private String typed(String text) {
    return dialect == Dialect.KIND ? CellText.plain(text) : text;
  }

  FormulaParser formulas() {
    return formulas;
  }

  /** The words that are values of the column's input beside those that the protocol names. */
  List<String> words() {
    return dialect == Dialect.KIND && input.type() == ValueType.YES_NO
        ? List.of("yes", "no")
        : List.of();
  }

  /** The column's input, as a question mark names it. */
  Symbol input() throws ExpressionException {
    if (dialect == Dialect.KIND) {
      throw new ExpressionException(
          "`?` is FEEL beyond S-FEEL and is not read in a workbook",
          "write the test itself, as > 5 instead of ? > 5");
    }
    return input;
  }

  CellTest cell() throws ExpressionException {
    CellTest test = cursor.take("-") && cursor.atEnd() ? new Anything() : negatable();
    if (!cursor.atEnd()) {
      throw MisspeltName.fault(
          cursor,
          vocabulary,
          "`" + cursor.text() + "` goes on with `" + cursor.rest() + "` after a complete test",
          Optional.of("separate alternatives with a comma and a space"));
    }
    return test;
  }

  private CellTest negatable() throws ExpressionException {
    cursor.moveTo(0);
    if (cursor.looksAtWord("not") && isBracketAfterNot()) {
      int start = cursor.at();
      cursor.takeWord("not");
      cursor.take("(");
      CellTest inner = tests();
      if (cursor.take(")") && cursor.atEnd()) {
        return new NoneOf(inner);
      }
      cursor.moveTo(start);
    }
    return tests();
  }

  private boolean isBracketAfterNot() {
    int start = cursor.at();
    cursor.takeWord("not");
    boolean bracket = cursor.looksAt("(");
    cursor.moveTo(start);
    return bracket;
  }

  private CellTest tests() throws ExpressionException {
    List<CellTest> tests = new ArrayList<>();
    do {
      tests.add(test());
    } while (cursor.take(","));
    return tests.size() == 1 ? tests.get(0) : new AnyOf(tests);
  }

  /**
   * The test after {@code in}, of what stands before it: one test, or several in round brackets.
   */
  CellTest membership(Expression operand) throws ExpressionException {
    Symbol tested =
        operand instanceof Expression.Reference reference
            ? reference.symbol()
            : new Symbol("?", -1, operand.type(), List.of());
    return new TestParser(cursor, tested, vocabulary, dialect).oneOrSeveral();
  }

  private CellTest oneOrSeveral() throws ExpressionException {
    int start = cursor.at();
    if (cursor.take("(")) {
      CellTest several = tests();
      if (cursor.take(")")) {
        return several;
      }
      cursor.moveTo(start);
    }
    return test();
  }

  private CellTest test() throws ExpressionException {
    cursor.enter();
    try {
      Optional<Relation> relation = FormulaParser.relation(cursor);
      if (relation.isPresent()) {
        return compared(relation.get());
      }
      char next = cursor.peek();
      if (next == '[' || next == '(' || next == ']') {
        Optional<CellTest> bracket = interval();
        if (bracket.isPresent()) {
          return bracket.get();
        }
      }
      return next == '[' ? list() : value();
    } finally {
      cursor.leave();
    }
  }

  private CellTest compared(Relation relation) throws ExpressionException {
    if (relation.isOrder()) {
      checkOrder();
    }
    return new Compared(relation, endpoint());
  }

  private void checkOrder() throws ExpressionException {
    if (dialect == Dialect.KIND && input.isChoice()) {
      throw new ExpressionException(
          "`" + cursor.text() + "` compares a choice, which has no order here",
          "list the values: " + String.join(", ", input.choices()));
    }
    if (dialect == Dialect.KIND && input.type() == ValueType.YES_NO) {
      throw new ExpressionException(
          "`" + cursor.text() + "` compares a yes/no, which has no order", "write yes or no");
    }
  }

  private Optional<CellTest> interval() throws ExpressionException {
    int start = cursor.at();
    boolean lowIncluded = cursor.take("[");
    if (!lowIncluded && !cursor.take("(")) {
      cursor.take("]");
    }
    Expression low;
    try {
      low = formulas.sum();
    } catch (ExpressionException notAnEndpoint) {
      cursor.moveTo(start);
      return Optional.empty();
    }
    if (!cursor.take("..")) {
      cursor.moveTo(start);
      return Optional.empty();
    }
    checkOrder();
    checkType(low);
    Expression high = formulas.sum();
    checkType(high);
    boolean highIncluded = cursor.take("]");
    if (!highIncluded && !cursor.take(")") && !cursor.take("[")) {
      throw MisspeltName.fault(
          cursor,
          vocabulary,
          "`" + cursor.text() + "` starts an interval and does not end it",
          Optional.of("close it with ] when the end belongs to it, with ) when not"));
    }
    if (dialect == Dialect.KIND) {
      refuseEmpty(low, high, lowIncluded && highIncluded);
    }
    return Optional.of(new Between(low, lowIncluded, high, highIncluded));
  }

  private void refuseEmpty(Expression low, Expression high, boolean endsIncluded)
      throws ExpressionException {
    int order =
        low instanceof Literal from && high instanceof Literal to
            ? from.value().compareTo(to.value())
            : -1;
    if (order == 0 && !endsIncluded) {
      throw new ExpressionException(
          "`" + cursor.text() + "` is an interval that holds no value",
          "write the value alone, or include the ends with [ and ]");
    }
    if (order > 0) {
      throw new ExpressionException(
          "`" + cursor.text() + "` is an interval whose low end is above its high end",
          "write the smaller value first");
    }
  }

  private CellTest list() throws ExpressionException {
    cursor.take("[");
    CellTest inner = tests();
    if (!cursor.take("]")) {
      throw formulas.lacks("]");
    }
    return inner;
  }

  private CellTest value() throws ExpressionException {
    Expression endpoint = choiceOr(formulas::formula);
    boolean isCondition =
        dialect == Dialect.STRICT
            && endpoint.type() == ValueType.YES_NO
            && (input.type() != ValueType.YES_NO || endpoint.references().contains(input));
    if (isCondition) {
      return new Condition(endpoint, input);
    }
    return new Compared(Relation.EQUAL, checked(endpoint));
  }

  private Expression endpoint() throws ExpressionException {
    return checked(choiceOr(formulas::sum));
  }

  private interface Reader {
    Expression read() throws ExpressionException;
  }

  private Expression choiceOr(Reader reader) throws ExpressionException {
    if (!input.isChoice()) {
      return reader.read();
    }
    int start = cursor.at();
    cursor.skipSpace();
    Optional<NameIndex.Found<String>> choice = choices.longestAt(cursor.text(), cursor.at());
    if (choice.isPresent() && endsValue(choice.get().end())) {
      cursor.moveTo(choice.get().end());
      return new Literal(Value.of(choice.get().what()));
    }
    cursor.moveTo(start);
    String word = cursor.nextWord();
    try {
      return canonical(reader.read());
    } catch (ExpressionException notAName) {
      throw new ExpressionException(
          "`" + word + "` is not a value of `" + input.name() + "`",
          NearestWord.help(word, input.choices()));
    }
  }

  private boolean endsValue(int end) {
    int start = cursor.at();
    cursor.moveTo(end);
    char next = cursor.peek();
    cursor.moveTo(start);
    return next == 0 || next == ',' || next == ')' || next == ']';
  }

  /** A quoted choice in the spelling that the field defines. */
  private Expression canonical(Expression endpoint) throws ExpressionException {
    if (!(endpoint instanceof Literal literal) || literal.value().type() != ValueType.TEXT) {
      return endpoint;
    }
    String text = literal.value().plain();
    Optional<String> known = choices.find(typed(text));
    if (known.isEmpty() && dialect == Dialect.KIND) {
      throw new ExpressionException("`" + text + "` is not a value of `" + input.name() + "`");
    }
    return dialect == Dialect.KIND
        ? known.<Expression>map(value -> new Literal(Value.of(value))).orElse(endpoint)
        : endpoint;
  }

  private Expression checked(Expression endpoint) throws ExpressionException {
    if (endpoint instanceof Nothing) {
      return new Nothing(input.type());
    }
    checkType(endpoint);
    return endpoint;
  }

  private String wanted() {
    if (input.isChoice()) {
      return NearestWord.help(cursor.text(), input.choices());
    }
    return input.type() == ValueType.YES_NO ? "write yes or no" : "write a " + input.type().word();
  }

  private void checkType(Expression endpoint) throws ExpressionException {
    boolean fits = endpoint.type() == input.type() || endpoint instanceof Nothing;
    if (!fits && dialect == Dialect.KIND) {
      throw new ExpressionException(
          "`"
              + cursor.text()
              + "` has a "
              + endpoint.type().word()
              + " where `"
              + input.name()
              + "` is a "
              + (input.isChoice() ? "choice" : input.type().word()),
          wanted());
    }
  }
}
