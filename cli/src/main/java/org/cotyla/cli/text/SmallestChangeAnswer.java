package org.cotyla.cli.text;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.cotyla.explore.ChangeSet;
import org.cotyla.explore.Goal;
import org.cotyla.explore.Move;
import org.cotyla.explore.SmallestChange;
import org.cotyla.protocol.Field;
import org.cotyla.value.Value;
import org.cotyla.value.ValueType;

/** Writes for people which findings would have to be others for another answer. */
public final class SmallestChangeAnswer {

  private final int width;
  private final Style style;

  public SmallestChangeAnswer(int width, Style style) {
    this.width = width;
    this.style = style;
  }

  /**
   * The answer as text.
   *
   * @param today the day on which it is read, to say when the protocol is past its review
   */
  public String write(SmallestChange change, LocalDate today) {
    Page page = new Page(width, style);
    new OpeningPart(page).write(change.advice(), today, Optional.empty());
    section(page, change);
    AroundClosing.write(page, change.advice());
    return page.toString();
  }

  /** The ways to the goal under their own heading. */
  static void section(Page page, SmallestChange change) {
    page.heading(heading(change.goal()));
    if (change.isReached()) {
      page.paragraph(2, "It is so already, whatever the open data are.");
    } else {
      ways(page, change);
    }
  }

  private static String heading(Goal goal) {
    return goal instanceof Goal.First
        ? "What would have to be true for " + goal.wanted() + " to come first"
        : "What would have to be true for " + goal.about() + " to be " + goal.wanted();
  }

  private static void ways(Page page, SmallestChange change) {
    int number = 1;
    for (ChangeSet way : change.sets()) {
      List<String> parts = new ArrayList<>();
      way.moves().forEach(move -> parts.add(move(move)));
      way.onceRecorded().forEach(move -> parts.add(once(move)));
      String lead = change.sets().size() == 1 ? "  " : "  " + number + "  ";
      String none = way.moves().isEmpty() ? "no finding has to differ: " : "";
      page.hanging(lead, none + String.join("; and ", parts));
      number++;
    }
    if (change.sets().stream().anyMatch(way -> !way.moves().isEmpty())) {
      page.blank();
      page.paragraph(
          2,
          "With all else as it is. Another value of a finding is not a proposal: it says on what"
              + " the answer rests.");
    }
    end(page, change);
  }

  private static String move(Move move) {
    Field field = move.before().field();
    return field.name()
        + " "
        + value(move)
        + " instead of "
        + Amounts.of(move.before().value(), field)
        + (move.provenNearest() ? "" : " (not proven to be the nearest value)");
  }

  private static String once(Move move) {
    Field field = move.before().field();
    boolean number = field.symbol().type() == ValueType.NUMBER;
    return field.name() + " turns out to be " + (number ? "such as " : "") + value(move);
  }

  private static String value(Move move) {
    Field field = move.before().field();
    if (move.line().isPresent()) {
      Value line = move.line().get();
      String side = move.to().compareTo(line) > 0 ? "above " : "below ";
      return side + Amounts.of(line, field) + " (" + Amounts.of(move.to(), field) + ", say)";
    }
    List<String> values = new ArrayList<>(List.of(Amounts.of(move.to(), field)));
    values.addAll(move.others().stream().map(Value::plain).collect(Collectors.toList()));
    return Words.or(values);
  }

  private static void end(Page page, SmallestChange change) {
    String within = "within " + Words.count(change.atMost(), "finding");
    boolean none = change.sets().isEmpty();
    String words =
        switch (change.end()) {
          case COMPLETE ->
              none
                  ? "Proven: no such change " + within + ", whatever the missing data are."
                  : change.sets().get(0).moves().isEmpty()
                      ? ""
                      : "Proven: these are all ways " + within + " that hold no shorter one.";
          case MORE -> "There may be more ways " + within + "; none has fewer findings.";
          case UNDECIDED ->
              (none ? "Not decided " : "Not decided whether there are others ")
                  + within
                  + ": the search met its limit.";
        };
    if (!words.isEmpty()) {
      page.paragraph(2, words);
    }
  }
}
