package org.cotyla.retrospective;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.cotyla.audit.AgainstRuleOut;
import org.cotyla.audit.AuditReport;
import org.cotyla.audit.AuditSource;
import org.cotyla.audit.AuditTotals;
import org.cotyla.identity.ProtocolDigest;
import org.cotyla.protocol.About;
import org.cotyla.protocol.Protocol;

/**
 * What a protocol would have said of past cases, held against what was done.
 *
 * @param protocol the protocol that judged
 * @param mapping what each column was taken for
 * @param counts how many rows there were, and what became of them
 * @param blank how many rows were blank and passed over
 * @param totals the judged decisions added up
 * @param againstRuleOuts the first decisions for what it rules out
 * @param comparison what another protocol judges otherwise
 */
public record RetrospectiveReport(
    Protocol protocol,
    ColumnMapping mapping,
    RunCounts counts,
    long blank,
    AuditTotals totals,
    List<AgainstRuleOut> againstRuleOuts,
    Optional<Comparison> comparison) {

  /** Must be shown wherever a report is shown. */
  public static final String WHAT_IT_SAYS =
      "What was done is held against what this protocol would have said, from what the rows state."
          + " It says nothing of who was right.";

  /** Must be said when a protocol was held against itself. */
  public static final String THE_SAME =
      "Both workbooks hold the same protocol: nothing can be judged otherwise.";

  public RetrospectiveReport {
    againstRuleOuts = List.copyOf(againstRuleOuts);
  }

  /**
   * The same cases judged by another protocol.
   *
   * @param protocol the other protocol
   * @param unknown fields of the cases that it does not ask for, and that were left out for it
   * @param totals its judgements added up
   * @param changes what it judges otherwise
   */
  public record Comparison(
      Protocol protocol, List<String> unknown, AuditTotals totals, DraftChanges changes) {
    public Comparison {
      unknown = List.copyOf(unknown);
    }

    /** What the other protocol makes of the cases, as an audit. */
    public AuditReport audit() {
      return RetrospectiveReport.audit(protocol, List.of(), totals, List.of());
    }
  }

  /** Whether the other protocol means the same, whatever its version and status. */
  public boolean isSameAs(Comparison other) {
    return ProtocolDigest.of(protocol).equals(ProtocolDigest.of(other.protocol()));
  }

  /** The same as an audit: what a ledger's decisions come to is told in the same tables. */
  public AuditReport audit() {
    List<AuditSource.Fact> rows = new ArrayList<>();
    rows.add(new AuditSource.Fact("rows read", Long.toString(counts.read())));
    rows.add(new AuditSource.Fact("judged", Long.toString(counts.judged())));
    rows.add(new AuditSource.Fact("set aside", Long.toString(counts.setAside())));
    return audit(protocol, rows, totals, againstRuleOuts);
  }

  /** A protocol in one line. */
  public static String title(Protocol protocol) {
    About about = protocol.about();
    return about.title() + ", version " + about.version() + ", " + about.status().word();
  }

  private static AuditReport audit(
      Protocol protocol,
      List<AuditSource.Fact> facts,
      AuditTotals totals,
      List<AgainstRuleOut> againstRuleOuts) {
    List<AuditSource.Fact> identity = new ArrayList<>();
    identity.add(new AuditSource.Fact("protocol", title(protocol)));
    identity.add(new AuditSource.Fact("digest", ProtocolDigest.of(protocol)));
    identity.addAll(facts);
    return AuditReport.of(
        new AuditSource("Past cases", Optional.empty(), Optional.empty(), identity),
        totals,
        List.of(),
        againstRuleOuts,
        List.of());
  }
}
