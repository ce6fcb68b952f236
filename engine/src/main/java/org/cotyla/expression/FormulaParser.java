package org.cotyla.expression;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.cotyla.expression.Expression.Arithmetic;
import org.cotyla.expression.Expression.Call;
import org.cotyla.expression.Expression.Comparison;
import org.cotyla.expression.Expression.Conditional;
import org.cotyla.expression.Expression.Literal;
import org.cotyla.expression.Expression.Logic;
import org.cotyla.expression.Expression.Membership;
import org.cotyla.expression.Expression.Negation;
import org.cotyla.expression.Expression.Not;
import org.cotyla.expression.Expression.Nothing;
import org.cotyla.expression.Expression.Reference;
import org.cotyla.name.NameIndex;
import org.cotyla.name.Names;
import org.cotyla.name.NearestWord;
import org.cotyla.value.Value;
import org.cotyla.value.ValueType;

/**
 * Reads formulas. The grammar, loosest first:
 *
 * <pre>
 * formula     := 'if' formula 'then' formula 'else' formula | disjunction
 * disjunction := conjunction ('or' conjunction)*
 * conjunction := comparison ('and' comparison)*
 * comparison  := sum (('=' | '!=' | '<' | '<=' | '>' | '>=') sum
 *              | 'between' sum 'and' sum | 'in' test)?
 * sum         := product (('+' | '-') product)*
 * product     := power (('*' | '/') power)*
 * power       := signed ('**' signed)*
 * signed      := '-' signed | atom
 * atom        := literal | 'null' | '?' | 'not' '(' formula ')' | function '(' formulas ')'
 *              | name | '(' formula ')'
 * </pre>
 */
final class FormulaParser {

  private final Cursor cursor;
  private final Vocabulary vocabulary;
  private final Dialect dialect;
  private final LiteralReader literals;
  private final TestParser tests;

  FormulaParser(Cursor cursor, Vocabulary vocabulary, Dialect dialect, TestParser tests) {
    this.cursor = cursor;
    this.vocabulary = vocabulary;
    this.dialect = dialect;
    this.literals = new LiteralReader(cursor, dialect);
    this.tests = tests;
  }

  Expression formula() throws ExpressionException {
    cursor.enter();
    Expression formula = cursor.takeWord("if") ? conditional() : disjunction();
    cursor.leave();
    return formula;
  }

  private Expression conditional() throws ExpressionException {
    Expression condition = formula();
    expectWord("then");
    Expression whenTrue = formula();
    expectWord("else");
    Expression otherwise = formula();
    TypeRules.same("then", whenTrue, "else", otherwise);
    return new Conditional(
        condition, typed(whenTrue, otherwise.type()), typed(otherwise, whenTrue.type()));
  }

  /** A null takes the type of the other branch. */
  private static Expression typed(Expression branch, ValueType other) {
    return branch instanceof Nothing ? new Nothing(other) : branch;
  }

  private Expression disjunction() throws ExpressionException {
    Expression left = conjunction();
    while (cursor.takeWord("or")) {
      left = new Logic(false, left, conjunction());
    }
    return left;
  }

  private Expression conjunction() throws ExpressionException {
    Expression left = comparison();
    while (cursor.takeWord("and")) {
      left = new Logic(true, left, comparison());
    }
    return left;
  }

  private Expression comparison() throws ExpressionException {
    Expression left = sum();
    Optional<Relation> relation = relation(cursor);
    if (relation.isPresent()) {
      Expression right = sum();
      if (checksTypes()) {
        TypeRules.same("left of " + relation.get().sign(), left, "right of it", right);
      }
      return new Comparison(relation.get(), left, right);
    }
    if (cursor.takeWord("between")) {
      Expression low = sum();
      expectWord("and");
      Expression high = sum();
      if (checksTypes()) {
        TypeRules.same("before between", left, "after it", low);
        TypeRules.same("before between", left, "after and", high);
      }
      return new Membership(left, new CellTest.Between(low, true, high, true));
    }
    return cursor.takeWord("in") ? new Membership(left, tests.membership(left)) : left;
  }

  /** Takes the comparison sign at the cursor, if there is one. */
  static Optional<Relation> relation(Cursor cursor) {
    for (Relation relation :
        List.of(
            Relation.AT_MOST,
            Relation.AT_LEAST,
            Relation.UNEQUAL,
            Relation.EQUAL,
            Relation.LESS,
            Relation.GREATER)) {
      if (cursor.take(relation.sign())) {
        return Optional.of(relation);
      }
    }
    return Optional.empty();
  }

  Expression sum() throws ExpressionException {
    return joined(ArithmeticSign.ADD.strength());
  }

  private Expression joined(int strength) throws ExpressionException {
    if (strength > ArithmeticSign.POWER.strength()) {
      return signed();
    }
    Expression left = joined(strength + 1);
    Optional<ArithmeticSign> sign = sign(strength);
    while (sign.isPresent()) {
      Expression right = joined(strength + 1);
      if (checksTypes()) {
        TypeRules.arithmetic(sign.get(), left, right);
      } else {
        TypeRules.noDuration(sign.get(), left, right);
      }
      left = new Arithmetic(sign.get(), left, right);
      sign = sign(strength);
    }
    return left;
  }

  private Optional<ArithmeticSign> sign(int strength) {
    for (ArithmeticSign sign : ArithmeticSign.values()) {
      boolean isPower = sign == ArithmeticSign.MULTIPLY && cursor.looksAt("**");
      if (sign.strength() == strength && !isPower && cursor.take(sign.sign())) {
        return Optional.of(sign);
      }
    }
    return Optional.empty();
  }

  private Expression signed() throws ExpressionException {
    cursor.part();
    if (!cursor.take("-")) {
      return atom();
    }
    cursor.enter();
    Expression operand = signed();
    cursor.leave();
    if (checksTypes()) {
      TypeRules.number("after -", operand);
    }
    return operand instanceof Literal literal && literal.value() instanceof Value.NumberValue number
        ? new Literal(Value.of(number.number().negate()))
        : new Negation(operand);
  }

  private Expression atom() throws ExpressionException {
    Optional<NameIndex.Found<Symbol>> name =
        vocabulary.symbolAt(cursor.text(), start()).filter(found -> !isCalled(found));
    Optional<Expression> literal = name.isPresent() ? Optional.empty() : literals.read();
    if (literal.isPresent()) {
      return literal.get();
    }
    if (name.isPresent()) {
      cursor.takeName(name.get().end());
      return new Reference(name.get().what());
    }
    if (cursor.takeWord("null")) {
      return new Nothing(ValueType.NUMBER);
    }
    if (cursor.take("?")) {
      return new Reference(tests.input());
    }
    if (cursor.looksAtWord("not") && cursor.takeWord("not")) {
      return new Not(bracketed());
    }
    if (cursor.looksAt("(")) {
      return bracketed();
    }
    return call();
  }

  /**
   * Whether a function with its arguments stands here, and not a field, which may have the same
   * name or one that the function's begins with.
   */
  private boolean isCalled(NameIndex.Found<Symbol> name) {
    boolean isDate = Names.key(name.what().name()).equals("date") && bracketAt(name.end());
    return isDate
        || vocabulary
            .functionAt(cursor.text(), cursor.at())
            .filter(function -> function.end() >= name.end() && bracketAt(function.end()))
            .isPresent();
  }

  private boolean bracketAt(int place) {
    int start = cursor.at();
    cursor.moveTo(place);
    boolean bracket = cursor.looksAt("(");
    cursor.moveTo(start);
    return bracket;
  }

  private int start() {
    cursor.skipSpace();
    return cursor.at();
  }

  private Expression bracketed() throws ExpressionException {
    expect("(");
    Expression inner = formula();
    expect(")");
    return inner;
  }

  private Expression call() throws ExpressionException {
    Optional<NameIndex.Found<FormulaFunction>> found =
        vocabulary.functionAt(cursor.text(), start());
    if (found.isEmpty()) {
      throw unknown();
    }
    FormulaFunction function = found.get().what();
    cursor.moveTo(found.get().end());
    expect("(");
    List<Expression> arguments = new ArrayList<>();
    if (!cursor.looksAt(")")) {
      do {
        arguments.add(formula());
      } while (cursor.take(","));
    }
    expect(")");
    TypeRules.count(function, arguments);
    if (checksTypes()) {
      TypeRules.arguments(function, arguments);
    }
    return new Call(function, arguments);
  }

  /**
   * In a workbook two types that cannot meet are a mistake to report; by the standard the formula
   * is sound and gives null.
   */
  private boolean checksTypes() {
    return dialect == Dialect.KIND;
  }

  private ExpressionException unknown() {
    if (cursor.atEnd()) {
      return new ExpressionException(
          "`" + cursor.text() + "` ends where a value or a name should follow");
    }
    String word = cursor.nextWord();
    List<String> valid = new ArrayList<>(vocabulary.names());
    valid.addAll(vocabulary.functionNames());
    valid.addAll(tests.words());
    String message = "`" + word + "` is neither a value nor a name that is known here";
    return NearestWord.to(word, valid)
        .map(nearest -> new ExpressionException(message, "did you mean `" + nearest + "`?"))
        .orElseGet(() -> new ExpressionException(message));
  }

  private void expect(String sign) throws ExpressionException {
    if (!cursor.take(sign)) {
      throw lacks(sign);
    }
  }

  private void expectWord(String word) throws ExpressionException {
    if (!cursor.takeWord(word)) {
      throw lacks(word);
    }
  }

  /** The fault that something does not stand at the cursor. */
  ExpressionException lacks(String what) {
    String where = cursor.atEnd() ? "at its end" : "before `" + cursor.rest() + "`";
    return MisspeltName.fault(
        cursor,
        vocabulary,
        "`" + cursor.text() + "` lacks `" + what + "` " + where,
        Optional.empty());
  }
}
