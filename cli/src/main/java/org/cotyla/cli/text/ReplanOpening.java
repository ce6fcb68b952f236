package org.cotyla.cli.text;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.cotyla.evaluate.Fault;
import org.cotyla.evaluate.RankedOption;
import org.cotyla.evaluate.RankingResult;
import org.cotyla.evaluate.Recommendation;
import org.cotyla.explain.Comparison;
import org.cotyla.explain.RankingChange;
import org.cotyla.finding.Datum;
import org.cotyla.finding.Datum.Knowledge;
import org.cotyla.finding.Findings;
import org.cotyla.json.RecordedPlan.Origin;
import org.cotyla.protocol.About;

/** The caution, which plan and findings these are, what forbids relying on it, and the answer. */
final class ReplanOpening {

  private final Page page;

  ReplanOpening(Page page) {
    this.page = page;
  }

  void write(
      Comparison comparison,
      Optional<Origin> origin,
      LocalDate today,
      Optional<LedgerStanding> ledger) {
    Recommendation after = comparison.after();
    About about = after.protocol().about();
    page.paragraph(0, about.caution());
    page.blank();
    page.hanging("Protocol  ", about.title() + ", version " + about.version());
    Findings planned = comparison.before().findings();
    page.hanging("Case      ", title(after.findings()));
    page.hanging("Plan      ", stated(planned));
    page.hanging("Now       ", stated(after.findings()));
    ProtocolWarnings.write(page, about, today, ledger);
    origin
        .filter(made -> !made.digest().equals(after.protocolDigest()))
        .ifPresent(made -> page.warning(otherProtocol(made, about)));
    faults("plan", comparison.before().faults());
    faults("case as found now", after.faults());
    inShort(comparison);
  }

  private static String title(Findings findings) {
    return findings.title().isBlank() ? "untitled" : findings.title();
  }

  private static String stated(Findings findings) {
    List<Datum> asked =
        findings.data().stream().filter(datum -> datum.knowledge() != Knowledge.NOT_YET).toList();
    long stated = asked.stream().filter(datum -> datum.knowledge() != Knowledge.MISSING).count();
    return findings.stage() + ", " + stated + " of " + asked.size() + " findings stated";
  }

  private static String otherProtocol(Origin made, About about) {
    boolean sameName =
        made.identifier().equals(about.identifier()) && made.version().equals(about.version());
    String which =
        sameName
            ? "a workbook of the same name and version whose content differs"
            : made.identifier() + " " + made.version();
    return "The plan was made with another protocol: "
        + which
        + ". Here the protocol in use is run on the plan's findings as well, so what stands below"
        + " as the plan may differ from the plan that was made.";
  }

  private void faults(String which, List<Fault> faults) {
    if (faults.isEmpty()) {
      return;
    }
    page.heading("The protocol contradicts itself on the " + which);
    page.warning("Do not rely on what hangs on these decisions; tell the keeper of the protocol.");
    faults.forEach(
        fault ->
            page.marked(
                0,
                Mark.WARNING,
                fault.decision() + ": " + fault.message() + " (" + fault.code() + ")"));
  }

  private void inShort(Comparison comparison) {
    page.heading("In short");
    if (!comparison.changesAnything()) {
      page.paragraph(2, "Nothing changes: every decision and every ranking is as planned.");
    }
    for (RankingChange ranking : comparison.rankings()) {
      String planned = ranking.changesLeader() ? "; the plan was " + leader(ranking.before()) : "";
      String line = "first " + ranking.name() + ": " + leader(ranking.after());
      String as = planned.isEmpty() ? ", as planned" : "";
      String certainty = ranking.after().firstIsCertain() ? "certain" : "not certain";
      page.paragraph(2, line + as + " (" + certainty + ")" + planned);
    }
  }

  private static String leader(RankingResult result) {
    return result.leader().map(RankedOption::name).orElse("nothing, every option is ruled out");
  }
}
