package org.cotyla.cli.text;

import java.time.LocalDate;
import java.util.Optional;
import org.cotyla.explain.Comparison;
import org.cotyla.explain.RankingChange;
import org.cotyla.explain.Replan;
import org.cotyla.json.RecordedPlan.Origin;

/** Writes for people what changes since a plan: the findings, then what they change, with rows. */
public final class ReplanAnswer {

  private final int width;
  private final Style style;
  private final Optional<LedgerStanding> ledger;

  public ReplanAnswer(int width, Style style) {
    this(width, style, Optional.empty());
  }

  /** An answer that is recorded, and says where its protocol stands by the ledger. */
  public ReplanAnswer(int width, Style style, Optional<LedgerStanding> ledger) {
    this.width = width;
    this.style = style;
    this.ledger = ledger;
  }

  /**
   * The answer as text.
   *
   * @param origin what the plan was made with, when its file says so
   * @param today the day on which it is read, to say when the protocol is past its review
   */
  public String write(Replan replan, Optional<Origin> origin, LocalDate today) {
    Page page = new Page(width, style);
    Comparison comparison = replan.comparison();
    new ReplanOpening(page).write(comparison, origin, today, ledger);
    new FoundPart(page, replan).write();
    FollowOn follow = new FollowOn(comparison.after().protocol());
    DecisionChangePart decisions = new DecisionChangePart(page, comparison);
    decisions.writeChanged("What changes in the decision", follow);
    for (RankingChange ranking : comparison.rankings()) {
      new RankingChangePart(page, comparison).write(ranking);
    }
    decisions.writeWhatFollows("What follows from that now", follow);
    new ListChangePart(page, comparison).write();
    new UnchangedPart(page, comparison).write(follow);
    new MissingPart(page).write(comparison.after());
    new ReplanClosing(page).write(comparison);
    return page.toString();
  }
}
