package org.cotyla.finite;

import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import org.cotyla.evaluate.Engine;
import org.cotyla.evaluate.Recommendation;
import org.cotyla.expression.Symbol;
import org.cotyla.finding.Datum;
import org.cotyla.finding.Findings;
import org.cotyla.finite.Alternatives.Leaf;
import org.cotyla.name.Names;
import org.cotyla.protocol.Field;
import org.cotyla.value.Interval;
import org.cotyla.value.PossibleValues;
import org.cotyla.value.Truth;
import org.cotyla.value.Value;
import org.cotyla.value.ValueSet;

/**
 * Looks for a case of which claims are true, among all cases of a domain, or proves that there is
 * none. What one search learns helps the next. Not thread-safe.
 *
 * <p>A case that is found was run by the engine, and the claims were read off its answer. A proof
 * rests on classes that contain every case, so it needs no engine.
 */
public final class CaseSearch {

  private final GivenSide given;
  private final List<GivenSide> givens = new ArrayList<>();
  private final List<ProtocolEncoding> sides = new ArrayList<>();
  private final List<BoxWalk> walks = new ArrayList<>();
  private final Circuit circuit;
  private final Effort effort;

  private CaseSearch(List<Engine> engines, Domain domain, Effort effort) {
    this.effort = effort;
    this.circuit = new Circuit(new Sat4jSolver(effort.conflicts()));
    this.given = new GivenSide(circuit, domain);
    for (Engine engine : engines) {
      add(given, new ProtocolEncoding(circuit, given, engine));
    }
  }

  private void add(GivenSide findings, ProtocolEncoding side) {
    givens.add(findings);
    sides.add(side);
    walks.add(new BoxWalk(side));
  }

  /** A search among the cases of a domain, put to one protocol. */
  public static CaseSearch of(Engine engine, Domain domain, Effort effort) {
    return new CaseSearch(List.of(engine), domain, effort);
  }

  /** A search among cases that are put to several protocols, whose given fields go by name. */
  public static CaseSearch of(List<Engine> engines, Domain domain, Effort effort) {
    return new CaseSearch(engines, domain, effort);
  }

  /**
   * A search among pairs of cases, put to one protocol, that agree in every field but those set
   * apart. Claims speak of the first of them, or of the other by {@link Claim.Of}. The case that is
   * found is the first; the other stands in the second answer.
   */
  public static CaseSearch pair(Engine engine, Domain domain, Set<Field> apart, Effort effort) {
    CaseSearch search = new CaseSearch(List.of(engine), domain, effort);
    GivenSide second =
        search.given.beside(
            apart.stream().map(field -> Names.key(field.name())).collect(Collectors.toSet()));
    search.add(second, search.sides.get(0).beside(second, apart));
    return search;
  }

  /** A case of which the claim is true. */
  public Answer find(Claim claim) {
    return find(claim, Map.of());
  }

  /**
   * A case of which the claim is true, where some given fields lie in the regions stated.
   *
   * @param regions by the name of the field
   */
  Answer find(Claim claim, Map<Symbol, ValueSet> regions) {
    if (given.domain().isEmpty()) {
      return new Answer.Impossible();
    }
    int wanted = new ClaimEncoding(sides).literal(claim, 0);
    List<Integer> assumed = new ArrayList<>(List.of(wanted));
    regions.forEach(
        (symbol, region) -> assumed.add(sides.get(0).classes(symbol).within(region, false)));
    for (int round = 0; round < effort.rounds(); round++) {
      switch (circuit.solve(assumed)) {
        case IMPOSSIBLE -> {
          return new Answer.Impossible();
        }
        case UNDECIDED -> {
          return new Answer.Undecided("the search met its limit");
        }
        case FOUND -> {}
      }
      boolean taught = false;
      for (BoxWalk walk : walks) {
        taught |= walk.teach();
      }
      if (taught) {
        continue;
      }
      Optional<Answer.Found> found = tryCases(claim);
      if (found.isPresent()) {
        return found.get();
      }
      if (!lookCloser()) {
        return new Answer.Undecided(
            "a class of cases was found that no single case of it could be shown to belong to");
      }
    }
    return new Answer.Undecided("the arithmetic was not settled within the limit");
  }

  private Optional<Answer.Found> tryCases(Claim claim) {
    SplittableRandom random = new SplittableRandom(1);
    boolean arithmetic = walks.stream().anyMatch(walk -> !walk.active().isEmpty());
    int tries = arithmetic ? effort.samples() : 1;
    for (int i = 0; i < tries; i++) {
      Map<Alternatives, PossibleValues> points = new IdentityHashMap<>();
      List<Map<String, PossibleValues>> stated = new ArrayList<>();
      for (GivenSide side : givens) {
        Map<String, PossibleValues> ofSide = new LinkedHashMap<>();
        for (Map.Entry<String, Alternatives> field : side.used().entrySet()) {
          Leaf leaf = field.getValue().leaves().get(field.getValue().found());
          if (!leaf.values().isNothing()) {
            PossibleValues point = points.get(field.getValue());
            if (point == null) {
              point = point(leaf.values().values(), i == 0, random);
              points.put(field.getValue(), point);
            }
            ofSide.put(field.getKey(), point);
          }
        }
        stated.add(ofSide);
      }
      boolean there = walks.stream().allMatch(walk -> walk.leadsThere(points));
      if (there) {
        Optional<Answer.Found> found = confirmed(claim, stated);
        if (found.isPresent()) {
          return found;
        }
      }
    }
    return Optional.empty();
  }

  private static PossibleValues point(ValueSet values, boolean middle, SplittableRandom random) {
    return PossibleValues.of(
        middle ? Representative.of(values) : Representative.sample(values, random));
  }

  /** The case, when the engine's own answer bears the claim out. */
  private Optional<Answer.Found> confirmed(Claim claim, List<Map<String, PossibleValues>> stated) {
    Answer.Found found = run(given.foundStage(), stated);
    return bearsOut(found.answers(), claim) ? Optional.of(found) : Optional.empty();
  }

  /** Where rows contradict each other the engine leaves either result open, as the claim may be. */
  private static boolean bearsOut(List<Recommendation> answers, Claim claim) {
    Truth truth = claim.truth(answers);
    boolean contradiction = answers.stream().anyMatch(answer -> !answer.faults().isEmpty());
    return truth == Truth.TRUE || (truth == Truth.OPEN && contradiction);
  }

  /**
   * The same case with as few findings as bear the claim out: none of those left can be taken away
   * by itself. What is taken away makes no difference, whatever it is. Of a pair of cases the same
   * findings are taken away from both, and none in which they differ.
   */
  public Answer.Found smallest(Answer.Found found, Claim claim) {
    int stage = stage(found);
    List<Map<String, PossibleValues>> stated = new ArrayList<>();
    found.answers().forEach(answer -> stated.add(single(answer.findings())));
    List<String> keys = new ArrayList<>(stated.get(0).keySet());
    keys.removeIf(key -> stated.stream().map(side -> side.get(key)).distinct().count() > 1);
    Collections.reverse(keys);
    Answer.Found smallest = found;
    for (String key : keys) {
      List<Optional<PossibleValues>> taken =
          stated.stream().map(side -> Optional.ofNullable(side.remove(key))).toList();
      Answer.Found without = run(stage, stated);
      if (bearsOut(without.answers(), claim)) {
        smallest = without;
      } else {
        for (int side = 0; side < stated.size(); side++) {
          Map<String, PossibleValues> ofSide = stated.get(side);
          taken.get(side).ifPresent(value -> ofSide.put(key, value));
        }
      }
    }
    return smallest;
  }

  private int stage(Answer.Found found) {
    List<String> stages = sides.get(0).engine().protocol().about().stages();
    return stages.indexOf(found.findings().stage());
  }

  private static Map<String, PossibleValues> single(Findings findings) {
    Map<String, PossibleValues> single = new LinkedHashMap<>();
    for (Datum datum : findings.data()) {
      if (datum.value().single().isPresent()) {
        single.put(Names.key(datum.field().name()), datum.value());
      }
    }
    return single;
  }

  private Answer.Found run(int stage, List<Map<String, PossibleValues>> stated) {
    List<Recommendation> answers = new ArrayList<>();
    for (int side = 0; side < sides.size(); side++) {
      Engine engine = sides.get(side).engine();
      answers.add(
          engine.evaluate(given.domain().findings(engine.protocol(), stage, stated.get(side))));
    }
    return new Answer.Found(answers.get(0).findings(), answers);
  }

  /** Cuts the widest class of a number on which an unsettled result hangs. */
  private boolean lookCloser() {
    Alternatives widest = null;
    double width = 0;
    for (int side = 0; side < sides.size(); side++) {
      for (Dependent dependent : walks.get(side).unsettled()) {
        for (Symbol symbol : walks.get(side).sources(dependent)) {
          Alternatives classes = sides.get(side).classes(symbol);
          boolean cuts = classes.isExact() || isGiven(classes);
          double relative = cuts ? relativeWidth(classes) : 0;
          if (relative > width) {
            width = relative;
            widest = classes;
          }
        }
      }
    }
    if (widest == null || width < 1e-9) {
      return false;
    }
    int place = widest.found();
    ValueSet values = widest.leaves().get(place).values().values();
    Value middle = Representative.of(values);
    ValueSet below = values.intersect(ValueSet.between(values.type(), null, false, middle, true));
    if (below.equals(values)) {
      below = values.intersect(ValueSet.between(values.type(), null, false, middle, false));
    }
    if (below.isEmpty()) {
      return false;
    }
    widest.cut(place, below);
    return true;
  }

  private boolean isGiven(Alternatives classes) {
    return givens.stream().anyMatch(side -> side.used().containsValue(classes));
  }

  private static double relativeWidth(Alternatives classes) {
    PossibleValues leaf = classes.leaves().get(classes.found()).values();
    double all = width(classes.all().values());
    return leaf.isNothing() || all == 0 ? 0 : width(leaf.values()) / all;
  }

  private static double width(ValueSet values) {
    if (values.isEmpty()) {
      return 0;
    }
    Interval hull = values.hull();
    return hull.low() instanceof Value.NumberValue low
            && hull.high() instanceof Value.NumberValue high
        ? high.number().subtract(low.number()).doubleValue()
        : hull.isPoint() || values.type() != org.cotyla.value.ValueType.NUMBER ? 0 : 1e12;
  }
}
