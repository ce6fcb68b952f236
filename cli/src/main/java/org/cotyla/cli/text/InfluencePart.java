package org.cotyla.cli.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.cotyla.explore.Condition;
import org.cotyla.explore.Conditions;
import org.cotyla.explore.Facet;
import org.cotyla.explore.Influence;
import org.cotyla.explore.Reach;
import org.cotyla.explore.WhatMatters;
import org.cotyla.finding.Datum;
import org.cotyla.finding.Datum.Knowledge;
import org.cotyla.value.PossibleValues;

/** What is missing and what each datum can change, those that can change most first. */
final class InfluencePart {

  private static final int MOST_PARTS = 8;
  private static final int MOST_RESULTS = 6;

  private final Page page;
  private final Conditions conditions;

  InfluencePart(Page page, Conditions conditions) {
    this.page = page;
    this.conditions = conditions;
  }

  void write(WhatMatters matters) {
    page.heading("What is missing, and what it can change");
    if (matters.data().isEmpty()) {
      page.paragraph(2, "Nothing is missing.");
      return;
    }
    List<String> lists = new ArrayList<>();
    List<String> idle = new ArrayList<>();
    for (Influence one : matters.data()) {
      boolean onlyLists =
          one.undecided().isEmpty()
              && one.changes().stream().allMatch(r -> r.facet().kind() == Facet.Kind.SHOWN);
      if (one.cannotMatter()) {
        idle.add(name(one.datum()));
      } else if (onlyLists) {
        lists.add(name(one.datum()));
      } else {
        influence(one);
      }
    }
    if (!lists.isEmpty()) {
      page.marked(
          2,
          Mark.OPEN,
          String.join(", ", lists)
              + ": can change "
              + FacetNames.of(new Facet(Facet.Kind.SHOWN, "")));
    }
    if (!idle.isEmpty()) {
      page.marked(
          2, Mark.ITEM, String.join(", ", idle) + ": proven to change nothing that is shown");
    }
    if (!conditions.complete()) {
      page.paragraph(
          2,
          "Not everything was looked for within the limit: a datum may matter only while another"
              + " has certain values, also where that is not said here.");
    }
  }

  private void influence(Influence one) {
    List<Reach> parts =
        one.changes().stream().filter(r -> r.facet().kind() != Facet.Kind.SHOWN).toList();
    boolean headline = parts.stream().anyMatch(reach -> reach.facet().isHeadline());
    String what =
        parts.isEmpty()
            ? ""
            : ": can change "
                + Words.some(
                    parts.stream().map(reach -> FacetNames.of(reach.facet())).toList(), MOST_PARTS);
    page.marked(2, headline ? Mark.WARNING : Mark.OPEN, name(one.datum()) + what);
    parts.stream().limit(1).forEach(reach -> example(one.datum(), reach));
    conditions.of(one.datum()).forEach(this::condition);
    List<String> open =
        one.undecided().stream().map(reach -> FacetNames.of(reach.facet())).toList();
    if (!open.isEmpty()) {
      page.paragraph(6, "not decided within the limit: " + Words.some(open, MOST_PARTS));
    }
  }

  private void condition(Condition condition) {
    page.paragraph(
        6,
        FacetNames.of(condition.facet())
            + " only while "
            + condition.other().name()
            + " is "
            + Amounts.of(PossibleValues.of(condition.when()), condition.other()));
  }

  /** The weightiest part with the values that show it. */
  private void example(Datum datum, Reach reach) {
    boolean cutOff = !reach.among().isEmpty() && !reach.whole();
    if (reach.among().size() > 2 || cutOff) {
      String rest = cutOff ? "; not proven that there are no others" : "";
      page.paragraph(6, "decides among: " + Words.some(reach.among(), MOST_RESULTS) + rest);
    }
    Optional<Reach.Witness> witness = reach.witness();
    witness.ifPresent(
        two ->
            page.paragraph(
                6,
                (reach.byItself() ? "" : "for example, with other open data filled in: ")
                    + FacetNames.of(reach.facet())
                    + " "
                    + two.oneResult()
                    + " when it is "
                    + value(datum, two.one())
                    + ", "
                    + two.otherResult()
                    + " when it is "
                    + value(datum, two.other())));
  }

  private static String value(Datum datum, org.cotyla.evaluate.Recommendation answer) {
    return answer
        .findings()
        .datum(datum.field().name())
        .map(now -> Amounts.of(now.value(), now.field()))
        .orElse("");
  }

  private static String name(Datum datum) {
    String name = datum.field().name();
    return datum.knowledge() == Knowledge.PARTLY
        ? name + " (known as " + Words.values(datum.value(), datum.field().symbol()) + ")"
        : name;
  }
}
