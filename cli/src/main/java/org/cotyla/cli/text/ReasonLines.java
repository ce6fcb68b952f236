package org.cotyla.cli.text;

import java.util.List;
import org.cotyla.evaluate.Firing;
import org.cotyla.explain.Reason;
import org.cotyla.protocol.Effect;
import org.cotyla.protocol.Protocol;
import org.cotyla.value.Value;

/** A row that speaks of an option: its reason, then its cell and its tests. */
final class ReasonLines {

  private static final int INDENT = 2;
  private static final int UNDER = 6;

  private final Page page;
  private final Protocol protocol;
  private final TestWords tests;

  ReasonLines(Page page, Protocol protocol, KnownValues known) {
    this.page = page;
    this.protocol = protocol;
    this.tests = new TestWords(known);
  }

  /** The rows of one kind that explain an option's points, or bar it. */
  void all(List<Reason> reasons) {
    reasons.forEach(reason -> one(reason, mark(reason), label(reason), ""));
  }

  /** A row, with a lead before its reason. */
  void one(Reason reason, Mark mark, String label, String lead) {
    String may = reason.isCertain() ? "" : may(reason) + ": ";
    page.marked(
        INDENT,
        mark,
        label,
        may + lead + reason.row().because() + " " + Words.reference(reason.row(), protocol));
    at(reason.contribution().firing(), reason.isCertain());
  }

  private void at(Firing firing, boolean certain) {
    String cell = "at " + firing.row().at().plain() + ": ";
    String open = certain || firing.certain() ? "" : "; counts if " + tests.open(firing);
    page.paragraph(UNDER, cell + (open.isEmpty() ? tests.all(firing) : open.substring(2)));
  }

  static String points(Reason reason) {
    return Value.of(reason.points().abs()).plain();
  }

  private static Mark mark(Reason reason) {
    if (!reason.isCertain()) {
      return Mark.OPEN;
    }
    return switch (reason.effect()) {
      case FAVOUR -> Mark.FOR;
      case OPPOSE -> Mark.AGAINST;
      case RULE_OUT -> Mark.RULED_OUT;
    };
  }

  private static String label(Reason reason) {
    boolean weighs = reason.isCertain() && reason.effect() != Effect.RULE_OUT;
    return weighs ? points(reason) : "";
  }

  private static String may(Reason reason) {
    return switch (reason.effect()) {
      case FAVOUR -> "may add " + points(reason);
      case OPPOSE -> "may take " + points(reason);
      case RULE_OUT -> "may rule it out";
    };
  }
}
