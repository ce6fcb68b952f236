package org.cotyla.cli.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.cotyla.cli.text.Words;
import org.cotyla.evaluate.MissingDatum;
import org.cotyla.finding.Datum;
import org.cotyla.finding.Datum.Knowledge;

/** What is not known, and whether it matters. */
final class MissingSection {

  private static final int MOST = 12;
  private static final int MOST_DECISIONS = 6;

  private final Sheet sheet;
  private final Markup markup;

  MissingSection(Sheet sheet) {
    this.sheet = sheet;
    this.markup = sheet.markup();
  }

  /** What may change a first place, for the first page. */
  void inShort() {
    List<MissingDatum> missing = sheet.advice().missing();
    markup.start("section", "aria-labelledby", "missing-in-short");
    markup.leaf("h2", "What is missing", "id", "missing-in-short");
    if (missing.isEmpty()) {
      markup.leaf("p", "Nothing: every finding that the protocol asks for is stated.");
      markup.end();
      return;
    }
    List<String> first =
        missing.stream()
            .filter(one -> !one.mayChangeFirst().isEmpty())
            .map(MissingSection::name)
            .toList();
    long idle = missing.stream().filter(one -> !one.mayMatter()).count();
    markup.start("p");
    if (first.isEmpty()) {
      markup.text("No open finding can change what comes first. ");
    } else {
      markup.leaf("strong", "May change what comes first: ");
      markup.text(Words.some(first, MOST) + ". ");
    }
    long rest = missing.size() - first.size() - idle;
    if (rest > 0) {
      markup.text(Words.count((int) rest, "missing finding") + " may change something else. ");
    }
    if (idle > 0) {
      markup.text(Words.count((int) idle, "missing finding") + " cannot change anything here. ");
    }
    markup.link("missing", "See the list");
    markup.text(".").end().end();
  }

  void whole() {
    List<MissingDatum> missing = sheet.advice().missing();
    if (missing.isEmpty()) {
      return;
    }
    markup.start("section", "aria-labelledby", "missing");
    markup.leaf("h3", "What is missing, and whether it matters", "id", "missing");
    Map<String, List<String>> groups = new LinkedHashMap<>();
    missing.forEach(
        one -> groups.computeIfAbsent(change(one), key -> new ArrayList<>()).add(name(one)));
    markup.start("table", "class", "missing");
    markup.start("thead").start("tr");
    markup.leaf("th", "May change", "scope", "col");
    markup.leaf("th", "Findings that are not stated or only partly", "scope", "col");
    markup.end().end().start("tbody");
    groups.forEach(
        (change, names) -> {
          markup.start("tr").leaf("th", change, "scope", "row");
          markup.leaf("td", String.join(", ", names), "data-label", "Findings").end();
        });
    markup.end().end().end();
  }

  private static String change(MissingDatum missing) {
    if (!missing.mayChangeFirst().isEmpty()) {
      return "the first " + Words.and(missing.mayChangeFirst());
    }
    if (!missing.mayChange().isEmpty()) {
      return Words.some(missing.mayChange(), MOST_DECISIONS);
    }
    return missing.mayChangePoints().isEmpty()
        ? "nothing here"
        : "points of a " + Words.and(missing.mayChangePoints()) + ", not which comes first";
  }

  private static String name(MissingDatum missing) {
    Datum datum = missing.datum();
    String name = datum.field().name();
    return datum.knowledge() == Knowledge.PARTLY
        ? name + " (known as " + Words.values(datum.value(), datum.field().symbol()) + ")"
        : name;
  }
}
