package org.cotyla.cli.text;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.cotyla.evaluate.Fault;
import org.cotyla.evaluate.RankedOption;
import org.cotyla.evaluate.RankingResult;
import org.cotyla.evaluate.Recommendation;
import org.cotyla.explain.Comparison;
import org.cotyla.explain.FindingChange;
import org.cotyla.explain.RankingChange;
import org.cotyla.explain.WhatIf;
import org.cotyla.issue.Issue;
import org.cotyla.protocol.Field;

/** Writes for people what some findings would change, before and after side by side. */
public final class WhatIfAnswer {

  private final int width;
  private final Style style;

  public WhatIfAnswer(int width, Style style) {
    this.width = width;
    this.style = style;
  }

  /**
   * The answer as text.
   *
   * @param today the day on which it is read, to say when the protocol is past its review
   */
  public String write(WhatIf whatIf, LocalDate today) {
    Page page = new Page(width, style);
    Comparison comparison = whatIf.comparison();
    new OpeningPart(page).write(comparison.before(), today, Optional.empty());
    warnings(page, comparison);
    findings(page, whatIf);
    inShort(page, comparison);
    SupposedDecisions decisions = new SupposedDecisions(page, comparison);
    decisions.headlines();
    for (RankingChange ranking : comparison.rankings()) {
      new SupposedRanking(page, comparison).write(ranking);
    }
    new SupposedLists(page, comparison).write();
    decisions.working();
    new IdentityPart(page).write(comparison.before(), comparison.after());
    return page.toString();
  }

  /** What holds of the supposed case and not of the case as it is. */
  private static void warnings(Page page, Comparison comparison) {
    List<Issue> before = comparison.before().remarks();
    for (Issue remark : comparison.after().remarks()) {
      if (!before.contains(remark)) {
        String help = remark.help().map(text -> "; " + text).orElse("");
        page.warning(remark.place().plain() + ": " + remark.message() + help);
      }
    }
    List<Fault> known = comparison.before().faults();
    List<Fault> faults =
        comparison.after().faults().stream().filter(fault -> !known.contains(fault)).toList();
    if (!faults.isEmpty()) {
      page.heading("The protocol contradicts itself on the supposed case");
      page.warning(
          "Do not rely on what hangs on these decisions; tell the keeper of the protocol.");
      faults.forEach(
          fault ->
              page.marked(
                  0,
                  Mark.WARNING,
                  fault.decision() + ": " + fault.message() + " (" + fault.code() + ")"));
    }
  }

  private static void findings(Page page, WhatIf whatIf) {
    Comparison comparison = whatIf.comparison();
    KnownValues before = new KnownValues(comparison.before());
    KnownValues after = new KnownValues(comparison.after());
    page.heading("What is supposed");
    Columns columns =
        new Columns(
            page,
            whatIf.changed().stream().mapToInt(field -> field.name().length()).max().orElse(0));
    if (!comparison.findings().isEmpty()) {
      columns.row("", "as it is", "supposed");
    }
    List<String> same = new ArrayList<>();
    for (Field field : whatIf.changed()) {
      Optional<FindingChange> change =
          comparison.findings().stream().filter(one -> one.field().equals(field)).findFirst();
      if (change.isPresent()) {
        columns.row(
            field.name(),
            before.inWords(field.symbol(), change.get().before().value()),
            after.inWords(field.symbol(), change.get().after().value()));
      } else {
        same.add(field.name());
      }
    }
    if (!same.isEmpty()) {
      page.paragraph(2, "The case says so already: " + String.join(", ", same) + ".");
    }
  }

  private static void inShort(Page page, Comparison comparison) {
    page.heading("In short");
    if (!comparison.changesAnything()) {
      page.paragraph(2, "Nothing changes: every decision and every ranking stays as it is.");
    }
    Columns columns =
        new Columns(
            page,
            comparison.rankings().stream()
                .mapToInt(ranking -> ranking.name().length() + "first ".length())
                .max()
                .orElse(0));
    columns.row("", "before", "after");
    for (RankingChange ranking : comparison.rankings()) {
      boolean same = ranking.options().isEmpty() || !ranking.changesFirst();
      columns.row(
          "first " + ranking.name(),
          leader(ranking.before()),
          same ? "the same" : leader(ranking.after()));
    }
    openNow(page, comparison);
  }

  private static String leader(RankingResult result) {
    String certainty = result.firstIsCertain() ? " (certain)" : " (not certain)";
    return result
        .leader()
        .map(RankedOption::name)
        .map(name -> name + certainty)
        .orElse("nothing, every option is ruled out");
  }

  /** What is supposed unknown may open what was settled. */
  private static void openNow(Page page, Comparison comparison) {
    for (RankingChange ranking : comparison.rankings()) {
      if (ranking.before().firstIsCertain() && !ranking.after().firstIsCertain()) {
        Recommendation after = comparison.after();
        List<String> open =
            after.missing().stream()
                .filter(missing -> missing.mayChangeFirst().contains(ranking.name()))
                .map(missing -> missing.datum().field().name())
                .toList();
        page.marked(
            2, Mark.OPEN, "first " + ranking.name() + " then hangs on: " + Words.some(open, 8));
      }
    }
  }
}
