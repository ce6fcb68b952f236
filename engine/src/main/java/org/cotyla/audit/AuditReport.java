package org.cotyla.audit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.stream.Stream;

/**
 * What an audit found.
 *
 * @param source what was audited
 * @param whole the decisions as a whole: each by the worst of its verdicts
 * @param rankings each ranking by itself
 * @param named decisions and cases to be looked at one by one
 * @param againstRuleOuts decisions for what was ruled out, the first of them; the totals count all
 * @param missing data that were missing, the most frequent first
 * @param outcomes what came of it
 */
public record AuditReport(
    AuditSource source,
    RankingAudit whole,
    List<RankingAudit> rankings,
    List<NamedCases> named,
    List<AgainstRuleOut> againstRuleOuts,
    List<MissingDatum> missing,
    List<OutcomeCurve> outcomes) {

  /** What an audit is not; must be shown beside the caution of a single protocol. */
  public static final String NO_VERDICT =
      "An audit asks questions about a protocol and its use; it is no verdict on a person.";

  /** Must be shown wherever a report of a ledger is shown, which may hold several protocols. */
  public static final String CAUTION =
      "Decision support for licensed clinicians: local protocol and judgement come first; nothing"
          + " here replaces them. "
          + NO_VERDICT;

  /** Must be shown beside every figure of a report. */
  public static final String SMALL_NUMBERS =
      "Small numbers prove nothing: read each figure with its interval. Groups differ in more than"
          + " the choice that was made, so a difference between them is a question, not a cause.";

  /** How outcomes are reckoned, and what they cannot say. */
  public static final String OUTCOMES =
      "Kaplan-Meier with Greenwood's 95 % limits on the log-log scale. A decision without a recorded"
          + " outcome counts as free of it until the end of the period, the next decision of its"
          + " case, or the last that is known: outcomes that nobody recorded make the curves look"
          + " better than they are. Death ends what can be seen, so where many die the share with"
          + " the event is overstated.";

  public AuditReport {
    rankings = List.copyOf(rankings);
    named = List.copyOf(named);
    againstRuleOuts = List.copyOf(againstRuleOuts);
    missing = List.copyOf(missing);
    outcomes = List.copyOf(outcomes);
  }

  /** The report of totals. */
  public static AuditReport of(
      AuditSource source,
      AuditTotals totals,
      List<NamedCases> named,
      List<AgainstRuleOut> againstRuleOuts,
      List<OutcomeCurve> outcomes) {
    return new AuditReport(
        source,
        ranking(totals, AuditTotals.WHOLE),
        totals.rankings().stream().map(ranking -> ranking(totals, ranking)).toList(),
        named,
        againstRuleOuts,
        missing(totals),
        outcomes);
  }

  private static List<MissingDatum> missing(AuditTotals totals) {
    SortedMap<String, Tally> decisive = totals.by(Dimension.DECISIVE_DATUM, AuditTotals.WHOLE, "");
    return totals.by(Dimension.DATUM, AuditTotals.WHOLE, "").entrySet().stream()
        .map(
            datum ->
                new MissingDatum(
                    datum.getKey(),
                    datum.getValue().all(),
                    decisive.getOrDefault(datum.getKey(), Tally.NONE).all()))
        .sorted(Comparator.comparing(MissingDatum::decisions).reversed())
        .toList();
  }

  /** How many decisions there are. */
  public long decisions() {
    return whole.all().tally().all();
  }

  /** The decisions as a whole, and then each ranking. */
  public List<RankingAudit> parts() {
    return Stream.concat(Stream.of(whole), rankings.stream()).toList();
  }

  private static RankingAudit ranking(AuditTotals totals, String ranking) {
    return new RankingAudit(
        ranking,
        AuditLine.of(AuditTotals.ALL, totals.all(ranking)),
        chart(totals.by(Dimension.MONTH, ranking, "")),
        breakdowns(totals, ranking),
        rows(totals, ranking),
        departures(totals.by(Dimension.REASON, ranking, "")));
  }

  private static ControlChart chart(SortedMap<String, Tally> months) {
    return ControlChart.of(
        months.entrySet().stream()
            .filter(month -> Character.isDigit(month.getKey().charAt(0)))
            .map(
                month ->
                    new ControlChart.Sample(
                        month.getKey(), month.getValue().first(), month.getValue().judged()))
            .toList());
  }

  private static List<Breakdown> breakdowns(AuditTotals totals, String ranking) {
    List<Breakdown> found = new ArrayList<>();
    for (Dimension by :
        List.of(
            Dimension.MONTH,
            Dimension.ROLE,
            Dimension.OPTION,
            Dimension.ADVISED,
            Dimension.PROTOCOL,
            Dimension.STANDING,
            Dimension.MISSING)) {
      add(found, totals, by, ranking, "");
    }
    totals.groups().forEach(group -> add(found, totals, Dimension.GROUP, ranking, group));
    return found;
  }

  private static void add(
      List<Breakdown> found, AuditTotals totals, Dimension by, String ranking, String name) {
    SortedMap<String, Tally> values = totals.by(by, ranking, name);
    if (values.isEmpty()) {
      return;
    }
    boolean inOrder = by == Dimension.MONTH || by == Dimension.MISSING;
    Comparator<AuditLine> mostFirst =
        Comparator.comparing((AuditLine line) -> line.tally().all()).reversed();
    Stream<AuditLine> lines =
        values.entrySet().stream()
            .map(entry -> AuditLine.of(entry.getKey().strip(), entry.getValue()));
    found.add(
        new Breakdown(by, name, ranking, (inOrder ? lines : lines.sorted(mostFirst)).toList()));
  }

  private static List<RowDepartures> rows(AuditTotals totals, String ranking) {
    List<RowDepartures> rows = new ArrayList<>();
    for (Map.Entry<String, Tally> row : totals.by(Dimension.ROW, ranking, "").entrySet()) {
      Tally tally = row.getValue();
      if (tally.departed() > 0) {
        rows.add(
            new RowDepartures(
                ranking,
                row.getKey(),
                Proportion.of(tally.departed(), tally.judged()),
                departures(totals.by(Dimension.ROW_REASON, ranking, row.getKey()))));
      }
    }
    rows.sort(Comparator.comparing((RowDepartures row) -> row.departed().count()).reversed());
    return rows;
  }

  private static List<NamedCount> departures(SortedMap<String, Tally> counts) {
    return counts.entrySet().stream()
        .map(entry -> new NamedCount(entry.getKey(), entry.getValue().departed()))
        .sorted(Comparator.comparing(NamedCount::count).reversed())
        .toList();
  }
}
