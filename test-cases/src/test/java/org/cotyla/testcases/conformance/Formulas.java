package org.cotyla.testcases.conformance;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.cotyla.expression.CellParser;
import org.cotyla.expression.Dialect;
import org.cotyla.expression.Expression;
import org.cotyla.expression.ExpressionException;
import org.cotyla.expression.FormulaFunction;
import org.cotyla.expression.Symbol;
import org.cotyla.expression.Vocabulary;
import org.cotyla.value.PossibleValues;
import org.cotyla.value.ValueType;

/** Works out FEEL text by the engine's own formulas, over names that stand for values. */
final class Formulas {

  private Formulas() {}

  /**
   * The text's value.
   *
   * @param paths what names and paths stand for
   * @throws OutOfScopeException when it is of a kind that the engine does not set out to read
   */
  static FeelValue evaluate(
      String text, Map<String, FeelValue> paths, Collection<FormulaFunction> functions) {
    Map<Symbol, PossibleValues> values = symbols(paths);
    Vocabulary vocabulary = new Vocabulary(values.keySet(), functions);
    try {
      Expression formula = new CellParser(vocabulary, Dialect.STRICT).formula(text);
      return FeelValue.of(formula.evaluate(values::get));
    } catch (ExpressionException unread) {
      throw OutOfScope.of(text)
          .<RuntimeException>map(OutOfScopeException::new)
          .orElseGet(() -> new IllegalStateException("not read: " + unread.line()));
    }
  }

  /** The type that the text gives when names have the given types; empty when it is not read. */
  static Optional<ValueType> type(
      String text, Map<String, ValueType> names, Collection<FormulaFunction> functions) {
    List<Symbol> symbols = new ArrayList<>();
    names.forEach((name, type) -> symbols.add(new Symbol(name, symbols.size(), type, List.of())));
    try {
      CellParser parser = new CellParser(new Vocabulary(symbols, functions), Dialect.STRICT);
      Expression formula = parser.formula(text);
      boolean isNull = formula instanceof Expression.Nothing;
      return isNull ? Optional.empty() : Optional.of(formula.type());
    } catch (ExpressionException unread) {
      return Optional.empty();
    }
  }

  private static Map<Symbol, PossibleValues> symbols(Map<String, FeelValue> paths) {
    Map<Symbol, PossibleValues> symbols = new LinkedHashMap<>();
    paths.forEach(
        (name, value) ->
            possible(value)
                .ifPresent(
                    known ->
                        symbols.put(
                            new Symbol(name, symbols.size(), known.type(), List.of()), known)));
    return symbols;
  }

  private static Optional<PossibleValues> possible(FeelValue value) {
    if (value instanceof FeelValue.Single single) {
      return Optional.of(PossibleValues.of(single.value()));
    }
    return value instanceof FeelValue.Null
        ? Optional.of(PossibleValues.nothing(ValueType.NUMBER))
        : Optional.empty();
  }
}
