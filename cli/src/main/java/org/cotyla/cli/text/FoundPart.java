package org.cotyla.cli.text;

import java.util.List;
import java.util.function.Predicate;
import org.cotyla.explain.Comparison;
import org.cotyla.explain.FindingChange;
import org.cotyla.explain.Replan;
import org.cotyla.protocol.Field;

/** What is known now and was not, or was known otherwise. */
final class FoundPart {

  private final Page page;
  private final Replan replan;

  FoundPart(Page page, Replan replan) {
    this.page = page;
    this.replan = replan;
  }

  void write() {
    Comparison comparison = replan.comparison();
    KnownValues before = new KnownValues(comparison.before());
    KnownValues after = new KnownValues(comparison.after());
    page.heading("What was found");
    for (FindingChange change : comparison.findings()) {
      Field field = change.field();
      String now = field.name() + ": " + after.inWords(field.symbol(), change.after().value());
      String was = before.inWords(field.symbol(), change.before().value());
      switch (change.kind()) {
        case FOUND -> page.marked(2, Mark.FOR, now);
        case ALTERED -> page.marked(2, Mark.WARNING, now + "; this replaces the plan's " + was);
        case WITHDRAWN -> page.marked(2, Mark.AGAINST, now + "; the plan had " + was);
      }
    }
    List<String> confirmed =
        replan.restated().stream()
            .map(Field::name)
            .filter(name -> comparison.findings().stream().noneMatch(is(name)))
            .toList();
    if (!confirmed.isEmpty()) {
      page.marked(2, Mark.ITEM, "stated again as planned: " + String.join(", ", confirmed));
    }
    if (comparison.findings().isEmpty() && confirmed.isEmpty()) {
      page.paragraph(2, "Nothing that the plan does not say.");
    }
  }

  private static Predicate<FindingChange> is(String name) {
    return change -> change.field().name().equals(name);
  }
}
