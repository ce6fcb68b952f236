package org.cotyla.cli.text;

import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.cotyla.evaluate.Firing;
import org.cotyla.evaluate.Recommendation;
import org.cotyla.expression.Symbol;
import org.cotyla.finding.Datum;
import org.cotyla.finding.Datum.Knowledge;
import org.cotyla.issue.CellRef;
import org.cotyla.protocol.Calculation;
import org.cotyla.protocol.Field;
import org.cotyla.protocol.Row;
import org.cotyla.unit.UnitWords;
import org.cotyla.value.PossibleValues;
import org.cotyla.value.Truth;
import org.cotyla.value.ValueSet;

/** What every name of a case came to, in words with its unit. */
public final class KnownValues {

  private static final int MOST_NAMES = 3;

  private final Map<Symbol, PossibleValues> values = new HashMap<>();
  private final Map<Symbol, String> units = new HashMap<>();
  private final Map<Symbol, ValueSet> allowed = new HashMap<>();
  private final Map<Symbol, CellRef> formulas = new HashMap<>();
  private final Set<Symbol> notStated = new HashSet<>();

  public KnownValues(Recommendation advice) {
    for (Datum datum : advice.findings().data()) {
      values.put(datum.field().symbol(), datum.value());
      if (datum.knowledge() == Knowledge.MISSING) {
        notStated.add(datum.field().symbol());
      }
    }
    for (Field field : advice.protocol().fields()) {
      units.put(field.symbol(), field.unit());
      allowed.put(field.symbol(), field.allowed());
    }
    for (Calculation calculation : advice.protocol().calculations()) {
      units.put(calculation.symbol(), calculation.unit());
      formulas.put(calculation.symbol(), calculation.expressionAt());
      PossibleValues value = advice.calculations().get(calculation.name());
      if (value != null) {
        values.put(calculation.symbol(), value);
      }
    }
    advice
        .decisions()
        .forEach(
            decision ->
                decision
                    .table()
                    .outputs()
                    .forEach(
                        output -> {
                          PossibleValues value = decision.outputs().get(output.symbol().name());
                          if (value != null) {
                            values.put(output.symbol(), value);
                          }
                        }));
    advice.rankings().forEach(ranking -> values.put(ranking.ranking().first(), ranking.first()));
  }

  /** The value that a name had in a test. */
  public String inWords(Symbol symbol, PossibleValues value) {
    if (notStated.contains(symbol)) {
      return "not stated";
    }
    String words = Words.values(value, symbol);
    return value.isNothing() ? words : withUnit(symbol, words);
  }

  /** Words about a name's values with its unit. */
  public String withUnit(Symbol symbol, String words) {
    return UnitWords.of(words, units.getOrDefault(symbol, ""));
  }

  /** All that a name may be. */
  ValueSet allowed(Symbol symbol) {
    return allowed.getOrDefault(symbol, ValueSet.all(symbol.type()));
  }

  /**
   * The values of the names that stand in a test, without their cells; empty when there are none.
   */
  String endpointValues(Row.Test test) {
    List<String> names =
        test.prepared().test().references().stream()
            .filter(values::containsKey)
            .sorted(Comparator.comparing(Symbol::name))
            .map(
                name ->
                    name.name()
                        + " = "
                        + inWords(
                            name, values.getOrDefault(name, PossibleValues.nothing(name.type()))))
            .toList();
    return names.isEmpty() ? "" : names.stream().collect(Collectors.joining(", ", " (", ")"));
  }

  /** The values of the names that stand in a test; empty when there are none. */
  public String endpoints(Row.Test test) {
    List<String> names =
        test.prepared().test().references().stream()
            .sorted(Comparator.comparing(Symbol::name))
            .map(this::named)
            .toList();
    return names.isEmpty() ? "" : names.stream().collect(Collectors.joining(", ", " (", ")"));
  }

  /** What a row's open tests wait for: their input, or the endpoints that are not known. */
  public List<String> openNames(Firing firing) {
    Set<String> names = new LinkedHashSet<>();
    for (int i = 0; i < firing.truths().size(); i++) {
      if (firing.truths().get(i) == Truth.OPEN) {
        Symbol input = firing.table().inputs().get(i).symbol();
        if (!firing.seen().get(i).isCertain()) {
          names.add(input.name());
        }
        firing.row().tests().get(i).prepared().test().references().stream()
            .filter(symbol -> values.containsKey(symbol) && !isCertain(symbol))
            .map(Symbol::name)
            .sorted()
            .forEach(names::add);
      }
    }
    return List.copyOf(names);
  }

  /** {@code (open: a, b)}, or empty when nothing is open. */
  public String waitsFor(Firing firing) {
    List<String> open = openNames(firing);
    return open.isEmpty() ? "" : " (open: " + Words.some(open, MOST_NAMES) + ")";
  }

  private boolean isCertain(Symbol symbol) {
    PossibleValues value = values.get(symbol);
    return value != null && value.isCertain();
  }

  private String named(Symbol symbol) {
    PossibleValues value = values.get(symbol);
    CellRef formula = formulas.get(symbol);
    return symbol.name()
        + (value == null ? "" : " = " + inWords(symbol, value))
        + (formula == null ? "" : " at " + formula.plain());
  }
}
