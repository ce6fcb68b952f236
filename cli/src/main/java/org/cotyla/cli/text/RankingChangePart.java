package org.cotyla.cli.text;

import java.util.List;
import java.util.Optional;
import org.cotyla.evaluate.Contribution;
import org.cotyla.evaluate.MissingDatum;
import org.cotyla.evaluate.RankedOption;
import org.cotyla.explain.Comparison;
import org.cotyla.explain.OptionChange;
import org.cotyla.explain.RankingChange;
import org.cotyla.explain.RowChange;
import org.cotyla.protocol.Effect;
import org.cotyla.value.Value;

/** A ranking: who comes first now and did before, why, and what is ruled out or in again. */
final class RankingChangePart {

  private static final int INDENT = 5;
  private static final int MOST_FINDINGS = 8;
  private static final int MOST_OTHERS = 6;

  private final Page page;
  private final Comparison comparison;
  private final RowChangeLines rows;

  RankingChangePart(Page page, Comparison comparison) {
    this.page = page;
    this.comparison = comparison;
    this.rows = new RowChangeLines(page, comparison.after());
  }

  void write(RankingChange change) {
    if (change.options().isEmpty()) {
      return;
    }
    page.heading(change.name());
    Optional<RankedOption> now = change.after().leader();
    Optional<RankedOption> was = change.before().leader();
    if (now.isPresent()) {
      leader("First now: ", change, now.get());
      needs(change, now.get());
    } else {
      page.marked(2, Mark.WARNING, "every option is ruled out now");
    }
    if (change.changesLeader() && was.isPresent()) {
      change
          .after()
          .option(was.get().name())
          .ifPresent(option -> leader("First in the plan: ", change, option));
    }
    ruledOut(change.newlyRuledOut());
    ruledIn(change.noLongerRuledOut());
    others(change, now, was);
    open(change);
  }

  private void leader(String lead, RankingChange change, RankedOption option) {
    Optional<OptionChange> moved = change.option(option.name());
    String stands = stands(option);
    String was =
        moved
            .map(move -> stands(move.before()))
            .filter(before -> !before.equals(stands))
            .map(before -> "; in the plan " + before)
            .orElse(", as planned");
    page.paragraph(2, lead + option.name() + ", " + stands + was);
    moved.ifPresent(move -> votes(move.rows()));
  }

  private static String stands(RankedOption option) {
    if (option.availability() == RankedOption.Availability.RULED_OUT) {
      return "ruled out";
    }
    String points = option.points().plain();
    return "place "
        + option.place()
        + " with "
        + points
        + (points.equals("1") ? " point" : " points");
  }

  private void votes(List<RowChange> changes) {
    int open = 0;
    for (RowChange change : changes) {
      boolean ruling = effect(change) == Effect.RULE_OUT;
      switch (change.kind()) {
        case ADDED, SETTLED, OTHER_RESULT -> {
          Mark mark =
              ruling ? Mark.RULED_OUT : effect(change) == Effect.FAVOUR ? Mark.FOR : Mark.AGAINST;
          page.marked(INDENT, mark, points(change), "now: " + rows.reason(change.row()));
        }
        case REMOVED ->
            page.marked(
                INDENT,
                Mark.ITEM,
                "",
                "no longer " + word(change) + ": " + rows.reason(change.row()));
        case OPENED -> open++;
        case EXCLUDED -> {}
      }
    }
    if (open > 0) {
      page.marked(INDENT, Mark.OPEN, Words.count(open, "row") + " for or against it may count now");
    }
  }

  private static Effect effect(RowChange change) {
    return change.row().vote().orElseThrow().effect();
  }

  private static String points(RowChange change) {
    return effect(change) == Effect.RULE_OUT
        ? ""
        : Value.of(change.row().vote().orElseThrow().points()).plain();
  }

  private static String word(RowChange change) {
    return switch (effect(change)) {
      case FAVOUR -> points(change) + " for it";
      case OPPOSE -> points(change) + " against it";
      case RULE_OUT -> "ruled out";
    };
  }

  private void needs(RankingChange change, RankedOption option) {
    if (!change.changesLeader()) {
      return;
    }
    if (!option.option().needs().isEmpty()) {
      page.paragraph(INDENT, "Needs: " + String.join("; ", option.option().needs()) + ".");
    }
    option
        .option()
        .leadTimeDays()
        .ifPresent(days -> page.paragraph(INDENT, "Lead time: " + Words.count(days, "day") + "."));
  }

  private void ruledOut(List<OptionChange> options) {
    if (options.isEmpty()) {
      return;
    }
    page.paragraph(2, "Newly ruled out:");
    for (OptionChange option : options) {
      List<Contribution> rulings =
          option.after().rulings().stream().filter(Contribution::isCertain).toList();
      String more = rulings.size() > 1 ? " and " + (rulings.size() - 1) + " more" : "";
      page.marked(
          2,
          Mark.RULED_OUT,
          option.name() + ": " + rows.reason(rulings.get(0).firing().row()) + more);
    }
  }

  private void ruledIn(List<OptionChange> options) {
    if (options.isEmpty()) {
      return;
    }
    page.paragraph(2, "No longer ruled out:");
    for (OptionChange option : options) {
      Contribution ruling = option.before().rulings().get(0);
      page.marked(
          2, Mark.FOR, option.name() + ": it was, since " + rows.reason(ruling.firing().row()));
    }
  }

  /** The other options in play that have another place or other points. */
  private void others(
      RankingChange change, Optional<RankedOption> now, Optional<RankedOption> was) {
    List<String> others =
        change.options().stream()
            .filter(option -> now.filter(one -> one.name().equals(option.name())).isEmpty())
            .filter(option -> was.filter(one -> one.name().equals(option.name())).isEmpty())
            .filter(option -> !option.isNewlyRuledOut())
            .filter(option -> !place(option.before()).equals(place(option.after())))
            .map(
                option ->
                    option.name() + " " + place(option.before()) + " -> " + place(option.after()))
            .toList();
    if (!others.isEmpty()) {
      page.paragraph(2, "Other places: " + Words.some(others, MOST_OTHERS));
    }
  }

  private static String place(RankedOption option) {
    return option.availability() == RankedOption.Availability.RULED_OUT
        ? "out"
        : String.valueOf(option.place());
  }

  private void open(RankingChange change) {
    if (change.after().firstIsCertain()) {
      return;
    }
    List<String> open =
        comparison.after().missing().stream()
            .filter(missing -> missing.mayChangeFirst().contains(change.name()))
            .map(MissingDatum::datum)
            .map(datum -> datum.field().name())
            .toList();
    if (!open.isEmpty()) {
      page.marked(2, Mark.OPEN, "first place hangs on: " + Words.some(open, MOST_FINDINGS));
    }
  }
}
