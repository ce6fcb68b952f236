package org.cotyla.finite;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/**
 * Builds what is asked of a solver out of and, or and sums, and simplifies what is constant. Equal
 * parts are built once.
 */
final class Circuit {

  /** A weighted literal of a sum. */
  record Term(int literal, BigInteger weight) {

    Term negated() {
      return new Term(literal, weight.negate());
    }
  }

  final BooleanSolver solver;
  private final int yes;
  private final Map<Set<Integer>, Integer> conjunctions = new HashMap<>();
  private final Map<List<Object>, Integer> sums = new HashMap<>();

  Circuit(BooleanSolver solver) {
    this.solver = solver;
    this.yes = solver.unknown();
    solver.atLeastOne(yes);
  }

  /** The literal that always holds. */
  int yes() {
    return yes;
  }

  int no() {
    return -yes;
  }

  int of(boolean holds) {
    return holds ? yes : -yes;
  }

  int unknown() {
    return solver.unknown();
  }

  /** Demands that at least one holds. */
  void demand(int... literals) {
    solver.atLeastOne(literals);
  }

  void demandAny(Collection<Integer> literals) {
    solver.atLeastOne(literals.stream().mapToInt(Integer::intValue).toArray());
  }

  int or(Collection<Integer> literals) {
    return -and(literals.stream().map(literal -> -literal).toList());
  }

  int or(int... literals) {
    return -and(Arrays.stream(literals).map(literal -> -literal).toArray());
  }

  int and(int... literals) {
    return and(Arrays.stream(literals).boxed().toList());
  }

  /** A literal that holds exactly when all of them hold. */
  int and(Collection<Integer> literals) {
    Set<Integer> parts = new LinkedHashSet<>();
    for (int literal : literals) {
      if (literal == -yes || parts.contains(-literal)) {
        return -yes;
      }
      if (literal != yes) {
        parts.add(literal);
      }
    }
    if (parts.isEmpty()) {
      return yes;
    }
    if (parts.size() == 1) {
      return parts.iterator().next();
    }
    Integer before = conjunctions.get(parts);
    if (before != null) {
      return before;
    }
    int all = solver.unknown();
    int[] reverse = new int[parts.size() + 1];
    int next = 0;
    for (int part : parts) {
      solver.atLeastOne(-all, part);
      reverse[next++] = -part;
    }
    reverse[next] = all;
    solver.atLeastOne(reverse);
    conjunctions.put(parts, all);
    return all;
  }

  /** Demands that exactly one holds. */
  void demandExactlyOne(List<Integer> literals) {
    demandAny(literals);
    demandAtMostOne(literals);
  }

  /** Demands that no two hold; a chain of helpers keeps long lists linear. */
  private void demandAtMostOne(List<Integer> literals) {
    if (literals.size() <= 6) {
      for (int i = 0; i < literals.size(); i++) {
        for (int j = i + 1; j < literals.size(); j++) {
          solver.atLeastOne(-literals.get(i), -literals.get(j));
        }
      }
      return;
    }
    List<Integer> first = new ArrayList<>(literals.subList(0, 5));
    int rest = solver.unknown();
    first.add(rest);
    demandAtMostOne(first);
    List<Integer> second = new ArrayList<>(literals.subList(5, literals.size()));
    second.forEach(literal -> solver.atLeastOne(-literal, rest));
    demandAtMostOne(second);
  }

  /** A literal that holds exactly when the weights of the terms that hold reach the degree. */
  int reaches(List<Term> terms, BigInteger degree) {
    Sum sum = sum(terms);
    BigInteger rest = degree.subtract(sum.certain());
    if (sum.least().compareTo(rest) >= 0) {
      return yes;
    }
    if (sum.most().compareTo(rest) < 0) {
      return -yes;
    }
    return sums.computeIfAbsent(
        List.of(sum.open(), rest),
        key -> {
          int reached = solver.unknown();
          demandAtLeast(sum.open(), rest, reached);
          List<Term> negated = sum.open().stream().map(Term::negated).toList();
          demandAtLeast(negated, BigInteger.ONE.subtract(rest), -reached);
          return reached;
        });
  }

  /** Demands that the weights reach the degree whenever all conditions hold. */
  void demandAtLeast(List<Term> terms, BigInteger degree, int... conditions) {
    Sum bare = sum(terms);
    BigInteger slack = degree.subtract(bare.certain()).subtract(bare.least());
    if (slack.signum() <= 0) {
      return;
    }
    List<Term> all = new ArrayList<>(terms);
    for (int condition : conditions) {
      all.add(new Term(-condition, slack));
    }
    Sum sum = sum(all);
    BigInteger rest = degree.subtract(sum.certain());
    if (sum.most().compareTo(rest) < 0) {
      solver.atLeastOne();
    } else if (sum.least().compareTo(rest) < 0) {
      solver.atLeast(
          sum.open().stream().mapToInt(Term::literal).toArray(),
          sum.open().stream().map(Term::weight).toArray(BigInteger[]::new),
          rest);
    }
  }

  /**
   * A sum with each unknown in it once.
   *
   * @param open the unknowns, none of them negated
   * @param certain what is in the sum whatever they are
   */
  private record Sum(List<Term> open, BigInteger certain) {
    BigInteger least() {
      return open.stream()
          .map(Term::weight)
          .map(BigInteger.ZERO::min)
          .reduce(BigInteger.ZERO, BigInteger::add);
    }

    BigInteger most() {
      return open.stream()
          .map(Term::weight)
          .map(BigInteger.ZERO::max)
          .reduce(BigInteger.ZERO, BigInteger::add);
    }
  }

  private Sum sum(List<Term> terms) {
    Map<Integer, BigInteger> weights = new TreeMap<>();
    BigInteger certain = BigInteger.ZERO;
    for (Term term : terms) {
      // A negated unknown is one less the unknown.
      boolean negated = term.literal() < 0;
      certain = negated ? certain.add(term.weight()) : certain;
      weights.merge(
          Math.abs(term.literal()),
          negated ? term.weight().negate() : term.weight(),
          BigInteger::add);
    }
    BigInteger always = weights.remove(yes);
    List<Term> open =
        weights.entrySet().stream()
            .filter(entry -> entry.getValue().signum() != 0)
            .map(entry -> new Term(entry.getKey(), entry.getValue()))
            .toList();
    return new Sum(open, always == null ? certain : certain.add(always));
  }

  BooleanSolver.Verdict solve(Collection<Integer> assumed) {
    return solver.solve(assumed.stream().mapToInt(Integer::intValue).toArray());
  }

  /** Of what was assumed in the last search, which was impossible, enough to make it so. */
  int[] conflicting() {
    return solver.conflicting();
  }

  boolean holds(int literal) {
    return solver.holds(literal);
  }
}
