package org.cotyla.compare;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.cotyla.compare.Difference.Kind;
import org.cotyla.expression.Symbol;
import org.cotyla.finite.Claim;
import org.cotyla.finite.Claim.Weighted;
import org.cotyla.protocol.DecisionTable;
import org.cotyla.protocol.HitPolicy;
import org.cotyla.protocol.Row;
import org.cotyla.value.PossibleValues;
import org.cotyla.value.Value;

/** In what two numbers worked out from all rows' results can differ: sums, counts and extremes. */
final class NumberAspects {

  private final DecisionTable before;
  private final DecisionTable after;
  private final Side old;
  private final Side young;

  NumberAspects(DecisionTable before, DecisionTable after, Side old, Side young) {
    this.before = before;
    this.after = after;
    this.old = old;
    this.young = young;
  }

  Aspects aspects() {
    if (before.hitPolicy() != after.hitPolicy()) {
      return Aspects.refused("the two work their number out in different ways");
    }
    List<Aspect> numbers = new ArrayList<>();
    for (int i = 0; i < after.outputs().size(); i++) {
      Optional<List<Value>> was = numbers(before, old, i);
      Optional<List<Value>> is = numbers(after, young, i);
      if (was.isEmpty() || is.isEmpty()) {
        return Aspects.refused(
            after.hitPolicy() == HitPolicy.COUNT
                ? "its default row gives something else than one number, such as a formula"
                : "it works its number out from formulas, or from something else than numbers");
      }
      numbers.addAll(
          switch (after.hitPolicy()) {
            case COUNT, SUM -> sums(i, was.get(), is.get());
            default -> List.of(extremes(i, was.get(), is.get()));
          });
    }
    return Aspects.of(numbers);
  }

  /**
   * What each row adds, the default row last; nothing when one of them is not a single number in
   * every case. Rows that are counted add 1, whatever they give.
   */
  private static Optional<List<Value>> numbers(DecisionTable table, Side side, int output) {
    List<Value> values = new ArrayList<>();
    for (Row row : TablePair.rows(table)) {
      boolean counted = table.hitPolicy() == HitPolicy.COUNT && table.rows().contains(row);
      Optional<Value> value =
          counted
              ? Optional.of(Value.of(1))
              : side.constants()
                  .of(row.results().get(output).expression())
                  .flatMap(PossibleValues::single)
                  .filter(Value.NumberValue.class::isInstance);
      if (value.isEmpty()) {
        return Optional.empty();
      }
      values.add(value.get());
    }
    return Optional.of(values);
  }

  private List<Aspect> sums(int output, List<Value> was, List<Value> is) {
    Symbol symbol = after.outputs().get(output).symbol();
    List<Aspect> sums = new ArrayList<>();
    sums.add(
        new SumAspect(
            symbol.name(),
            young.unit(symbol),
            weighted(before, old, was),
            weighted(after, young, is),
            Kind.SUM));
    boolean canBeNothing = after.hitPolicy() != HitPolicy.COUNT;
    if (canBeNothing) {
      sums.add(
          new PresenceAspect(
              symbol.name() + " is nothing",
              nothing(before, old),
              nothing(after, young),
              Kind.NEW_ENTRY,
              Kind.GONE_ENTRY));
    }
    return sums;
  }

  private static Claim nothing(DecisionTable table, Side side) {
    return table.otherwise().isPresent()
        ? new Claim.Any(List.of())
        : new Claim.Of(side.number(), new Claim.NoRow(table));
  }

  private static List<Weighted> weighted(DecisionTable table, Side side, List<Value> values) {
    List<Row> rows = TablePair.rows(table);
    List<Weighted> weighted = new ArrayList<>();
    for (int i = 0; i < rows.size(); i++) {
      Claim counts = new Claim.Of(side.number(), new Claim.Counts(table, rows.get(i)));
      weighted.add(new Weighted(counts, ((Value.NumberValue) values.get(i)).number()));
    }
    return weighted;
  }

  private Aspect extremes(int output, List<Value> was, List<Value> is) {
    boolean alone = after.outputs().size() == 1;
    return new TokenAspect(
        alone ? "" : after.outputs().get(output).symbol().name(),
        extremes(before, old, output, was),
        extremes(after, young, output, is));
  }

  private static Map<String, Claim> extremes(
      DecisionTable table, Side side, int output, List<Value> values) {
    Symbol symbol = table.outputs().get(output).symbol();
    String unit = side.unit(symbol);
    Map<String, Claim> tokens = new LinkedHashMap<>();
    for (Value value : values) {
      tokens.putIfAbsent(
          value.plain() + (unit.isEmpty() ? "" : " " + unit),
          new Claim.Of(side.number(), new Claim.Is(symbol, PossibleValues.of(value))));
    }
    tokens.put(
        "nothing",
        new Claim.Of(side.number(), new Claim.Is(symbol, PossibleValues.nothing(symbol.type()))));
    return tokens;
  }
}
