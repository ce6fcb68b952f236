package org.cotyla.compile;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import org.cotyla.expression.FormulaFunction;
import org.cotyla.expression.Symbol;
import org.cotyla.expression.Vocabulary;
import org.cotyla.protocol.Field;
import org.cotyla.protocol.Option;
import org.cotyla.value.ValueType;

/**
 * Numbers all names of a protocol: fields first, then the rankings' first places, then
 * calculations.
 */
final class NamedThings {

  private final List<Symbol> symbols = new ArrayList<>();
  private final Collection<FormulaFunction> functions;

  NamedThings(
      List<Field> fields,
      Map<String, List<Option>> rankings,
      Collection<FormulaFunction> functions) {
    this.functions = functions;
    fields.forEach(field -> symbols.add(field.symbol()));
    rankings.forEach(
        (ranking, options) ->
            add(firstName(ranking), ValueType.TEXT, options.stream().map(Option::name).toList()));
  }

  static String firstName(String ranking) {
    return "first " + ranking;
  }

  private void add(String name, ValueType type, List<String> choices) {
    symbols.add(new Symbol(name, symbols.size(), type, choices));
  }

  /** The vocabulary with the calculations' names and types. */
  Vocabulary with(Map<String, ValueType> calculations) {
    List<Symbol> all = new ArrayList<>(symbols);
    calculations.forEach((name, type) -> all.add(new Symbol(name, all.size(), type, List.of())));
    return new Vocabulary(all, functions);
  }
}
