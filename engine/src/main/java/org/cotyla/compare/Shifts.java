package org.cotyla.compare;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.cotyla.compare.Shift.Kind;
import org.cotyla.evaluate.Contribution;
import org.cotyla.evaluate.DecisionResult;
import org.cotyla.evaluate.RankedOption;
import org.cotyla.evaluate.RankedOption.Availability;
import org.cotyla.evaluate.RankingResult;
import org.cotyla.value.PossibleValues;

/** What shifts between the answers of two protocols to one case, of what is on the first page. */
final class Shifts {

  private static final String NOTHING = "nothing, every option is ruled out";

  private final List<Shift> shifts = new ArrayList<>();

  private Shifts() {}

  static List<Shift> of(PairedCase pair) {
    Shifts shifts = new Shifts();
    pair.decisions().forEach(both -> shifts.decision(both.was(), both.is()));
    pair.rankings().forEach(both -> shifts.ranking(both.was(), both.is()));
    return shifts.shifts;
  }

  private void decision(DecisionResult was, DecisionResult is) {
    String one = words(was);
    String other = words(is);
    if (!one.equals(other)) {
      add(Kind.DECISION, is.table().name(), one, other, rows(was), rows(is));
    }
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
