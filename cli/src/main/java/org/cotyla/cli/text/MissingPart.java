package org.cotyla.cli.text;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.cotyla.evaluate.MissingDatum;
import org.cotyla.evaluate.Recommendation;
import org.cotyla.finding.Datum;
import org.cotyla.finding.Datum.Knowledge;

/** What is not known, grouped by what it may change, and what is proven not to matter. */
final class MissingPart {

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
        groups.computeIfAbsent(change(missing), key -> new ArrayList<>()).add(name(missing));
      } else {
        idle.add(name(missing));
      }
    }
    groups.forEach(this::group);
    if (!idle.isEmpty()) {
      page.marked(2, Mark.ITEM, String.join(", ", idle) + ": cannot change anything here");
    }
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

  private static String name(MissingDatum missing) {
    Datum datum = missing.datum();
    String name = datum.field().name();
    return datum.knowledge() == Knowledge.PARTLY
        ? name + " (known as " + Words.values(datum.value(), datum.field().symbol()) + ")"
        : name;
  }
}
