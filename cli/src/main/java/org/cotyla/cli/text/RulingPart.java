package org.cotyla.cli.text;

import java.util.Comparator;
import java.util.List;
import org.cotyla.explain.Hinge;
import org.cotyla.explain.Lift;
import org.cotyla.explain.Ruling;
import org.cotyla.expression.Symbol;
import org.cotyla.value.Value;
import org.cotyla.value.Value.NumberValue;
import org.cotyla.value.ValueSet;

/** The rows that rule an option out, and what would lift each. */
final class RulingPart {

  private static final int INDENT = 6;

  private final Page page;
  private final KnownValues known;
  private final ReasonLines lines;

  RulingPart(Page page, KnownValues known, ReasonLines lines) {
    this.page = page;
    this.known = known;
    this.lines = lines;
  }

  void write(List<Ruling> rulings) {
    if (rulings.isEmpty()) {
      return;
    }
    boolean certain = rulings.stream().anyMatch(ruling -> ruling.reason().isCertain());
    page.heading(certain ? "What rules it out, and what would lift that" : "What may rule it out");
    for (Ruling ruling : rulings) {
      lines.all(List.of(ruling.reason()));
      if (ruling.reason().isCertain()) {
        ruling.hinges().forEach(this::hinge);
        lifts(ruling);
      }
    }
  }

  private void hinge(Hinge hinge) {
    hinge
        .failsFor()
        .ifPresent(
            fails ->
                page.paragraph(
                    INDENT,
                    "would not hold if "
                        + hinge.input().name()
                        + " were "
                        + words(fails, hinge.input())));
  }

  private void lifts(Ruling ruling) {
    if (ruling.lifts().isEmpty()) {
      page.paragraph(
          INDENT,
          ruling.isWhole()
              ? "No single finding lifts it; each was tried on this case."
              : "No single finding was found that lifts it; those that go into formulas were tried"
                  + " in steps.");
      return;
    }
    page.paragraph(INDENT, "A single finding that would lift it, tried on this case:");
    ruling.lifts().stream().sorted(Comparator.comparing(lift -> !lift.frees())).forEach(this::lift);
  }

  private void lift(Lift lift) {
    Symbol symbol = lift.field().symbol();
    String example = lift.isWhole() ? "" : "for example ";
    ValueSet values =
        lift.isWhole() || lift.values().isEmpty() ? lift.values() : ValueSet.of(nearest(lift));
    page.marked(
        INDENT,
        Mark.ITEM,
        symbol.name()
            + ": "
            + example
            + words(values, symbol)
            + " (now "
            + known.inWords(symbol, lift.now().value())
            + ")"
            + (lift.frees() ? "" : "; another row still rules it out"));
  }

  /** Of values that were tried, the one that is nearest to what is. */
  private static Value nearest(Lift lift) {
    List<Value> tried = lift.values().values();
    return lift.now()
        .value()
        .single()
        .filter(NumberValue.class::isInstance)
        .map(NumberValue.class::cast)
        .flatMap(
            now ->
                tried.stream()
                    .min(
                        Comparator.comparing(
                            one -> ((NumberValue) one).number().subtract(now.number()).abs())))
        .orElse(tried.get(0));
  }

  private String words(ValueSet values, Symbol symbol) {
    return known.withUnit(symbol, RangeWords.of(values, known.allowed(symbol), symbol));
  }
}
