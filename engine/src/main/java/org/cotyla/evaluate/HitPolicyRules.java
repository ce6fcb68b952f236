package org.cotyla.evaluate;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.cotyla.expression.Scope;
import org.cotyla.protocol.DecisionTable;
import org.cotyla.protocol.HitPolicy;
import org.cotyla.value.PossibleValues;

/**
 * Which of the rows that fired make up the result (DMN clause 8.2.8).
 *
 * <p>Where the standard gives an error (two rows match under U, or two that differ under A) the
 * contradiction is reported with both rows, and either result is possible from there on: nothing is
 * guessed, and what follows is no more certain than it may be.
 */
final class HitPolicyRules {

  private HitPolicyRules() {}

  /** What the policy makes of the rows, which are in the order of the sheet. */
  static Selection select(DecisionTable table, List<Firing> fired, Scope values) {
    boolean anyCertain = fired.stream().anyMatch(Firing::certain);
    // A list without a default row is what matched, be it nothing, so the question does not arise.
    boolean noDefault = table.hitPolicy().isList() && table.otherwise().isEmpty();
    boolean nonePossible = !anyCertain && (noDefault || !Coverage.isComplete(table, fired, values));
    return switch (table.hitPolicy()) {
      case UNIQUE, ANY -> together(table, fired, nonePossible);
      case FIRST -> leading(fired, upToFirstCertain(fired), nonePossible);
      case PRIORITY -> leading(fired, Priorities.contenders(table, fired), nonePossible);
      case OUTPUT_ORDER -> all(Priorities.sorted(table, fired), nonePossible);
      case RULE_ORDER, COLLECT, SUM, MINIMUM, MAXIMUM, COUNT -> all(fired, nonePossible);
    };
  }

  private static Selection all(List<Firing> fired, boolean nonePossible) {
    List<Firing> counting =
        fired.stream()
            .map(f -> f.standing(f.certain() ? Standing.DECIDES : Standing.MAY_DECIDE))
            .toList();
    return new Selection(counting, fired.isEmpty(), nonePossible, List.of());
  }

  private static List<Firing> upToFirstCertain(List<Firing> fired) {
    List<Firing> counting = new ArrayList<>();
    for (Firing firing : fired) {
      counting.add(firing);
      if (firing.certain()) {
        break;
      }
    }
    return counting;
  }

  /** One of the rows that count is the result: those that no certain row goes before. */
  private static Selection leading(
      List<Firing> fired, List<Firing> counting, boolean nonePossible) {
    boolean certain = counting.size() == 1 && !nonePossible;
    Standing standing = certain ? Standing.DECIDES : Standing.MAY_DECIDE;
    return selection(fired, counting, standing, nonePossible, List.of());
  }

  /** All matching rows, of which the policy allows one, or several that agree. */
  private static Selection together(DecisionTable table, List<Firing> fired, boolean nonePossible) {
    boolean certain = !fired.isEmpty() && !nonePossible && agree(table, fired);
    List<Firing> counting =
        fired.stream()
            .map(
                firing ->
                    firing.standing(
                        certain && (firing.certain() || fired.size() == 1)
                            ? Standing.DECIDES
                            : Standing.MAY_DECIDE))
            .toList();
    return new Selection(counting, fired.isEmpty(), nonePossible, faults(table, fired));
  }

  private static boolean agree(DecisionTable table, List<Firing> fired) {
    boolean alone = fired.size() == 1;
    return alone || (table.hitPolicy() == HitPolicy.ANY && sameResults(fired));
  }

  /** Whether the rows give the same whatever the open data are. */
  private static boolean sameResults(List<Firing> fired) {
    Firing first = fired.get(0);
    return fired.stream()
        .allMatch(
            firing ->
                firing.row().vote().equals(first.row().vote())
                    && outputs(first).allMatch(output -> isSame(firing, first, output)));
  }

  private static boolean isSame(Firing a, Firing b, int output) {
    PossibleValues result = a.results().get(output);
    boolean sameFormula =
        a.row()
            .results()
            .get(output)
            .expression()
            .equals(b.row().results().get(output).expression());
    return sameFormula || (result.isCertain() && result.equals(b.results().get(output)));
  }

  /** Whether the rows differ whatever the open data are. */
  private static boolean differ(List<Firing> fired) {
    Firing first = fired.get(0);
    return fired.stream().anyMatch(firing -> firing.differsFrom(first));
  }

  private static IntStream outputs(Firing firing) {
    return IntStream.range(0, firing.results().size());
  }

  private static List<Fault> faults(DecisionTable table, List<Firing> fired) {
    List<Firing> certain = fired.stream().filter(Firing::certain).toList();
    boolean any = table.hitPolicy() == HitPolicy.ANY;
    if (certain.size() < 2 || (any && !differ(certain))) {
      return List.of();
    }
    String rows =
        certain.stream()
            .map(f -> "`" + f.row().id() + "` (" + f.row().at().plain() + ")")
            .collect(Collectors.joining(" and "));
    String message =
        any
            ? "rows " + rows + " all match but do not give the same, which hit policy A demands"
            : "rows " + rows + " all match, but hit policy U allows only one";
    return List.of(
        new Fault(
            any ? "E002" : "E001",
            table.name(),
            message,
            certain.stream().map(f -> f.row().at()).toList()));
  }

  private static Selection selection(
      List<Firing> fired,
      List<Firing> counting,
      Standing standing,
      boolean nonePossible,
      List<Fault> faults) {
    List<Firing> all = new ArrayList<>();
    counting.forEach(firing -> all.add(firing.standing(standing)));
    Predicate<Firing> counts =
        firing -> counting.stream().anyMatch(other -> other.row() == firing.row());
    fired.stream()
        .filter(counts.negate())
        .sorted(Comparator.comparingInt(firing -> firing.row().position()))
        .forEach(firing -> all.add(firing.standing(Standing.SET_ASIDE)));
    return new Selection(all, fired.isEmpty(), nonePossible, faults);
  }
}
