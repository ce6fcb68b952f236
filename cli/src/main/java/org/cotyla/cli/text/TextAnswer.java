package org.cotyla.cli.text;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.cotyla.evaluate.DecisionResult;
import org.cotyla.evaluate.RankingResult;
import org.cotyla.evaluate.Recommendation;
import org.cotyla.explore.WhatMatters;
import org.cotyla.protocol.ShownAs;

/** Writes a recommendation for people: what matters first, each statement with its row. */
public final class TextAnswer {

  private final int width;
  private final Style style;
  private final Optional<LedgerStanding> ledger;

  public TextAnswer(int width, Style style) {
    this(width, style, Optional.empty());
  }

  /** An answer that is recorded, and says where its protocol stands by the ledger. */
  public TextAnswer(int width, Style style, Optional<LedgerStanding> ledger) {
    this.width = width;
    this.style = style;
    this.ledger = ledger;
  }

  /** The answer as text, where nobody looked for what the missing data can change. */
  public String write(Recommendation advice, LocalDate today, boolean trace) {
    return write(advice, Optional.empty(), today, trace);
  }

  /**
   * The answer as text.
   *
   * @param matters what the missing data can change, when that was looked for
   * @param today the day on which it is read, to say when the protocol is past its review
   * @param trace whether every row that fired is added
   */
  public String write(
      Recommendation advice, Optional<WhatMatters> matters, LocalDate today, boolean trace) {
    Page page = new Page(width, style);
    new OpeningPart(page).write(advice, today, ledger);
    new ShortPart(page).write(advice);
    KnownValues known = new KnownValues(advice);
    FollowOn follow = new FollowOn(advice.protocol());
    Map<Boolean, List<DecisionResult>> headlines =
        advice.shownAs(ShownAs.HEADLINE).stream()
            .collect(Collectors.partitioningBy(one -> follow.followsFromRanking(one.table())));
    HeadlinePart headlinePart = new HeadlinePart(page, advice, known);
    headlinePart.write("What the findings point to", headlines.getOrDefault(false, List.of()));
    for (RankingResult ranking : advice.rankings()) {
      new RankingPart(page, advice, known).write(ranking);
    }
    headlinePart.write("What follows from that", headlines.getOrDefault(true, List.of()));
    advice.shownAs(ShownAs.LIST).forEach(list -> new ListPart(page, known).write(list));
    MissingPart missing = new MissingPart(page);
    matters.ifPresentOrElse(missing::write, () -> missing.write(advice));
    if (trace) {
      new TracePart(page, advice, known).write();
    }
    new ClosingPart(page).write(advice, trace);
    return page.toString();
  }
}
