package org.cotyla.evaluate;

import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.cotyla.finding.Case;
import org.cotyla.finding.Findings;
import org.cotyla.finding.FindingsReader;
import org.cotyla.firing.RuleBase;
import org.cotyla.identity.ProtocolDigest;
import org.cotyla.issue.RejectedException;
import org.cotyla.protocol.DecisionTable;
import org.cotyla.protocol.Protocol;

/**
 * Runs a protocol against cases. Safe to share between threads; the same protocol, case and engine
 * version always give the same recommendation.
 */
public final class Engine {

  private final Protocol protocol;
  private final RuleBase rules;
  private final FindingsReader reader;
  private final String protocolDigest;
  private final Plan plan;
  private final Map<DecisionTable, Memory> memories = new IdentityHashMap<>();

  /** The same, but it remembers. */
  private Engine(Engine other) {
    this.protocol = other.protocol;
    this.rules = other.rules;
    this.reader = other.reader;
    this.protocolDigest = other.protocolDigest;
    this.plan = other.plan;
    protocol.decisions().forEach(table -> memories.put(table, new Memory(table)));
  }

  private Engine(Protocol protocol) {
    this.protocol = protocol;
    this.rules = RuleBase.of(protocol.decisions());
    this.reader = new FindingsReader(protocol);
    this.protocolDigest = ProtocolDigest.of(protocol);
    this.plan = new Plan(protocol);
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

  /** The findings, to be worked out as far as is asked; what is given back must be closed. */
  public Evaluation open(Findings findings) {
    Evaluation evaluation = open();
    evaluation.takeAll(findings.data());
    return evaluation;
  }

  /**
   * The same, sooner where the findings are much like those of an answer of this engine's protocol:
   * what reads the same in both is taken over from there.
   */
  public Evaluation open(Findings findings, Nearby nearby) {
    Evaluation evaluation = open(Optional.of(nearby));
    evaluation.takeAll(findings.data());
    return evaluation;
  }

  /** A case of which nothing is known yet; what is given back must be closed. */
  public Evaluation open() {
    return open(Optional.empty());
  }

  private Evaluation open(Optional<Nearby> nearby) {
    int names = protocol.vocabulary().symbols().size();
    return new Evaluation(plan, names, memories, rules.open(), nearby);
  }

  /**
   * The findings of a case.
   *
   * @throws RejectedException listing every fault of the case
   */
  public Findings read(Case given) {
    return reader.read(given);
  }

  private Recommendation run(Findings findings, boolean saysMissing) {
    try (Evaluation evaluation = open(findings)) {
      evaluation.workOutAll();
      List<DecisionResult> decisions =
          plan.steps().stream()
              .filter(DecisionTable.class::isInstance)
              .map(step -> evaluation.decision((DecisionTable) step))
              .toList();
      List<RankingResult> rankings = protocol.rankings().stream().map(evaluation::ranking).toList();
      List<MissingDatum> missing =
          saysMissing
              ? MissingData.of(findings, decisions, rankings, evaluation.openData())
              : List.of();
      return new Recommendation(
          protocol,
          protocolDigest,
          findings,
          decisions,
          rankings,
          evaluation.calculations(),
          missing,
          findings.remarks());
    }
  }
}
