package org.cotyla.explore;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.cotyla.evaluate.Engine;
import org.cotyla.evaluate.Recommendation;
import org.cotyla.finding.Datum;
import org.cotyla.finite.Answer;
import org.cotyla.finite.CaseSearch;
import org.cotyla.finite.Claim;
import org.cotyla.protocol.Field;
import org.cotyla.value.PossibleValues;
import org.cotyla.value.Value;
import org.cotyla.value.ValueSet;

/**
 * Moves each of some findings as little as will do, one after the other in the protocol's order.
 */
final class LeastMoves {

  private static final int OTHERS_AT_MOST = 12;

  private final Engine engine;
  private final Recommendation advice;
  private final Goal goal;
  private final CaseSearch search;
  private final List<Datum> known;
  private final FieldClasses classes;

  LeastMoves(
      Engine engine, Recommendation advice, Goal goal, CaseSearch search, List<Datum> known) {
    this.engine = engine;
    this.advice = advice;
    this.goal = goal;
    this.search = search;
    this.known = known;
    this.classes = new FieldClasses(engine.protocol());
  }

  /**
   * @param moved the findings that differ
   * @param found a case in which they do
   */
  ChangeSet of(List<Datum> moved, Answer.Found found) {
    List<Claim> others = new ArrayList<>(List.of(goal.claim()));
    for (Datum datum : known) {
      if (!moved.contains(datum)) {
        others.add(new Claim.Is(datum.field().symbol(), datum.value()));
      }
    }
    Map<String, ValueSet> fixed = new LinkedHashMap<>();
    Map<String, Nearest> nearests = new LinkedHashMap<>();
    Answer.Found best = found;
    for (Datum datum : moved) {
      Nearest nearest = new Nearest(datum, search, others);
      best = nearest.find(classes, best);
      Value to = value(best, datum.field());
      others.add(new Claim.Is(datum.field().symbol(), PossibleValues.of(to)));
      fixed.put(datum.field().name(), ValueSet.of(to));
      nearests.put(datum.field().name(), nearest);
    }
    Map<String, ValueSet> once = onceRecorded(best, fixed);
    return result(moved, fixed, nearests, once);
  }

  private static Value value(Answer.Found found, Field field) {
    return found
        .findings()
        .datum(field.name())
        .flatMap(datum -> datum.value().single())
        .orElseThrow();
  }

  /** The open data that have to be as they were found; each that can be left open is. */
  private Map<String, ValueSet> onceRecorded(Answer.Found found, Map<String, ValueSet> fixed) {
    Map<String, ValueSet> stated = new LinkedHashMap<>(fixed);
    if (ChangeSearch.reaches(engine, advice, goal, stated)) {
      return Map.of();
    }
    for (Datum now : found.findings().data()) {
      Field field = now.field();
      boolean open = advice.findings().datum(field.name()).filter(was -> isOpen(was)).isPresent();
      if (open && !fixed.containsKey(field.name()) && now.value().single().isPresent()) {
        stated.put(field.name(), now.value().values());
      }
    }
    List<String> names = new ArrayList<>(stated.keySet());
    names.removeAll(fixed.keySet());
    Collections.reverse(names);
    for (String name : names) {
      Map<String, ValueSet> fewer = new LinkedHashMap<>(stated);
      fewer.remove(name);
      if (ChangeSearch.reaches(engine, advice, goal, fewer)) {
        stated = fewer;
      }
    }
    stated.keySet().removeAll(fixed.keySet());
    return stated;
  }

  private static boolean isOpen(Datum datum) {
    return !datum.value().values().isEmpty() && datum.value().single().isEmpty();
  }

  private ChangeSet result(
      List<Datum> moved,
      Map<String, ValueSet> fixed,
      Map<String, Nearest> nearests,
      Map<String, ValueSet> once) {
    Map<String, ValueSet> all = new LinkedHashMap<>(fixed);
    all.putAll(once);
    List<Move> moves = new ArrayList<>();
    for (Datum datum : moved) {
      String name = datum.field().name();
      Optional<Nearest> nearest = Optional.ofNullable(nearests.get(name));
      moves.add(
          new Move(
              datum,
              single(fixed, name),
              nearest.flatMap(Nearest::line),
              nearest.filter(Nearest::isProven).isPresent(),
              others(datum, all)));
    }
    List<Move> recorded = new ArrayList<>();
    for (Datum datum : advice.findings().data()) {
      if (once.containsKey(datum.field().name())) {
        Value value = single(once, datum.field().name());
        recorded.add(new Move(datum, value, Optional.empty(), false, others(datum, all)));
      }
    }
    Recommendation after = engine.evaluate(Changed.with(advice.findings(), all));
    return new ChangeSet(moves, recorded, after);
  }

  private static Value single(Map<String, ValueSet> values, String name) {
    return Optional.ofNullable(values.get(name)).flatMap(ValueSet::single).orElseThrow();
  }

  /** Other values of a choice that do as well. */
  private List<Value> others(Datum datum, Map<String, ValueSet> all) {
    ValueSet allowed = datum.field().allowed();
    if (!allowed.isFinite() || allowed.parts().size() > OTHERS_AT_MOST) {
      return List.of();
    }
    Value taken = single(all, datum.field().name());
    ValueSet before = datum.value().values();
    boolean wasOpen = before.single().isEmpty();
    return allowed.values().stream()
        .filter(value -> !value.equals(taken) && before.contains(value) == wasOpen)
        .filter(
            value -> {
              Map<String, ValueSet> tried = new LinkedHashMap<>(all);
              tried.put(datum.field().name(), ValueSet.of(value));
              return ChangeSearch.reaches(engine, advice, goal, tried);
            })
        .toList();
  }
}
