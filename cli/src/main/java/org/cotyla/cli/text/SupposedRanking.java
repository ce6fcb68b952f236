package org.cotyla.cli.text;

import java.util.List;
import org.cotyla.evaluate.RankedOption;
import org.cotyla.evaluate.RankedOption.Availability;
import org.cotyla.explain.Comparison;
import org.cotyla.explain.OptionChange;
import org.cotyla.explain.RankingChange;
import org.cotyla.explain.RowChange;
import org.cotyla.explain.RowChange.Kind;
import org.cotyla.protocol.Effect;
import org.cotyla.value.Value;

/** A ranking before and after: every option that would stand otherwise, and the rows that do it. */
final class SupposedRanking {

  private static final int INDENT = 4;
  private static final int MOST_OPEN = 2;

  private final Page page;
  private final RowChangeLines rows;

  SupposedRanking(Page page, Comparison comparison) {
    this.page = page;
    this.rows = new RowChangeLines(page, comparison.after());
  }

  void write(RankingChange change) {
    List<OptionChange> options =
        change.options().stream().filter(option -> differs(option)).toList();
    if (options.isEmpty()) {
      return;
    }
    page.heading(change.name());
    Columns columns =
        new Columns(page, options.stream().mapToInt(one -> one.name().length()).max().orElse(0));
    columns.row("", "before", "after");
    for (OptionChange option : options) {
      columns.row(option.name(), stands(option.before()), stands(option.after()));
      rows(option.rows());
    }
  }

  private static boolean differs(OptionChange option) {
    return !option.rows().isEmpty() || !stands(option.before()).equals(stands(option.after()));
  }

  private static String stands(RankedOption option) {
    if (option.availability() == Availability.RULED_OUT) {
      return "ruled out";
    }
    String points = option.points().plain();
    return "place "
        + option.place()
        + ", "
        + points
        + (points.equals("1") ? " point" : " points")
        + (option.availability() == Availability.MAY_BE_RULED_OUT ? ", may be ruled out" : "");
  }

  /** All that are certain; of those that only may count now, a few. */
  private void rows(List<RowChange> changes) {
    changes.stream().filter(change -> change.kind() != Kind.OPENED).forEach(this::row);
    List<RowChange> opened =
        changes.stream().filter(change -> change.kind() == Kind.OPENED).toList();
    opened.stream().limit(MOST_OPEN).forEach(this::row);
    if (opened.size() > MOST_OPEN) {
      page.marked(
          INDENT,
          Mark.OPEN,
          "and " + Words.count(opened.size() - MOST_OPEN, "more row") + " that may count");
    }
  }

  private void row(RowChange change) {
    String reason = rows.reason(change.row());
    switch (change.kind()) {
      case ADDED, OTHER_RESULT -> page.marked(INDENT, mark(change), points(change), reason);
      case SETTLED -> page.marked(INDENT, mark(change), points(change), "certain now: " + reason);
      case REMOVED ->
          page.marked(INDENT, Mark.ITEM, "", "no longer " + word(change) + ": " + reason);
      case OPENED -> page.marked(INDENT, Mark.OPEN, may(change) + ": " + reason);
      case EXCLUDED ->
          page.marked(INDENT, Mark.ITEM, "no longer open, and not " + word(change) + ": " + reason);
    }
  }

  private static Effect effect(RowChange change) {
    return change.row().vote().orElseThrow().effect();
  }

  private static Mark mark(RowChange change) {
    return switch (effect(change)) {
      case FAVOUR -> Mark.FOR;
      case OPPOSE -> Mark.AGAINST;
      case RULE_OUT -> Mark.RULED_OUT;
    };
  }

  private static String points(RowChange change) {
    return effect(change) == Effect.RULE_OUT
        ? ""
        : Value.of(change.row().vote().orElseThrow().points()).plain();
  }

  private static String may(RowChange change) {
    return switch (effect(change)) {
      case FAVOUR -> "may add " + points(change);
      case OPPOSE -> "may take " + points(change);
      case RULE_OUT -> "may rule it out";
    };
  }

  private static String word(RowChange change) {
    return switch (effect(change)) {
      case FAVOUR -> points(change) + " for it";
      case OPPOSE -> points(change) + " against it";
      case RULE_OUT -> "ruled out";
    };
  }
}
