package org.cotyla.evaluate;

import java.util.BitSet;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.cotyla.expression.Symbol;
import org.cotyla.finding.Datum;
import org.cotyla.firing.Session;
import org.cotyla.protocol.Calculation;
import org.cotyla.protocol.DecisionTable;
import org.cotyla.protocol.Ranking;
import org.cotyla.protocol.Step;
import org.cotyla.value.PossibleValues;

/**
 * One case being worked out: each step when it is asked for, and only once. What is known from
 * elsewhere can be taken over, and is then not worked out. Not thread-safe; it must be closed.
 */
public final class Evaluation implements Results, AutoCloseable {

  private final Plan plan;
  private final Map<DecisionTable, Memory> memories;
  private final Session session;
  private final State state;
  private final Map<DecisionTable, DecisionResult> decisions = new IdentityHashMap<>();
  private final Map<Ranking, RankingResult> rankings = new IdentityHashMap<>();
  private final Map<String, PossibleValues> calculations = new LinkedHashMap<>();
  private final Optional<Nearby> nearby;

  Evaluation(
      Plan plan,
      int names,
      Map<DecisionTable, Memory> memories,
      Session session,
      Optional<Nearby> nearby) {
    this.plan = plan;
    this.nearby = nearby;
    this.memories = memories;
    this.session = session;
    this.state = new State(names);
  }

  /** Takes over what a case states. */
  void takeAll(List<Datum> data) {
    data.forEach(datum -> state.set(datum.field().symbol(), datum.value()));
  }

  /** Takes over what a name of this protocol can be. */
  public void take(Symbol symbol, PossibleValues value) {
    state.set(symbol, value);
  }

  /**
   * Takes over what a decision of this protocol came to.
   *
   * @param result it may be of another protocol in which the decision says the same
   */
  public void take(DecisionTable table, DecisionResult result) {
    decisions.put(table, result);
  }

  boolean has(Symbol symbol) {
    return state.has(symbol);
  }

  /** Whether the decision was worked out or taken over. */
  public boolean has(DecisionTable table) {
    return decisions.containsKey(table);
  }

  /** What the name can be; nothing when it is a list. */
  @Override
  public PossibleValues valueOf(Symbol symbol) {
    if (!state.has(symbol)) {
      workOut(plan.giver(symbol));
    }
    return state.has(symbol) ? state.valueOf(symbol) : PossibleValues.nothing(symbol.type());
  }

  @Override
  public DecisionResult decision(DecisionTable table) {
    if (!decisions.containsKey(table)) {
      workOut(plan.place(table));
    }
    return Optional.ofNullable(decisions.get(table)).orElseThrow();
  }

  @Override
  public RankingResult ranking(Ranking ranking) {
    if (!rankings.containsKey(ranking)) {
      workOut(plan.place(ranking));
    }
    return Optional.ofNullable(rankings.get(ranking)).orElseThrow();
  }

  /** What each calculation that was worked out came to, in order of need when all were. */
  Map<String, PossibleValues> calculations() {
    return calculations;
  }

  /** Works out every step. */
  void workOutAll() {
    for (int i = 0; i < plan.steps().size(); i++) {
      perform(i);
    }
  }

  OpenData openData() {
    return new OpenData(plan.steps(), state, decisions, rankings);
  }

  private void workOut(int place) {
    BitSet wanted = plan.wanted(place, this);
    for (int i = wanted.nextSetBit(0); i >= 0; i = wanted.nextSetBit(i + 1)) {
      perform(i);
    }
  }

  private void perform(int place) {
    Step step = plan.steps().get(place);
    Optional<Nearby> alike = nearby.filter(known -> known.isSame(plan.needs(place), state));
    if (step instanceof Calculation calculation) {
      PossibleValues value =
          alike
              .flatMap(known -> known.value(calculation.symbol()))
              .orElseGet(() -> calculation.expression().evaluate(state));
      state.set(calculation.symbol(), value);
      calculations.put(calculation.name(), value);
    } else if (step instanceof DecisionTable table) {
      DecisionResult result =
          alike.flatMap(known -> known.decision(table)).orElseGet(() -> remembered(table));
      table.outputs().forEach(output -> result.value(output, state::set));
      decisions.put(table, result);
    } else if (step instanceof Ranking ranking) {
      RankingResult result =
          alike
              .flatMap(known -> known.ranking(ranking, decisions))
              .orElseGet(() -> new RankingStep(ranking).run(decisions));
      rankings.put(ranking, result);
      state.set(ranking.first(), result.first());
    }
  }

  private DecisionResult remembered(DecisionTable table) {
    DecisionStep step = plan.decision(table);
    Memory memory = memories.get(table);
    if (memory == null) {
      return step.run(session, state);
    }
    List<PossibleValues> met = memory.met(state);
    Optional<DecisionResult> known = memory.recall(met);
    if (known.isPresent()) {
      return known.get();
    }
    DecisionResult result = step.run(session, state);
    memory.keep(met, result);
    return result;
  }

  @Override
  public void close() {
    session.close();
  }
}
