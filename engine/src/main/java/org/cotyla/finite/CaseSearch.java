package org.cotyla.finite;

import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import org.cotyla.evaluate.Engine;
import org.cotyla.evaluate.Recommendation;
import org.cotyla.expression.Symbol;
import org.cotyla.finding.Datum;
import org.cotyla.finite.Alternatives.Leaf;
import org.cotyla.name.Names;
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
  private final List<Engine> engines;
  private final List<ProtocolEncoding> sides = new ArrayList<>();
  private final List<BoxWalk> walks = new ArrayList<>();
  private final Circuit circuit;
  private final Effort effort;

  private CaseSearch(List<Engine> engines, Domain domain, Effort effort) {
    this.effort = effort;
    this.engines = List.copyOf(engines);
    this.circuit = new Circuit(new Sat4jSolver(effort.conflicts()));
    this.given = new GivenSide(circuit, domain);
    for (Engine engine : engines) {
      ProtocolEncoding side = new ProtocolEncoding(circuit, given, engine);
      sides.add(side);
      walks.add(new BoxWalk(side));
    }
  }

  /** A search among the cases of a domain, put to one protocol. */
  public static CaseSearch of(Engine engine, Domain domain, Effort effort) {
    return new CaseSearch(List.of(engine), domain, effort);
  }

  /** A search among cases that are put to several protocols, whose given fields go by name. */
  public static CaseSearch of(List<Engine> engines, Domain domain, Effort effort) {
    return new CaseSearch(engines, domain, effort);
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

  /**
   * Whether it is proven that no case makes the claim true. When it is not, there may be such a
   * case or not; this asks less than {@link #find} and is quicker.
   */
  public boolean rulesOut(Claim claim) {
    if (given.domain().isEmpty()) {
      return true;
    }
    int wanted = new ClaimEncoding(sides).literal(claim, 0);
    for (int round = 0; round < effort.rounds(); round++) {
      BooleanSolver.Verdict verdict = circuit.solve(List.of(wanted));
      if (verdict != BooleanSolver.Verdict.FOUND) {
        return verdict == BooleanSolver.Verdict.IMPOSSIBLE;
      }
      boolean taught = false;
      for (BoxWalk walk : walks) {
        taught |= walk.teach();
      }
      if (!taught) {
        return false;
      }
    }
    return false;
  }

  private Optional<Answer.Found> tryCases(Claim claim) {
    SplittableRandom random = new SplittableRandom(1);
    boolean arithmetic = walks.stream().anyMatch(walk -> !walk.active().isEmpty());
    int tries = arithmetic ? effort.samples() : 1;
    for (int i = 0; i < tries; i++) {
      Map<Alternatives, PossibleValues> points = new IdentityHashMap<>();
      Map<String, PossibleValues> stated = new LinkedHashMap<>();
      for (Map.Entry<String, Alternatives> field : given.used().entrySet()) {
        Leaf leaf = field.getValue().leaves().get(field.getValue().found());
        if (!leaf.values().isNothing()) {
          ValueSet values = leaf.values().values();
          Value value = i == 0 ? Representative.of(values) : Representative.sample(values, random);
          points.put(field.getValue(), PossibleValues.of(value));
          stated.put(field.getKey(), PossibleValues.of(value));
        }
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

  /** The case, when the engine's own answer bears the claim out. */
  private Optional<Answer.Found> confirmed(Claim claim, Map<String, PossibleValues> stated) {
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
   * by itself. What is taken away makes no difference, whatever it is.
   */
  public Answer.Found smallest(Answer.Found found, Claim claim) {
    int stage = engines.get(0).protocol().about().stages().indexOf(found.findings().stage());
    Map<String, PossibleValues> stated = new LinkedHashMap<>();
    for (Datum datum : found.findings().data()) {
      if (datum.value().single().isPresent()) {
        stated.put(Names.key(datum.field().name()), datum.value());
      }
    }
    return new Reduction(found, stated, stage, claim).run();
  }

  /** Takes findings away, first many at once, and at last each that is left by itself. */
  private final class Reduction {
    private final Claim claim;
    private final int stage;
    private Answer.Found smallest;
    private Map<String, PossibleValues> stated;

    Reduction(Answer.Found found, Map<String, PossibleValues> stated, int stage, Claim claim) {
      this.smallest = found;
      this.stated = stated;
      this.stage = stage;
      this.claim = claim;
    }

    Answer.Found run() {
      List<String> keys = new ArrayList<>(stated.keySet());
      Collections.reverse(keys);
      takeAway(keys);
      for (String key : keys) {
        if (stated.containsKey(key)) {
          without(List.of(key));
        }
      }
      return smallest;
    }

    private void takeAway(List<String> keys) {
      if (keys.size() > 1 && !without(keys)) {
        int half = keys.size() / 2;
        takeAway(keys.subList(0, half));
        takeAway(keys.subList(half, keys.size()));
      }
    }

    private boolean without(List<String> keys) {
      Map<String, PossibleValues> fewer = new LinkedHashMap<>(stated);
      fewer.keySet().removeAll(keys);
      Answer.Found without = CaseSearch.this.run(stage, fewer);
      if (!bearsOut(without.answers(), claim)) {
        return false;
      }
      stated = fewer;
      smallest = without;
      return true;
    }
  }

  private Answer.Found run(int stage, Map<String, PossibleValues> stated) {
    List<Recommendation> answers = new ArrayList<>();
    for (Engine engine : engines) {
      answers.add(engine.evaluate(given.domain().findings(engine.protocol(), stage, stated)));
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
          boolean cuts = classes.isExact() || given.used().containsValue(classes);
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
