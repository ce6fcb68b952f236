package org.cotyla.dmn;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Supplier;
import java.util.regex.Pattern;
import org.cotyla.expression.Expression;
import org.cotyla.expression.Symbol;
import org.cotyla.value.Value;

/** Cells as people write them in a workbook, over the workbook's names. */
final class WorkbookWording implements Wording {

  private static final Pattern BARE = Pattern.compile("[\\p{L}\\p{Nd}][\\p{L}\\p{Nd} ]*");
  private static final Set<String> NOT_BARE = Set.of("null", "not", "true", "false", "yes", "no");

  private final Map<Symbol, String> names;
  private final Set<Symbol> choices;

  /**
   * @param names what stands in the workbook for each name of the file
   * @param choices the names whose values are lists of texts
   */
  WorkbookWording(Map<Symbol, String> names, Set<Symbol> choices) {
    this.names = Map.copyOf(names);
    this.choices = Set.copyOf(choices);
  }

  @Override
  public String name(Symbol symbol) {
    return names.getOrDefault(symbol, symbol.name());
  }

  @Override
  public String literal(Value value) {
    return value.literal();
  }

  @Override
  public String alone(Value value, Symbol input) {
    if (value instanceof Value.TextValue text) {
      boolean bare =
          choices.contains(input)
              && BARE.matcher(text.text()).matches()
              && !NOT_BARE.contains(text.text());
      return bare ? text.text() : value.literal();
    }
    return value.plain();
  }

  @Override
  public String call(Expression.Call call, Supplier<List<String>> arguments) {
    return call.function().name() + "(" + String.join(", ", arguments.get()) + ")";
  }

  @Override
  public Expression simplified(Expression formula) {
    return NullGuards.without(formula);
  }

  @Override
  public List<Expression> guards(Expression part) {
    return List.of();
  }

  @Override
  public String sameAnswer(String formula) {
    return "= " + formula;
  }

  @Override
  public String otherThan(String formula) {
    return "!= " + formula;
  }
}
