package org.cotyla.evaluate;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.cotyla.finding.Findings;
import org.cotyla.identity.CaseDigest;
import org.cotyla.identity.EngineVersion;
import org.cotyla.issue.Issue;
import org.cotyla.protocol.Protocol;
import org.cotyla.protocol.ShownAs;
import org.cotyla.value.PossibleValues;

/**
 * The answer to a case: what each decision came to, what is ranked first, and why. Immutable.
 *
 * <p>Decision support for licensed professionals: local protocol and judgement come first.
 *
 * @param protocol the protocol that was run
 * @param protocolDigest SHA-256 over the protocol's meaning, as {@code sha256:...}
 * @param findings the case as it was read
 * @param decisions every decision in order of need
 * @param rankings every ranking in the order of the workbook
 * @param calculations what each calculation came to
 * @param missing every datum that is missing or partly known, those that may matter most first
 * @param remarks warnings about the case or the protocol
 */
public record Recommendation(
    Protocol protocol,
    String protocolDigest,
    Findings findings,
    List<DecisionResult> decisions,
    List<RankingResult> rankings,
    Map<String, PossibleValues> calculations,
    List<MissingDatum> missing,
    List<Issue> remarks) {

  public Recommendation {
    decisions = List.copyOf(decisions);
    rankings = List.copyOf(rankings);
    calculations =
        java.util.Collections.unmodifiableMap(new java.util.LinkedHashMap<>(calculations));
    missing = List.copyOf(missing);
    remarks = List.copyOf(remarks);
  }

  /** The sentence that stands on every output. */
  public String caution() {
    return protocol.about().caution();
  }

  /** The protocol, the engine and the case, by version and digest; worked out when asked for. */
  public Identity identity() {
    return new Identity(protocolDigest, EngineVersion.current(), CaseDigest.of(findings));
  }

  public Optional<RankingResult> ranking(String name) {
    return rankings.stream().filter(ranking -> ranking.ranking().name().equals(name)).findFirst();
  }

  public Optional<DecisionResult> decision(String name) {
    return decisions.stream().filter(decision -> decision.table().name().equals(name)).findFirst();
  }

  /** What a derived field can be, by its name. */
  public Optional<PossibleValues> value(String derivedField) {
    for (DecisionResult decision : decisions) {
      PossibleValues value = decision.outputs().get(derivedField);
      if (value != null) {
        return Optional.of(value);
      }
    }
    return Optional.empty();
  }

  /** The decisions that are shown in the given way, in the order of the workbook. */
  public List<DecisionResult> shownAs(ShownAs shown) {
    return protocol.decisions().stream()
        .filter(table -> table.shownAs() == shown)
        .flatMap(table -> decisions.stream().filter(result -> result.table() == table))
        .toList();
  }

  /** Every contradiction of the protocol on this case. */
  public List<Fault> faults() {
    return decisions.stream().flatMap(decision -> decision.faults().stream()).toList();
  }

  /** Every row that fired, in order of need and then of its decision's result. */
  public List<Firing> firings() {
    return decisions.stream().flatMap(decision -> decision.firings().stream()).toList();
  }
}
