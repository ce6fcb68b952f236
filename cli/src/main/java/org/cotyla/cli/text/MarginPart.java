package org.cotyla.cli.text;

import java.util.List;
import java.util.Optional;
import org.cotyla.explore.Margin;
import org.cotyla.explore.Margins;
import org.cotyla.protocol.Field;
import org.cotyla.value.Value;

/** The lines near each recorded number, and whether the answer holds over its measurement error. */
final class MarginPart {

  private static final int MOST_CHANGES = 3;

  private final Page page;

  MarginPart(Page page) {
    this.page = page;
  }

  void write(Margins margins) {
    page.heading("How close the recorded numbers stand to a line that changes what is settled");
    if (margins.margins().isEmpty()) {
      page.paragraph(2, "No recorded number can change by itself what is settled now.");
    }
    margins.margins().forEach(this::margin);
  }

  private void margin(Margin margin) {
    Field field = margin.datum().field();
    String lead = field.name() + " " + Amounts.of(margin.datum().value(), field);
    Optional<Margin.Error> error = margin.error();
    String holds = error.map(found -> "; " + error(found, field)).orElse("");
    boolean changes = error.filter(found -> found.verdict() != Margin.Verdict.HOLDS).isPresent();
    page.marked(2, changes ? Mark.WARNING : Mark.ITEM, lead + holds);
    margin.below().ifPresent(line -> line(line, "below", " or less", field));
    margin.above().ifPresent(line -> line(line, "above", " or more", field));
    if (!margin.nearest()) {
      page.paragraph(6, "not proven: something may change nearer than this");
    }
  }

  private static String error(Margin.Error error, Field field) {
    String size = "measurement error " + Amounts.of(Value.of(error.size()), field);
    return switch (error.verdict()) {
      case HOLDS -> size + ": the answer holds over it";
      case CHANGES ->
          size
              + ": within it can change "
              + Words.and(error.changes().stream().map(FacetNames::of).toList());
      case UNDECIDED -> size + ": not decided whether the answer holds over it";
    };
  }

  private void line(Margin.Line line, String beyond, String on, Field field) {
    String at = Amounts.of(line.at(), field);
    String where = line.beyond() ? beyond + " " + at : "at " + at + on;
    List<String> changes = line.changes().stream().map(FacetNames::change).toList();
    int more = changes.size() - MOST_CHANGES;
    String shown = String.join("; ", changes.subList(0, Math.min(MOST_CHANGES, changes.size())));
    page.hanging("      " + where + ": ", more > 0 ? shown + "; and " + more + " more" : shown);
  }
}
