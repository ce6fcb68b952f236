package org.cotyla.finite;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.cotyla.evaluate.Engine;
import org.cotyla.expression.Symbol;
import org.cotyla.name.Names;
import org.cotyla.protocol.Field;
import org.cotyla.value.PossibleValues;

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
  private final List<Needs> needs = new ArrayList<>();
  private final Effort effort;
  private final CaseRuns runs;
  private final SingleCases singleCases;
  private final CloserLook closerLook;

  private CaseSearch(
      List<Engine> engines, Domain domain, Set<String> same, Effort effort, CaseRuns runs) {
    this.effort = effort;
    this.runs = runs;
    this.singleCases = new SingleCases(givens, walks, runs, effort.samples());
    this.closerLook = new CloserLook(sides, walks, givens);
    this.circuit = new Circuit(new Sat4jSolver(effort.conflicts()));
    this.given = new GivenSide(circuit, domain, engines.stream().map(Engine::protocol).toList());
    add(given, new ProtocolEncoding(circuit, given, engines.get(0)));
    for (Engine engine : engines.subList(1, engines.size())) {
      add(given, sides.get(0).of(engine, same));
    }
  }

  private void add(GivenSide findings, ProtocolEncoding side) {
    givens.add(findings);
    needs.add(new Needs(side.engine().protocol()));
    sides.add(side);
    walks.add(new BoxWalk(side));
  }

  /** A search among the cases of a domain, put to one protocol. */
  public static CaseSearch of(Engine engine, Domain domain, Effort effort) {
    return of(List.of(engine), domain, Set.of(), effort);
  }

  /** A search among cases that are put to several protocols, whose given fields go by name. */
  public static CaseSearch of(List<Engine> engines, Domain domain, Effort effort) {
    return of(engines, domain, Set.of(), effort);
  }

  /**
   * The same, where it is known that some names have the same value in all protocols, whatever the
   * case. What is proven rests on that.
   *
   * @param same the keys of such names; where rows contradict each other upstream, all protocols
   *     must leave the same values open
   */
  public static CaseSearch of(
      List<Engine> engines, Domain domain, Set<String> same, Effort effort) {
    List<Engine> ready = engines.stream().map(Engine::remembering).toList();
    return new CaseSearch(ready, domain, same, effort, new CaseRuns(ready, domain));
  }

  /**
   * A search among pairs of cases, put to one protocol, that agree in every field but those set
   * apart. Claims speak of the first of them, or of the other by {@link Claim.Of}. The case that is
   * found is the first; the other stands in the second answer.
   */
  public static CaseSearch pair(Engine engine, Domain domain, Set<Field> apart, Effort effort) {
    Engine ready = engine.remembering();
    CaseRuns runs = new CaseRuns(List.of(ready, ready), domain);
    CaseSearch search = new CaseSearch(List.of(ready), domain, Set.of(), effort, runs);
    GivenSide second =
        search.given.beside(
            apart.stream().map(field -> Names.key(field.name())).collect(Collectors.toSet()));
    search.add(second, search.sides.get(0).beside(second, apart));
    return search;
  }

  /** What a name of the first protocol can be at most in the domain. */
  public PossibleValues reach(Symbol name) {
    return sides.get(0).hull().of(name);
  }

  /** A case of which the claim is true. */
  public Answer find(Claim claim) {
    return find(List.of(claim));
  }

  /** The same, at the earliest stage at which there is one: it has the fewest findings. */
  public Answer findEarliest(Claim claim) {
    List<Integer> stages = given.domain().stages();
    for (int stage : stages.subList(0, stages.size() - 1)) {
      Answer answer = find(List.of(claim), List.of(given.atStage(stage)));
      if (answer instanceof Answer.Found) {
        return answer;
      }
    }
    return find(claim);
  }

  private Answer find(List<Claim> claims) {
    return find(claims, List.of());
  }

  /** A case of which all claims are true, and under which the literals hold. */
  private Answer find(List<Claim> claims, List<Integer> also) {
    if (given.domain().isEmpty()) {
      return new Answer.Impossible();
    }
    Claim all = claims.size() == 1 ? claims.get(0) : new Claim.All(claims);
    List<Integer> assumed = new ArrayList<>(literals(claims));
    assumed.addAll(also);
    Cone cone = cone(all);
    for (int side = 0; side < walks.size(); side++) {
      walks.get(side).lookAt(cone, side);
    }
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
      Optional<Answer.Found> found = singleCases.ofWhich(all);
      if (found.isPresent()) {
        return runs.told(found.get());
      }
      if (!closerLook.cut()) {
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
    Cone cone = cone(claim);
    for (int side = 0; side < walks.size(); side++) {
      walks.get(side).lookAt(cone, side);
    }
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

  private List<Integer> literals(List<Claim> claims) {
    ClaimEncoding encoding = new ClaimEncoding(sides);
    return claims.stream().map(claim -> encoding.literal(claim, 0)).toList();
  }

  /**
   * Of claims that are true together of no case, a part from which none can be left out; nothing
   * when some case may meet them all.
   */
  public Optional<List<Claim>> conflict(List<Claim> claims) {
    if (!(find(claims) instanceof Answer.Impossible)) {
      return Optional.empty();
    }
    List<Claim> left = conflicting(claims);
    for (Claim claim : List.copyOf(left)) {
      List<Claim> fewer = new ArrayList<>(left);
      fewer.remove(claim);
      if (left.contains(claim) && !fewer.isEmpty() && find(fewer) instanceof Answer.Impossible) {
        left = conflicting(fewer);
      }
    }
    return Optional.of(left);
  }

  private List<Claim> conflicting(List<Claim> claims) {
    List<Integer> literals = literals(claims);
    List<Integer> enough = Arrays.stream(circuit.conflicting()).boxed().toList();
    List<Claim> named = new ArrayList<>();
    for (int i = 0; i < claims.size(); i++) {
      if (enough.contains(literals.get(i))) {
        named.add(claims.get(i));
      }
    }
    // A solver that met a contradiction without assuming anything names nothing.
    return named.isEmpty() ? claims : named;
  }

  /**
   * The same case with as few findings as bear the claim out: none of those left can be taken away
   * by itself. What is taken away makes no difference, whatever it is. Where the protocol
   * contradicts itself, so that the claim stays open, all is kept that the claim can hang on. Of a
   * pair of cases the same findings are taken away from both, and none in which they differ.
   */
  public Answer.Found smallest(Answer.Found found, Claim claim) {
    return smallestLater(found, claim).get();
  }

  /** The same, worked out when it is asked for, which may be on another thread. */
  public Supplier<Answer.Found> smallestLater(Answer.Found found, Claim claim) {
    Cone cone = cone(claim);
    return () -> runs.smallest(found, claim, cone);
  }

  private Cone cone(Claim claim) {
    return Cone.of(claim, needs, (symbol, side) -> sides.get(side).twin(symbol));
  }
}
