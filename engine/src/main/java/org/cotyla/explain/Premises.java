package org.cotyla.explain;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.cotyla.evaluate.Firing;
import org.cotyla.evaluate.Recommendation;
import org.cotyla.expression.Symbol;
import org.cotyla.finding.Datum;
import org.cotyla.protocol.Calculation;
import org.cotyla.protocol.DecisionTable;
import org.cotyla.protocol.Ranking;
import org.cotyla.protocol.Row;
import org.cotyla.protocol.Step;
import org.cotyla.value.PossibleValues;

/** Follows what rows have read upstream, down to what the case records. */
final class Premises {

  private static final Comparator<Symbol> BY_PLACE = Comparator.comparingInt(Symbol::index);

  private final Recommendation advice;
  private final Map<Symbol, Step> givers = new HashMap<>();
  private final Map<Step, Set<Symbol>> read = new LinkedHashMap<>();
  private final Set<Symbol> recorded = new LinkedHashSet<>();
  private final Deque<Symbol> toFollow = new ArrayDeque<>();

  private Premises(Recommendation advice) {
    this.advice = advice;
    advice.protocol().steps().forEach(step -> step.gives().forEach(one -> givers.put(one, step)));
  }

  /**
   * All that the rows rest on, each node once: a node stands after those that rest on it, recorded
   * findings last and in the order of the protocol.
   */
  static List<Premise> of(Recommendation advice, Collection<Firing> rows) {
    Premises premises = new Premises(advice);
    rows.forEach(firing -> premises.toFollow.addAll(readBy(firing)));
    premises.follow();
    return premises.inOrder();
  }

  private void follow() {
    while (!toFollow.isEmpty()) {
      Symbol symbol = toFollow.pop();
      Step giver = givers.get(symbol);
      if (giver == null) {
        recorded.add(symbol);
      } else {
        boolean isNew = !read.containsKey(giver);
        read.computeIfAbsent(giver, step -> new LinkedHashSet<>()).add(symbol);
        if (isNew) {
          toFollow.addAll(restsOn(giver));
        }
      }
    }
  }

  private List<Premise> inOrder() {
    List<Step> steps = new ArrayList<>(advice.protocol().steps());
    Collections.reverse(steps);
    List<Premise> premises = new ArrayList<>();
    for (Step step : steps) {
      Set<Symbol> names = read.get(step);
      if (names != null) {
        premise(step, names, premises);
      }
    }
    for (Datum datum : advice.findings().data()) {
      if (recorded.contains(datum.field().symbol())) {
        premises.add(new Premise.Recorded(datum));
      }
    }
    return premises;
  }

  private void premise(Step step, Set<Symbol> names, List<Premise> premises) {
    if (step instanceof Calculation calculation) {
      PossibleValues value = advice.calculations().get(calculation.name());
      if (value != null) {
        premises.add(new Premise.Calculated(calculation, value, restsOn(step)));
      }
    } else if (step instanceof DecisionTable table) {
      advice
          .decision(table.name())
          .map(result -> new Premise.Decided(result, List.copyOf(names), restsOn(step)))
          .ifPresent(premises::add);
    } else if (step instanceof Ranking ranking) {
      advice.ranking(ranking.name()).map(Premise.Ranked::new).ifPresent(premises::add);
    }
  }

  private List<Symbol> restsOn(Step step) {
    Set<Symbol> names = new LinkedHashSet<>();
    if (step instanceof Calculation calculation) {
      calculation.needs().stream().sorted(BY_PLACE).forEach(names::add);
    } else if (step instanceof DecisionTable table) {
      advice
          .decision(table.name())
          .ifPresent(
              result -> {
                result.counting().forEach(firing -> names.addAll(restsOn(firing)));
                if (result.mayBeByDefault()) {
                  table.inputs().forEach(input -> names.add(input.symbol()));
                  table.otherwise().ifPresent(row -> names.addAll(inResults(row)));
                }
              });
    }
    return List.copyOf(names);
  }

  /** A row without tests of its own counts since the rows before it fail on the table's inputs. */
  private static Set<Symbol> restsOn(Firing firing) {
    Set<Symbol> names = new LinkedHashSet<>();
    if (firing.tests().isEmpty() && firing.table().hitPolicy().isSingleHit()) {
      firing.table().inputs().forEach(input -> names.add(input.symbol()));
    }
    names.addAll(readBy(firing));
    return names;
  }

  /** What a row's tests and results read, in the order of the sheet. */
  private static Set<Symbol> readBy(Firing firing) {
    Set<Symbol> names = new LinkedHashSet<>();
    for (int i = 0; i < firing.row().tests().size(); i++) {
      Row.Test test = firing.row().tests().get(i);
      if (!test.prepared().isAnything()) {
        names.add(firing.table().inputs().get(i).symbol());
        test.prepared().references().stream().sorted(BY_PLACE).forEach(names::add);
      }
    }
    names.addAll(inResults(firing.row()));
    return names;
  }

  private static List<Symbol> inResults(Row row) {
    return row.results().stream()
        .flatMap(result -> result.expression().references().stream().sorted(BY_PLACE))
        .toList();
  }
}
