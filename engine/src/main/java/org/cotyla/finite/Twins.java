package org.cotyla.finite;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.cotyla.expression.Expression;
import org.cotyla.expression.Scope;
import org.cotyla.expression.Symbol;
import org.cotyla.name.NameIndex;
import org.cotyla.name.Names;
import org.cotyla.protocol.Calculation;
import org.cotyla.protocol.Option;
import org.cotyla.protocol.Protocol;
import org.cotyla.protocol.Ranking;

/**
 * The names of a second protocol that have the same value as in the first in every case. They have
 * the first one's classes, so that a solver need not find out by arithmetic that they are equal.
 * Not thread-safe.
 */
final class Twins {

  /** Keeps names that only the first protocol's encoding has apart from those of the second. */
  private static final int BORROWED = 2_000_000;

  private final ProtocolEncoding first;
  private final Map<Symbol, Symbol> ofFirst = new HashMap<>();
  private final Map<Symbol, Symbol> ofSecond = new HashMap<>();
  private final Set<Symbol> twins = new HashSet<>();
  private final Map<String, Expression> formulas;
  private final Map<Symbol, Symbol> borrowed = new HashMap<>();
  private final Map<Dependent, Dependent> translated = new IdentityHashMap<>();

  /**
   * @param same the keys of the names
   */
  Twins(ProtocolEncoding first, Protocol one, Protocol other, Set<String> same) {
    this.first = first;
    NameIndex<Calculation> constants = NameIndex.of(one.calculations(), Calculation::name);
    for (Calculation is : other.calculations()) {
      constants
          .find(is.name())
          .filter(was -> was.constant().isPresent() && was.constant().equals(is.constant()))
          .ifPresent(was -> twins.add(is.symbol()));
    }
    this.formulas = formulas(one);
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
   * How a name stands to what a formula gives, when the first protocol can tell: it has the same
   * formula, of names that have the same value, so that it is not worked out twice.
   */
  Optional<Alternatives> order(Symbol name, Expression formula) {
    boolean alike = twins.contains(name) && formula.references().stream().allMatch(twins::contains);
    return Optional.ofNullable(alike ? formulas.get(formula.print()) : null)
        .flatMap(was -> of(name).map(named -> first.order(named, was)));
  }

  /** Every formula that a test of the protocol compares something with, by its text. */
  private static Map<String, Expression> formulas(Protocol protocol) {
    Map<String, Expression> formulas = new HashMap<>();
    protocol.decisions().stream()
        .flatMap(table -> table.rows().stream())
        .flatMap(row -> row.tests().stream())
        .filter(test -> !test.prepared().references().isEmpty())
        .flatMap(test -> test.prepared().test().parts().stream())
        .forEach(formula -> formulas.putIfAbsent(formula.print(), formula));
    for (Symbol symbol : protocol.vocabulary().symbols()) {
      Expression name = new Expression.Reference(symbol);
      formulas.putIfAbsent(name.print(), name);
    }
    return formulas;
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
        dependent.gives().map(ofSecond::get),
        dependent.hardlyMet());
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
