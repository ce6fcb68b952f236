package org.cotyla.cli.text;

import java.util.List;
import org.cotyla.compare.Impact;
import org.cotyla.compare.Impact.Group;
import org.cotyla.compare.Impact.SetAside;
import org.cotyla.compare.ProtocolComparison.Meaning;
import org.cotyla.compare.Shift;
import org.cotyla.issue.Issue;

/** Which past cases get something else, from what to what, and by which rows. */
final class ImpactPart {

  private static final int MOST_GROUPS = 25;
  private static final int MOST_CASES = 3;
  private static final int MOST_ROWS = 6;
  private static final int MOST_SET_ASIDE = 10;

  private final Page page;

  ImpactPart(Page page) {
    this.page = page;
  }

  void write(Impact impact, String library, List<Issue> remarks, Meaning meaning) {
    page.heading("Past cases (" + library + ")");
    page.paragraph(
        2,
        Words.count(impact.cases(), "case")
            + " run with both protocols; "
            + (impact.changed() == 0
                ? "none gets another headline decision, first option or rule-out"
                : impact.changed()
                    + " of them "
                    + (impact.changed() == 1 ? "gets" : "get")
                    + " another headline decision, first option or rule-out"));
    if (meaning == Meaning.SAME && impact.changed() > 0) {
      page.paragraph(
          2,
          "What is proven is over complete cases. Here data are missing, and what they leave open"
              + " is weighed row by row, so that it shows that rows were written otherwise.");
    }
    impact.groups().stream().limit(MOST_GROUPS).forEach(this::group);
    if (impact.groups().size() > MOST_GROUPS) {
      int more = impact.groups().size() - MOST_GROUPS;
      page.paragraph(2, "and " + Words.count(more, "more change") + " (see --format json)");
    }
    setAside(impact.setAside());
    remarks.forEach(
        remark ->
            page.marked(
                2,
                Mark.OPEN,
                remark.message() + remark.help().map(help -> "; " + help).orElse("")));
  }

  private void group(Group group) {
    Shift shift = group.shift();
    String what =
        switch (shift.kind()) {
          case DECISION -> shift.about() + ": was " + shift.was() + ", is now " + shift.now();
          case FIRST ->
              "first " + shift.about() + ": was " + shift.was() + ", is now " + shift.now();
          case RULED_OUT -> shift.about() + ": is now ruled out";
          case NO_LONGER_RULED_OUT -> shift.about() + ": is no longer ruled out";
        };
    page.marked(2, Mark.ITEM, what + rows(shift));
    page.hanging(
        "      ",
        Words.count(group.references().size(), "case")
            + ": "
            + Words.some(group.references(), MOST_CASES));
  }

  private static String rows(Shift shift) {
    String come = Words.some(shift.newRows(), MOST_ROWS);
    String gone = Words.some(shift.oldRows(), MOST_ROWS);
    if (come.isEmpty() && gone.isEmpty()) {
      return "";
    }
    if (gone.isEmpty()) {
      return " [by " + come + "]";
    }
    return come.isEmpty()
        ? " [no longer by " + gone + "]"
        : " [by " + come + " instead of " + gone + "]";
  }

  private void setAside(List<SetAside> cases) {
    if (cases.isEmpty()) {
      return;
    }
    page.paragraph(2, "Set aside, since they could not be run:");
    for (SetAside one : cases.subList(0, Math.min(cases.size(), MOST_SET_ASIDE))) {
      Issue first = one.faults().get(0);
      String more = one.faults().size() == 1 ? "" : " and " + (one.faults().size() - 1) + " more";
      String by =
          one.refusedBy().equals("both") ? "" : " (by the " + one.refusedBy() + " protocol)";
      page.marked(
          4,
          Mark.WARNING,
          one.reference() + by + ": " + first.place().plain() + ": " + first.message() + more);
    }
    if (cases.size() > MOST_SET_ASIDE) {
      page.paragraph(4, "and " + (cases.size() - MOST_SET_ASIDE) + " more (see --format json)");
    }
  }
}
