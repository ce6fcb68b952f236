package org.cotyla.compile;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.cotyla.expression.Symbol;
import org.cotyla.issue.CellRef;
import org.cotyla.issue.Issues;
import org.cotyla.issue.Place;
import org.cotyla.protocol.Calculation;
import org.cotyla.protocol.DecisionTable;
import org.cotyla.protocol.Ranking;
import org.cotyla.protocol.Step;

/**
 * Puts steps in order of need (the decision requirements graph), and names a circle when there is
 * one.
 */
final class OrderOfNeed {

  private final Map<Symbol, Step> givers = new HashMap<>();
  private final List<Step> ordered = new ArrayList<>();
  private final Set<Step> done = Collections.newSetFromMap(new IdentityHashMap<>());
  private final List<Step> path = new ArrayList<>();
  private final List<Iterator<Step>> open = new ArrayList<>();
  private final Set<Step> onPath = Collections.newSetFromMap(new IdentityHashMap<>());
  private final Issues issues;

  private OrderOfNeed(Issues issues) {
    this.issues = issues;
  }

  /** The steps, each after all that it needs; ties keep the given order. */
  static List<Step> of(List<Step> steps, Issues issues) {
    OrderOfNeed order = new OrderOfNeed(issues);
    steps.forEach(step -> step.gives().forEach(symbol -> order.givers.put(symbol, step)));
    steps.forEach(order::visit);
    return order.ordered;
  }

  /** Goes down the needs on a path of its own, since a long chain would exhaust the stack. */
  private void visit(Step first) {
    enter(first);
    while (!path.isEmpty()) {
      Step step = path.get(path.size() - 1);
      Iterator<Step> rest = open.get(open.size() - 1);
      if (rest.hasNext()) {
        enter(rest.next());
      } else {
        path.remove(path.size() - 1);
        open.remove(open.size() - 1);
        onPath.remove(step);
        if (done.add(step)) {
          ordered.add(step);
        }
      }
    }
  }

  private void enter(Step step) {
    if (done.contains(step)) {
      return;
    }
    if (!onPath.add(step)) {
      reportCircle(step);
      return;
    }
    path.add(step);
    open.add(needed(step).iterator());
  }

  /** Steps are compared by identity: two equal tables are still two steps. */
  private int placeOnPath(Step step) {
    for (int i = 0; i < path.size(); i++) {
      if (path.get(i) == step) {
        return i;
      }
    }
    return -1;
  }

  private List<Step> needed(Step step) {
    List<Step> needed = new ArrayList<>();
    if (step instanceof Ranking ranking) {
      needed.addAll(ranking.voters());
    }
    step.needs().stream()
        .sorted((a, b) -> Integer.compare(a.index(), b.index()))
        .map(givers::get)
        .filter(giver -> giver != null && !(giver == step && step instanceof Ranking))
        .forEach(needed::add);
    return needed;
  }

  private void reportCircle(Step step) {
    List<Step> circle = new ArrayList<>(path.subList(placeOnPath(step), path.size()));
    circle.add(step);
    String names =
        circle.stream().map(part -> "`" + part.name() + "`").collect(Collectors.joining(" needs "));
    issues.error(
        "W180", place(step), "a circle: " + names, "let one of them be decided without the next");
    done.add(step);
  }

  private static Place place(Step step) {
    if (step instanceof DecisionTable table) {
      return table.at();
    }
    if (step instanceof Calculation calculation) {
      return calculation.at();
    }
    return ((Ranking) step)
        .options().stream()
            .map(option -> (Place) option.at())
            .findFirst()
            .orElse(new CellRef("Options", 0, 0));
  }
}
