package org.cotyla.compare;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.cotyla.compare.Shift.Kind;
import org.cotyla.evaluate.Contribution;
import org.cotyla.evaluate.DecisionResult;
import org.cotyla.evaluate.RankedOption;
import org.cotyla.evaluate.RankedOption.Availability;
import org.cotyla.evaluate.RankingResult;
import org.cotyla.evaluate.Recommendation;
import org.cotyla.protocol.DecisionTable;
import org.cotyla.protocol.ShownAs;
import org.cotyla.value.PossibleValues;

/** What shifts between the answers of two protocols to one case, of what is on the first page. */
final class Shifts {

  private static final String NOTHING = "nothing, every option is ruled out";

  private final Recommendation before;
  private final Recommendation after;
  private final List<Shift> shifts = new ArrayList<>();

  private Shifts(Recommendation before, Recommendation after) {
    this.before = before;
    this.after = after;
  }

  static List<Shift> between(Recommendation before, Recommendation after, Pairs pairs) {
    Shifts shifts = new Shifts(before, after);
    for (DecisionTable table : after.protocol().decisions()) {
      boolean shown =
          table.shownAs() == ShownAs.HEADLINE && !table.votes() && !table.hitPolicy().isList();
      Optional<DecisionTable> was = pairs.oldOf(table);
      if (shown && was.isPresent()) {
        shifts.decision(was.get(), table);
      }
    }
    after
        .rankings()
        .forEach(
            ranking ->
                before
                    .ranking(ranking.ranking().name())
                    .ifPresent(was -> shifts.ranking(was, ranking)));
    return shifts.shifts;
  }

  private void decision(DecisionTable oldTable, DecisionTable table) {
    Optional<DecisionResult> was = result(before, oldTable);
    Optional<DecisionResult> is = result(after, table);
    if (was.isEmpty() || is.isEmpty()) {
      return;
    }
    String one = words(was.get());
    String other = words(is.get());
    if (!one.equals(other)) {
      add(Kind.DECISION, table.name(), one, other, rows(was.get()), rows(is.get()));
    }
  }

  private static Optional<DecisionResult> result(Recommendation answer, DecisionTable table) {
    return answer.decisions().stream().filter(one -> one.table() == table).findFirst();
  }

  private static String words(DecisionResult result) {
    return result.table().outputs().stream()
        .map(
            output -> {
              PossibleValues value = result.outputs().get(output.symbol().name());
              String words = value == null ? "nothing" : value.plain();
              boolean one = result.table().outputs().size() == 1;
              return one ? words : output.symbol().name() + " " + words;
            })
        .collect(Collectors.joining("; "));
  }

  private static Set<String> rows(DecisionResult result) {
    Set<String> ids = new LinkedHashSet<>();
    result.counting().forEach(firing -> ids.add(firing.row().id()));
    if (result.mayBeByDefault()) {
      result.table().otherwise().ifPresent(row -> ids.add(row.id()));
    }
    return ids;
  }

  private void ranking(RankingResult was, RankingResult is) {
    String one = was.leader().map(RankedOption::name).orElse(NOTHING);
    String other = is.leader().map(RankedOption::name).orElse(NOTHING);
    if (!one.equals(other)) {
      Set<String> oldRows = contributions(was, one, other);
      Set<String> newRows = contributions(is, one, other);
      add(Kind.FIRST, is.ranking().name(), one, other, oldRows, newRows);
    }
    for (RankedOption option : is.options()) {
      was.option(option.name()).ifPresent(earlier -> ruling(earlier, option));
    }
  }

  private static Set<String> contributions(RankingResult result, String one, String other) {
    return Stream.of(one, other)
        .flatMap(name -> result.option(name).stream())
        .flatMap(option -> option.contributions().stream())
        .map(contribution -> contribution.firing().row().id())
        .collect(Collectors.toCollection(LinkedHashSet::new));
  }

  private void ruling(RankedOption was, RankedOption is) {
    boolean wasOut = was.availability() == Availability.RULED_OUT;
    boolean isOut = is.availability() == Availability.RULED_OUT;
    if (wasOut != isOut) {
      Kind kind = isOut ? Kind.RULED_OUT : Kind.NO_LONGER_RULED_OUT;
      add(
          kind,
          is.name(),
          was.availability().word(),
          is.availability().word(),
          rulings(was),
          rulings(is));
    }
  }

  private static Set<String> rulings(RankedOption option) {
    return option.rulings().stream()
        .filter(Contribution::isCertain)
        .map(contribution -> contribution.firing().row().id())
        .collect(Collectors.toCollection(LinkedHashSet::new));
  }

  private void add(
      Kind kind, String about, String was, String now, Set<String> oldRows, Set<String> newRows) {
    List<String> gone = oldRows.stream().filter(id -> !newRows.contains(id)).toList();
    List<String> come = newRows.stream().filter(id -> !oldRows.contains(id)).toList();
    // The same row can give something else; then it is the one to name.
    boolean sameRows = gone.isEmpty() && come.isEmpty();
    shifts.add(new Shift(kind, about, was, now, gone, sameRows ? List.copyOf(newRows) : come));
  }
}
