package org.cotyla.finite;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Stream;
import org.cotyla.evaluate.Engine;
import org.cotyla.expression.CellTest;
import org.cotyla.expression.Expression;
import org.cotyla.expression.PreparedTest;
import org.cotyla.expression.Symbol;
import org.cotyla.finite.Alternatives.Leaf;
import org.cotyla.protocol.Calculation;
import org.cotyla.protocol.Constants;
import org.cotyla.protocol.DecisionTable;
import org.cotyla.protocol.Field;
import org.cotyla.protocol.Protocol;
import org.cotyla.protocol.Ranking;
import org.cotyla.protocol.Row;
import org.cotyla.protocol.Step;
import org.cotyla.value.PossibleValues;
import org.cotyla.value.Truth;
import org.cotyla.value.Value;
import org.cotyla.value.ValueSet;
import org.cotyla.value.ValueType;

/**
 * One protocol as a solver sees it: a literal for each row, classes for each name, worked out when
 * they are first asked for, so that only what a question hangs on is there. Not thread-safe.
 */
final class ProtocolEncoding {

  /** Keeps such names of a second case apart from those of the first. */
  private static final int BESIDE = 1_000_000;

  private record TestKey(Symbol input, CellTest test) {}

  private final Circuit circuit;
  private final GivenSide given;
  private final Engine engine;
  private final Hull hull;
  private final Optional<ProtocolEncoding> first;
  private final Optional<Twins> twins;
  private final Set<Step> touched = Collections.newSetFromMap(new IdentityHashMap<>());
  private final Set<Symbol> changing = new HashSet<>();
  private final Map<Symbol, Field> fields = new HashMap<>();
  private final Map<Symbol, Step> givers = new HashMap<>();
  private final Constants constants;
  private final Map<Symbol, Alternatives> classes = new HashMap<>();
  private final Map<TestKey, Integer> tests = new HashMap<>();
  private final Map<DecisionTable, TableEncoding> tables = new IdentityHashMap<>();
  private final Map<Ranking, RankingEncoding> rankings = new IdentityHashMap<>();
  private final Map<Row, Symbol> asked = new IdentityHashMap<>();
  private final List<Dependent> dependents = new ArrayList<>();
  private final Orders orders = new Orders(this);

  ProtocolEncoding(Circuit circuit, GivenSide given, Engine engine) {
    this(
        circuit,
        given,
        engine,
        new Hull(engine, given.domain()),
        Optional.empty(),
        Optional.empty(),
        Set.of());
  }

  /**
   * Another protocol put to the same case.
   *
   * @param same the keys of names that have the same value in both protocols in every case; they
   *     are encoded once
   */
  ProtocolEncoding of(Engine other, Set<String> same) {
    Optional<Twins> shared =
        Optional.of(new Twins(this, engine.protocol(), other.protocol(), same));
    Hull wide = new Hull(other, given.domain());
    return new ProtocolEncoding(circuit, given, other, wide, Optional.empty(), shared, Set.of());
  }

  /**
   * The same protocol put to a second case.
   *
   * @param apart the fields in which the second case may differ; whatever cannot hang on them is
   *     the same for both cases and is encoded once
   */
  ProtocolEncoding beside(GivenSide second, Set<Field> apart) {
    return new ProtocolEncoding(
        circuit, second, engine, hull, Optional.of(this), Optional.empty(), apart);
  }

  private ProtocolEncoding(
      Circuit circuit,
      GivenSide given,
      Engine engine,
      Hull hull,
      Optional<ProtocolEncoding> first,
      Optional<Twins> twins,
      Set<Field> apart) {
    this.circuit = circuit;
    this.given = given;
    this.engine = engine;
    this.hull = hull;
    this.first = first;
    this.twins = twins;
    touch(apart);
    Protocol protocol = engine.protocol();
    protocol.givenFields().forEach(field -> fields.put(field.symbol(), field));
    protocol.steps().forEach(step -> step.gives().forEach(symbol -> givers.put(symbol, step)));
    this.constants = new Constants(protocol);
  }

  /** Notes every step that is worked out from the fields, directly or through others. */
  private void touch(Set<Field> fields) {
    fields.forEach(field -> changing.add(field.symbol()));
    for (Step step : engine.protocol().steps()) {
      if (step.needs().stream().anyMatch(changing::contains)) {
        touched.add(step);
        changing.addAll(step.gives());
      }
    }
  }

  Engine engine() {
    return engine;
  }

  Circuit circuit() {
    return circuit;
  }

  Hull hull() {
    return hull;
  }

  /** What is worked out by arithmetic, in order of need. */
  List<Dependent> dependents() {
    if (first.isEmpty() && twins.isEmpty()) {
      return dependents;
    }
    List<Dependent> all = new ArrayList<>();
    twins.ifPresent(known -> all.addAll(known.dependents()));
    if (first.isEmpty()) {
      all.addAll(dependents);
      return all;
    }
    first.get().dependents().stream().filter(this::isShared).forEach(all::add);
    all.addAll(dependents);
    return all;
  }

  /** Whether it is the same for both cases: neither what it reads nor what it gives may differ. */
  private boolean isShared(Dependent dependent) {
    return Stream.concat(dependent.reads().stream(), dependent.gives().stream())
        .noneMatch(changing::contains);
  }

  Alternatives classes(Symbol symbol) {
    Alternatives known = classes.get(symbol);
    if (known == null) {
      known = encode(symbol);
      classes.put(symbol, known);
    }
    return known;
  }

  /** The first protocol's name that always has the same value. */
  Optional<Symbol> twin(Symbol symbol) {
    return twins.flatMap(known -> known.of(symbol));
  }

  private Alternatives encode(Symbol symbol) {
    Optional<Alternatives> shared = twins.flatMap(known -> known.classes(symbol));
    if (shared.isPresent()) {
      return shared.get();
    }
    Field field = fields.get(symbol);
    if (field != null) {
      return given.of(field);
    }
    Step giver = givers.get(symbol);
    if (first.isPresent() && giver != null && !touched.contains(giver)) {
      return first.get().classes(symbol);
    }
    if (giver instanceof Calculation calculation) {
      return calculation
          .constant()
          .map(value -> constant(PossibleValues.of(value)))
          .orElseGet(
              () ->
                  worked(
                      calculation.expression(),
                      Alternatives.free(circuit, hull.of(symbol)),
                      circuit.yes(),
                      symbol));
    }
    if (giver instanceof DecisionTable table) {
      return table(table).output(symbol);
    }
    if (giver instanceof Ranking ranking) {
      return ranking(ranking).first();
    }
    if (first.isPresent() && first.get().classes.containsKey(symbol)) {
      // A name that the first case's arithmetic was given for whether a row matches.
      return first.get().classes(symbol);
    }
    // Nothing gives it: a list, or a derived field whose table was left out.
    return constant(PossibleValues.nothing(symbol.type()));
  }

  Alternatives constant(PossibleValues value) {
    return Alternatives.of(circuit, List.of(new Leaf(value, circuit.yes())));
  }

  /** Says that the result is that of the expression when the literal holds. */
  Alternatives worked(Expression expression, Alternatives result, int when, Symbol gives) {
    add(
        new Dependent(
            expression.references(),
            scope -> expression.evaluate(scope),
            result,
            when,
            Optional.of(gives)));
    return result;
  }

  /** What it reads is there first, by place, so that every run builds the same. */
  void add(Dependent dependent) {
    dependent.reads().stream()
        .sorted(Comparator.comparingInt(Symbol::index))
        .forEach(this::classes);
    dependents.add(dependent);
  }

  /** A name of its own for whether a row matches, so that arithmetic can hang on it. */
  Symbol asked(Row row, int matches) {
    return asked.computeIfAbsent(
        row,
        unknown -> {
          int own = first.isPresent() ? BESIDE : 0;
          int place = engine.protocol().vocabulary().symbols().size() + own + asked.size();
          Symbol symbol = new Symbol(row.id(), place, ValueType.YES_NO, List.of());
          classes.put(symbol, yesOrNo(matches));
          return symbol;
        });
  }

  private Alternatives yesOrNo(int literal) {
    if (literal == circuit.yes() || literal == circuit.no()) {
      return constant(PossibleValues.of(Value.of(literal == circuit.yes())));
    }
    return Alternatives.of(
        circuit,
        List.of(
            new Leaf(PossibleValues.of(Value.of(true)), literal),
            new Leaf(PossibleValues.of(Value.of(false)), -literal)));
  }

  TableEncoding table(DecisionTable table) {
    if (first.isPresent() && !touched.contains(table)) {
      return first.get().table(table);
    }
    TableEncoding known = tables.get(table);
    if (known == null) {
      known = new TableEncoding(this, table);
      tables.put(table, known);
    }
    return known;
  }

  RankingEncoding ranking(Ranking ranking) {
    if (first.isPresent() && !touched.contains(ranking)) {
      return first.get().ranking(ranking);
    }
    RankingEncoding known = rankings.get(ranking);
    if (known == null) {
      known = new RankingEncoding(this, ranking, twins.flatMap(alike -> alike.ranking(ranking)));
      rankings.put(ranking, known);
    }
    return known;
  }

  /** Holds when the row matches. */
  int matches(DecisionTable table, Row row) {
    Truth known = hull.matches(row);
    if (known != Truth.OPEN) {
      return circuit.of(known == Truth.TRUE);
    }
    List<Integer> all = new ArrayList<>();
    for (int i = 0; i < row.tests().size(); i++) {
      all.add(holds(table.inputs().get(i).symbol(), row.tests().get(i).prepared()));
    }
    return circuit.and(all);
  }

  /** Holds when the test does. */
  int holds(Symbol input, PreparedTest test) {
    if (test.isAnything()) {
      return circuit.yes();
    }
    Optional<ValueSet> region = test.region();
    if (region.isPresent()) {
      return classes(input).within(region.get(), test.forNothing() == Truth.TRUE);
    }
    TestKey key = new TestKey(input, test.test());
    Integer known = tests.get(key);
    if (known == null) {
      OptionalInt order = orders.holds(input, test.test());
      known = order.isPresent() ? order.getAsInt() : dynamic(input, test);
      tests.put(key, known);
    }
    return known;
  }

  /** How a name stands to what a formula gives: below, the same, or above. */
  Alternatives order(Symbol name, Expression formula) {
    return orders.order(name, formula);
  }

  /** The same as another encoding has it already, when it is the same in both. */
  Optional<Alternatives> sharedOrder(Symbol name, Expression formula) {
    boolean changes =
        changing.contains(name) || formula.references().stream().anyMatch(changing::contains);
    return changes
        ? Optional.empty()
        : first
            .map(same -> same.order(name, formula))
            .or(() -> twins.flatMap(alike -> alike.order(name, formula)));
  }

  /** A test against another name: whether it holds is worked out from both. */
  private int dynamic(Symbol input, PreparedTest test) {
    Set<Symbol> reads = new HashSet<>(test.references());
    reads.add(input);
    int holds = circuit.unknown();
    add(
        new Dependent(
            reads,
            scope -> answer(test.truth(scope.valueOf(input), scope)),
            yesOrNo(holds),
            circuit.yes(),
            Optional.empty()));
    return holds;
  }

  private static PossibleValues answer(Truth truth) {
    return switch (truth) {
      case TRUE -> PossibleValues.of(Value.of(true));
      case FALSE -> PossibleValues.of(Value.of(false));
      case OPEN -> PossibleValues.of(ValueSet.all(ValueType.YES_NO));
    };
  }

  /** What the expression gives in every case, when it uses constants only. */
  Optional<PossibleValues> constant(Expression expression) {
    return constants.of(expression);
  }
}
