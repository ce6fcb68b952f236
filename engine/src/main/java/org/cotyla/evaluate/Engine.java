package org.cotyla.evaluate;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.cotyla.finding.Case;
import org.cotyla.finding.Datum;
import org.cotyla.finding.Findings;
import org.cotyla.finding.FindingsReader;
import org.cotyla.firing.RuleBase;
import org.cotyla.firing.Session;
import org.cotyla.identity.ProtocolDigest;
import org.cotyla.issue.RejectedException;
import org.cotyla.protocol.Calculation;
import org.cotyla.protocol.DecisionTable;
import org.cotyla.protocol.Protocol;
import org.cotyla.protocol.Ranking;
import org.cotyla.protocol.Step;
import org.cotyla.value.PossibleValues;

/**
 * Runs a protocol against cases. Safe to share between threads; the same protocol, case and engine
 * version always give the same recommendation.
 */
public final class Engine {

  private final Protocol protocol;
  private final RuleBase rules;
  private final FindingsReader reader;
  private final String protocolDigest;
  private final Map<DecisionTable, DecisionStep> decisions = new IdentityHashMap<>();
  private final Map<DecisionTable, Memory> memories = new IdentityHashMap<>();

  /** The same, but it remembers. */
  private Engine(Engine other) {
    this.protocol = other.protocol;
    this.rules = other.rules;
    this.reader = other.reader;
    this.protocolDigest = other.protocolDigest;
    this.decisions.putAll(other.decisions);
    protocol.decisions().forEach(table -> memories.put(table, new Memory(table)));
  }

  private Engine(Protocol protocol) {
    this.protocol = protocol;
    this.rules = RuleBase.of(protocol.decisions());
    this.reader = new FindingsReader(protocol);
    this.protocolDigest = ProtocolDigest.of(protocol);
    for (int i = 0; i < protocol.decisions().size(); i++) {
      DecisionTable table = protocol.decisions().get(i);
      decisions.put(table, new DecisionStep(table, i));
    }
  }

  /** An engine for the protocol; building it takes far longer than a case. */
  public static Engine of(Protocol protocol) {
    return new Engine(protocol);
  }

  /**
   * The same engine for thousands of cases that are much alike: what a decision came to for the
   * same values is remembered for as long as the engine that is given back is, and not worked out
   * again. Its answers are the same.
   */
  public Engine remembering() {
    return memories.isEmpty() ? new Engine(this) : this;
  }

  public Protocol protocol() {
    return protocol;
  }

  /**
   * The recommendation for a case. A datum that the case does not state is never guessed: whatever
   * hangs on it stays open, and that is said.
   *
   * @throws RejectedException listing every fault of the case
   */
  public Recommendation evaluate(Case given) {
    return evaluate(reader.read(given));
  }

  /** The recommendation for findings that were read with this engine's protocol. */
  public Recommendation evaluate(Findings findings) {
    return run(findings, true);
  }

  /**
   * The same without its list of missing data, which takes long where much is open: for searches
   * and counts that only read what the decisions and rankings come to.
   */
  public Recommendation decide(Findings findings) {
    return run(findings, false);
  }

  /**
   * The same for a case.
   *
   * @throws RejectedException listing every fault of the case
   */
  public Recommendation decide(Case given) {
    return decide(reader.read(given));
  }

  private Recommendation run(Findings findings, boolean saysMissing) {
    State state = new State(protocol.vocabulary().symbols().size());
    for (Datum datum : findings.data()) {
      state.set(datum.field().symbol(), datum.value());
    }
    Map<DecisionTable, DecisionResult> results = new IdentityHashMap<>();
    Map<Ranking, RankingResult> rankings = new IdentityHashMap<>();
    Map<String, PossibleValues> calculations = new LinkedHashMap<>();
    List<DecisionResult> inOrder = new ArrayList<>();
    try (Session session = rules.open()) {
      for (Step step : protocol.steps()) {
        if (step instanceof Calculation calculation) {
          PossibleValues value = calculation.expression().evaluate(state);
          state.set(calculation.symbol(), value);
          calculations.put(calculation.name(), value);
        } else if (step instanceof DecisionTable table) {
          DecisionResult result = decide(table, session, state);
          results.put(table, result);
          inOrder.add(result);
        } else if (step instanceof Ranking ranking) {
          RankingResult result = new RankingStep(ranking).run(results);
          rankings.put(ranking, result);
          state.set(ranking.first(), result.first());
        }
      }
    }
    List<RankingResult> ranked = inWorkbookOrder(rankings);
    List<MissingDatum> missing =
        saysMissing
            ? MissingData.of(
                findings, inOrder, ranked, new OpenData(protocol.steps(), state, results, rankings))
            : List.of();
    return new Recommendation(
        protocol,
        protocolDigest,
        findings,
        inOrder,
        ranked,
        calculations,
        missing,
        findings.remarks());
  }

  private DecisionResult decide(DecisionTable table, Session session, State state) {
    DecisionStep step = decisions.get(table);
    if (step == null) {
      throw new IllegalStateException("`" + table.name() + "` is not of this engine's protocol");
    }
    DecisionResult result = remembered(table, step, session, state);
    for (DecisionTable.Output output : table.outputs()) {
      PossibleValues value = result.outputs().get(output.symbol().name());
      if (value != null) {
        state.set(output.symbol(), value);
      }
    }
    return result;
  }

  private DecisionResult remembered(
      DecisionTable table, DecisionStep step, Session session, State state) {
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

  private List<RankingResult> inWorkbookOrder(Map<Ranking, RankingResult> rankings) {
    return protocol.rankings().stream()
        .flatMap(ranking -> java.util.stream.Stream.ofNullable(rankings.get(ranking)))
        .collect(Collectors.toList());
  }
}
