package org.cotyla.finite;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import org.cotyla.expression.Scope;
import org.cotyla.expression.Symbol;
import org.cotyla.finite.Alternatives.Leaf;
import org.cotyla.value.PossibleValues;
import org.cotyla.value.ValueSet;

/**
 * Looks at the classes that a solver chose with the eyes of arithmetic: can each result lie in the
 * class that was chosen for it? Where it cannot, the solver is taught why.
 */
final class BoxWalk {

  private final ProtocolEncoding protocol;
  private final Circuit circuit;
  private final ProductLessons products;
  private Predicate<Dependent> asked = dependent -> true;

  BoxWalk(ProtocolEncoding protocol) {
    this.protocol = protocol;
    this.circuit = protocol.circuit();
    this.products = new ProductLessons(protocol);
  }

  /** Only what the claims hang on is looked at from now on. */
  void lookAt(Cone cone, int side) {
    asked = dependent -> cone.holds(side, dependent);
  }

  /** The dependents that matter in what was found last. */
  List<Dependent> active() {
    return protocol.dependents().stream()
        .filter(dependent -> circuit.holds(dependent.when()) && asked.test(dependent))
        .toList();
  }

  /** Teaches the solver every contradiction of what it found last; says whether there was one. */
  boolean teach() {
    List<Dependent> active = active();
    Map<Symbol, PossibleValues> values = new HashMap<>();
    List<Runnable> lessons = new ArrayList<>();
    for (Dependent dependent : active) {
      PossibleValues chosen = chosen(dependent.result());
      PossibleValues image = dependent.image().apply(scope(values));
      PossibleValues both = common(image, chosen);
      if (isEmpty(both)) {
        Lesson lesson = new Lesson(dependent, active);
        lessons.add(
            () -> {
              lesson.teach();
              products.teach(dependent);
            });
        both = chosen;
      }
      PossibleValues narrowed = both;
      dependent.gives().ifPresent(name -> values.put(name, narrowed));
    }
    lessons.forEach(Runnable::run);
    return !lessons.isEmpty();
  }

  /** Those whose result is not settled by the classes that were chosen. */
  List<Dependent> unsettled() {
    Map<Symbol, PossibleValues> values = new HashMap<>();
    List<Dependent> unsettled = new ArrayList<>();
    for (Dependent dependent : active()) {
      PossibleValues chosen = chosen(dependent.result());
      PossibleValues image = dependent.image().apply(scope(values));
      if (!chosen.containsAll(image)) {
        unsettled.add(dependent);
      }
      dependent.gives().ifPresent(name -> values.put(name, common(image, chosen)));
    }
    return unsettled;
  }

  /** Whether single values of given fields lead to the classes that were chosen. */
  boolean leadsThere(Map<Alternatives, PossibleValues> points) {
    Map<Symbol, PossibleValues> values = new HashMap<>();
    Scope scope =
        symbol -> {
          PossibleValues known = values.get(symbol);
          Alternatives classes = protocol.classes(symbol);
          return known != null ? known : points.getOrDefault(classes, chosen(classes));
        };
    for (Dependent dependent : active()) {
      PossibleValues image = dependent.image().apply(scope);
      PossibleValues chosen = chosen(dependent.result());
      boolean worthATry =
          dependent
              .hardlyMet()
              .filter(rare -> rare.equals(chosen) || rare.equals(image))
              .isPresent();
      if (!worthATry && !chosen.containsAll(image)) {
        return false;
      }
      dependent.gives().ifPresent(name -> values.put(name, image));
    }
    return true;
  }

  /** The classes of every name that something is worked out from in what was found last. */
  Set<Alternatives> read() {
    Set<Alternatives> read = Collections.newSetFromMap(new IdentityHashMap<>());
    for (Dependent dependent : active()) {
      dependent.reads().forEach(symbol -> read.add(protocol.classes(symbol)));
    }
    return read;
  }

  /** Every name that a dependent is worked out from, through other dependents too. */
  Set<Symbol> sources(Dependent dependent) {
    Set<Symbol> sources = new LinkedHashSet<>();
    List<Dependent> active = active();
    collect(dependent, active, sources);
    return sources;
  }

  private static void collect(Dependent dependent, List<Dependent> active, Set<Symbol> sources) {
    for (Symbol symbol : dependent.reads().stream().sorted(BY_PLACE).toList()) {
      if (sources.add(symbol)) {
        givenBy(symbol, active).ifPresent(inner -> collect(inner, active, sources));
      }
    }
  }

  private static final java.util.Comparator<Symbol> BY_PLACE =
      java.util.Comparator.comparingInt(Symbol::index);

  private static Optional<Dependent> givenBy(Symbol symbol, List<Dependent> active) {
    return active.stream()
        .filter(dependent -> dependent.gives().filter(symbol::equals).isPresent())
        .findFirst();
  }

  private Scope scope(Map<Symbol, PossibleValues> values) {
    return symbol -> {
      PossibleValues known = values.get(symbol);
      return known != null ? known : chosen(protocol.classes(symbol));
    };
  }

  private static PossibleValues chosen(Alternatives classes) {
    return classes.leaves().get(classes.found()).values();
  }

  private static PossibleValues common(PossibleValues a, PossibleValues b) {
    ValueSet values =
        a.type() == b.type() ? a.values().intersect(b.values()) : ValueSet.none(b.type());
    return new PossibleValues(values, a.orNothing() && b.orNothing());
  }

  private static boolean isEmpty(PossibleValues values) {
    return values.values().isEmpty() && !values.orNothing();
  }

  /**
   * Why one result cannot lie in its class: the widest classes of what it is worked out from for
   * which that is still so. The solver never tries any of them again.
   */
  private final class Lesson {

    private final Dependent target;
    private final List<Dependent> chain = new ArrayList<>();
    private final Map<Alternatives, Set<Integer>> allowed = new IdentityHashMap<>();
    private final List<Alternatives> inOrder = new ArrayList<>();

    Lesson(Dependent target, List<Dependent> active) {
      this.target = target;
      Set<Symbol> sources = new LinkedHashSet<>();
      collect(target, active, sources);
      for (Dependent dependent : active) {
        boolean used = dependent.gives().filter(sources::contains).isPresent();
        if (used && dependent != target) {
          chain.add(dependent);
        }
      }
      List<Symbol> ordered = sources.stream().sorted(BY_PLACE).toList();
      for (Symbol symbol : ordered) {
        start(protocol.classes(symbol));
      }
      start(target.result());
    }

    private void start(Alternatives classes) {
      if (!allowed.containsKey(classes)) {
        allowed.put(classes, new LinkedHashSet<>(List.of(classes.found())));
        inOrder.add(classes);
      }
    }

    void teach() {
      for (Dependent dependent : List.copyOf(chain)) {
        chain.remove(dependent);
        if (!contradicts()) {
          restore(dependent);
        }
      }
      inOrder.forEach(this::widen);
      List<Integer> clause = new ArrayList<>();
      clause.add(-target.when());
      chain.forEach(dependent -> clause.add(-dependent.when()));
      for (Alternatives classes : inOrder) {
        Set<Integer> inside = allowed.getOrDefault(classes, Set.of());
        if (inside.size() < classes.leaves().size()) {
          for (int i = 0; i < classes.leaves().size(); i++) {
            if (!inside.contains(i)) {
              clause.add(classes.leaves().get(i).literal());
            }
          }
        }
      }
      circuit.demandAny(clause);
    }

    private void restore(Dependent dependent) {
      chain.add(dependent);
      chain.sort(java.util.Comparator.comparingInt(protocol.dependents()::indexOf));
    }

    /** First everything, then class by class to either side. */
    private void widen(Alternatives classes) {
      int count = classes.leaves().size();
      if (count == 1) {
        return;
      }
      Set<Integer> narrow = allowed.getOrDefault(classes, Set.of());
      Set<Integer> all = new LinkedHashSet<>();
      for (int i = 0; i < count; i++) {
        all.add(i);
      }
      if (tries(classes, all)) {
        return;
      }
      int start = narrow.iterator().next();
      Set<Integer> wide = new LinkedHashSet<>(narrow);
      for (int step : new int[] {1, -1}) {
        for (int i = start + step; i >= 0 && i < count; i += step) {
          Set<Integer> wider = new LinkedHashSet<>(wide);
          wider.add(i);
          if (!tries(classes, wider)) {
            break;
          }
          wide = wider;
        }
      }
      allowed.put(classes, wide);
    }

    private boolean tries(Alternatives classes, Set<Integer> wider) {
      Set<Integer> before = allowed.getOrDefault(classes, Set.of());
      allowed.put(classes, wider);
      if (contradicts()) {
        return true;
      }
      allowed.put(classes, before);
      return false;
    }

    private boolean contradicts() {
      Map<Symbol, PossibleValues> values = new HashMap<>();
      Scope scope =
          symbol -> {
            PossibleValues known = values.get(symbol);
            return known != null ? known : union(protocol.classes(symbol));
          };
      for (Dependent dependent : chain) {
        PossibleValues both = common(dependent.image().apply(scope), union(dependent.result()));
        if (isEmpty(both)) {
          return true;
        }
        dependent.gives().ifPresent(name -> values.put(name, both));
      }
      return isEmpty(common(target.image().apply(scope), union(target.result())));
    }

    private PossibleValues union(Alternatives classes) {
      Set<Integer> inside = allowed.get(classes);
      if (inside == null || inside.size() == classes.leaves().size()) {
        return classes.all();
      }
      return inside.stream()
          .map(i -> classes.leaves().get(i))
          .map(Leaf::values)
          .reduce(PossibleValues::union)
          .orElseThrow();
    }
  }
}
