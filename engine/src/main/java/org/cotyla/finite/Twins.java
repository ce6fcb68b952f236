package org.cotyla.finite;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.cotyla.expression.PreparedTest;
import org.cotyla.expression.Scope;
import org.cotyla.expression.Symbol;
import org.cotyla.name.Names;
import org.cotyla.protocol.DecisionTable;
import org.cotyla.protocol.Option;
import org.cotyla.protocol.Protocol;
import org.cotyla.protocol.Ranking;
import org.cotyla.protocol.Row;

/**
 * The names of a second protocol that have the same value as in the first in every case. They have
 * the first one's classes, so that a solver need not find out by arithmetic that they are equal.
 * Not thread-safe.
 */
final class Twins {

  /** Keeps names that only the first protocol's encoding has apart from those of the second. */
  private static final int BORROWED = 2_000_000;

  /** A test that reads other names as well. */
  record Test(Symbol input, PreparedTest test) {}

  private final ProtocolEncoding first;
  private final Map<Symbol, Symbol> ofFirst = new HashMap<>();
  private final Map<Symbol, Symbol> ofSecond = new HashMap<>();
  private final Set<Symbol> twins = new HashSet<>();
  private final Map<String, Test> tests;
  private final Map<Symbol, Symbol> borrowed = new HashMap<>();
  private final Map<Dependent, Dependent> translated = new IdentityHashMap<>();

  /**
   * @param same the keys of the names
   */
  Twins(ProtocolEncoding first, Protocol one, Protocol other, Set<String> same) {
    this.first = first;
    this.tests = tests(one);
    for (Symbol symbol : other.vocabulary().symbols()) {
      one.vocabulary()
          .symbol(symbol.name())
          .ifPresent(
              was -> {
                ofFirst.put(symbol, was);
                ofSecond.put(was, symbol);
                if (same.contains(Names.key(symbol.name()))) {
                  twins.add(symbol);
                }
              });
    }
  }

  /** The first protocol's name of the same value. */
  Optional<Symbol> of(Symbol symbol) {
    return twins.contains(symbol) ? Optional.ofNullable(ofFirst.get(symbol)) : Optional.empty();
  }

  /** The classes of a name that is shared. */
  Optional<Alternatives> classes(Symbol symbol) {
    return of(symbol).or(() -> Optional.ofNullable(borrowed.get(symbol))).map(first::classes);
  }

  /**
   * Holds when the test against another name does: it is written alike in the first protocol, of
   * names that have the same value, so that it is not worked out twice.
   */
  Optional<Integer> holds(Symbol input, PreparedTest test) {
    boolean alike = of(input).isPresent() && test.references().stream().allMatch(twins::contains);
    return Optional.ofNullable(alike ? tests.get(text(input, test)) : null)
        .map(was -> first.holds(was.input(), was.test()));
  }

  private static Map<String, Test> tests(Protocol protocol) {
    Map<String, Test> tests = new HashMap<>();
    for (DecisionTable table : protocol.decisions()) {
      for (Row row : table.rows()) {
        for (int i = 0; i < row.tests().size(); i++) {
          Symbol input = table.inputs().get(i).symbol();
          PreparedTest test = row.tests().get(i).prepared();
          if (!test.references().isEmpty()) {
            tests.putIfAbsent(text(input, test), new Test(input, test));
          }
        }
      }
    }
    return tests;
  }

  private static String text(Symbol input, PreparedTest test) {
    return Names.key(input.name()) + " " + test.test().print();
  }

  /** The first protocol's ranking of the same name, when it has the same options in order. */
  Optional<RankingEncoding> ranking(Ranking ranking) {
    return first
        .engine()
        .protocol()
        .ranking(ranking.name())
        .filter(was -> options(was).equals(options(ranking)))
        .map(first::ranking);
  }

  private static List<String> options(Ranking ranking) {
    return ranking.options().stream().map(Option::name).toList();
  }

  /** What gives the shared names, in the second protocol's names, in order of need. */
  List<Dependent> dependents() {
    List<Dependent> shared = new ArrayList<>();
    for (Dependent dependent : first.dependents()) {
      boolean gives = dependent.gives().map(ofSecond::get).filter(twins::contains).isPresent();
      if (gives) {
        shared.add(translated.computeIfAbsent(dependent, this::translated));
      }
    }
    return shared;
  }

  private Dependent translated(Dependent dependent) {
    Map<Symbol, Symbol> names = new HashMap<>();
    dependent.reads().forEach(symbol -> names.put(symbol, name(symbol)));
    return new Dependent(
        Set.copyOf(names.values()),
        scope -> dependent.image().apply(through(scope, names)),
        dependent.result(),
        dependent.when(),
        dependent.gives().map(ofSecond::get));
  }

  private static Scope through(Scope scope, Map<Symbol, Symbol> names) {
    return symbol -> scope.valueOf(names.getOrDefault(symbol, symbol));
  }

  /**
   * A name that has no twin is borrowed, such as one for whether a row of the first protocol
   * matches.
   */
  private Symbol name(Symbol symbol) {
    Symbol known = ofSecond.get(symbol);
    if (known != null && twins.contains(known)) {
      return known;
    }
    Symbol own =
        new Symbol(symbol.name(), BORROWED + symbol.index(), symbol.type(), symbol.choices());
    borrowed.put(own, symbol);
    return own;
  }
}
