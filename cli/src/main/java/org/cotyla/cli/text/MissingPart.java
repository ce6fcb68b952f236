package org.cotyla.cli.text;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.cotyla.evaluate.MissingDatum;
import org.cotyla.evaluate.Recommendation;
import org.cotyla.explore.Influence;
import org.cotyla.explore.Reach;
import org.cotyla.explore.WhatMatters;
import org.cotyla.finding.Datum;
import org.cotyla.finding.Datum.Knowledge;

/** What is not known, grouped by what it may change, and what is proven not to matter. */
final class MissingPart {

  private static final String NOTHING = "proven to change nothing that is shown";

  private static final int MOST_DECISIONS = 4;

  private final Page page;

  MissingPart(Page page) {
    this.page = page;
  }

  void write(Recommendation advice) {
    if (advice.missing().isEmpty()) {
      return;
    }
    page.heading("What is missing, and whether it matters");
    Map<String, List<String>> groups = new LinkedHashMap<>();
    List<String> idle = new ArrayList<>();
    for (MissingDatum missing : advice.missing()) {
      if (missing.mayMatter()) {
        groups
            .computeIfAbsent(change(missing), key -> new ArrayList<>())
            .add(name(missing.datum()));
      } else {
        idle.add(name(missing.datum()));
      }
    }
    groups.forEach(this::group);
    if (!idle.isEmpty()) {
      page.marked(2, Mark.ITEM, String.join(", ", idle) + ": cannot change anything here");
    }
  }

  /**
   * The same, where it was looked for what each can change: shown by two cases, or proven not to.
   */
  void write(WhatMatters matters) {
    page.heading("What is missing, and whether it matters");
    WhatMatters.Short found = matters.shortForm();
    Map<String, List<String>> groups = new LinkedHashMap<>();
    for (Influence one : found.headline()) {
      List<Reach> parts = one.changes().stream().filter(r -> r.facet().isHeadline()).toList();
      add(groups, "can change " + parts(parts), one);
    }
    int weighty = groups.size();
    found.other().forEach(one -> add(groups, "can change " + parts(one.changes()), one));
    found.undecided().forEach(one -> add(groups, "may change " + parts(one.undecided()), one));
    found.none().forEach(one -> add(groups, NOTHING, one));
    for (Map.Entry<String, List<String>> group : groups.entrySet()) {
      Mark mark =
          group.getKey().equals(NOTHING) ? Mark.ITEM : weighty-- > 0 ? Mark.WARNING : Mark.OPEN;
      page.marked(2, mark, String.join(", ", group.getValue()) + ": " + group.getKey());
    }
    page.paragraph(2, "By which values, and how close the numbers are: cotyla what-matters");
  }

  private static void add(Map<String, List<String>> groups, String what, Influence one) {
    groups.computeIfAbsent(what, key -> new ArrayList<>()).add(name(one.datum()));
  }

  private static String parts(List<Reach> reaches) {
    return Words.some(
        reaches.stream().map(reach -> FacetNames.of(reach.facet())).distinct().toList(),
        MOST_DECISIONS);
  }

  private void group(String change, List<String> names) {
    boolean first = change.startsWith("the first ");
    String fields = String.join(", ", names);
    page.marked(2, first ? Mark.WARNING : Mark.OPEN, fields + ": may change " + change);
  }

  private static String change(MissingDatum missing) {
    if (!missing.mayChangeFirst().isEmpty()) {
      return Words.and(missing.mayChangeFirst().stream().map(name -> "the first " + name).toList());
    }
    if (missing.mayChange().isEmpty()) {
      return "points of a " + Words.and(missing.mayChangePoints()) + ", not which comes first";
    }
    return Words.some(missing.mayChange(), MOST_DECISIONS);
  }

  private static String name(Datum datum) {
    String name = datum.field().name();
    return datum.knowledge() == Knowledge.PARTLY
        ? name + " (known as " + Words.values(datum.value(), datum.field().symbol()) + ")"
        : name;
  }
}
