package org.cotyla.cli.text;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.cotyla.evaluate.Firing;
import org.cotyla.evaluate.RankedOption;
import org.cotyla.evaluate.Recommendation;
import org.cotyla.evaluate.Standing;
import org.cotyla.explain.Premise;
import org.cotyla.expression.Symbol;
import org.cotyla.finding.Datum;
import org.cotyla.finding.Datum.Knowledge;
import org.cotyla.protocol.Calculation;
import org.cotyla.protocol.Row;
import org.cotyla.value.PossibleValues;

/** What rows rest on: decisions by their rows, calculations, house lines, recorded findings. */
final class PremisePart {

  private static final int MOST_ROWS = 4;

  private final Page page;
  private final Recommendation advice;
  private final KnownValues known;
  private final TestWords tests;

  PremisePart(Page page, Recommendation advice, KnownValues known) {
    this.page = page;
    this.advice = advice;
    this.known = known;
    this.tests = new TestWords(known);
  }

  void write(List<Premise> premises) {
    List<String> lines = new ArrayList<>();
    List<String> findings = new ArrayList<>();
    List<String> notStated = new ArrayList<>();
    boolean derives =
        premises.stream().anyMatch(one -> !(one instanceof Premise.Recorded) && !isLine(one));
    if (derives) {
      page.heading("What these rows rest on, from the nearest to the findings");
    }
    for (Premise premise : premises) {
      if (premise instanceof Premise.Decided decided) {
        decided(decided);
      } else if (premise instanceof Premise.Ranked ranked) {
        ranked(ranked);
      } else if (premise instanceof Premise.Calculated calculated) {
        if (isLine(premise)) {
          lines.add(line(calculated));
        } else {
          calculated(calculated);
        }
      } else if (premise instanceof Premise.Recorded recorded) {
        recorded(recorded.datum(), findings, notStated);
      }
    }
    list("House lines used", lines);
    list("Findings they go back to", findings);
    list("Not stated, and read by them", notStated);
  }

  private void list(String heading, List<String> entries) {
    if (!entries.isEmpty()) {
      page.heading(heading);
      page.paragraph(2, String.join("; ", entries) + ".");
    }
  }

  private static boolean isLine(Premise premise) {
    return premise instanceof Premise.Calculated one && one.calculation().constant().isPresent();
  }

  private String line(Premise.Calculated one) {
    Calculation calculation = one.calculation();
    return calculation.name()
        + " "
        + known.inWords(calculation.symbol(), one.value())
        + " ("
        + calculation.expressionAt().plain()
        + ")";
  }

  private void calculated(Premise.Calculated one) {
    Calculation calculation = one.calculation();
    page.paragraph(
        2, calculation.name() + " = " + known.inWords(calculation.symbol(), one.value()));
    page.paragraph(
        4,
        "worked out at "
            + calculation.expressionAt().plain()
            + " as "
            + calculation.expression().print());
  }

  private void recorded(Datum datum, List<String> findings, List<String> notStated) {
    Symbol symbol = datum.field().symbol();
    boolean stated =
        datum.knowledge() == Knowledge.RECORDED || datum.knowledge() == Knowledge.PARTLY;
    if (stated) {
      findings.add(symbol.name() + " " + known.inWords(symbol, datum.value()));
    } else {
      String later = datum.knowledge() == Knowledge.NOT_YET ? " (a finding of a later stage)" : "";
      notStated.add(symbol.name() + later);
    }
  }

  private void ranked(Premise.Ranked one) {
    String name = one.result().ranking().name();
    page.paragraph(
        2,
        one.result().ranking().first().name()
            + " = "
            + known.inWords(one.result().ranking().first(), one.result().first()));
    String leader = one.result().leader().map(RankedOption::name).orElse("");
    page.paragraph(
        4,
        "the ranking of each "
            + name
            + (leader.isEmpty() ? "" : ": cotyla why CASE \"" + leader + "\""));
  }

  private void decided(Premise.Decided decided) {
    String values =
        decided.names().stream()
            .map(name -> name.name() + " = " + known.inWords(name, decided.value(name)))
            .collect(Collectors.joining(", "));
    page.paragraph(2, values);
    List<Firing> rows = decided.rows();
    rows.stream().limit(MOST_ROWS).forEach(firing -> row(decided, firing));
    if (rows.size() > MOST_ROWS) {
      page.paragraph(4, "and " + Words.count(rows.size() - MOST_ROWS, "more row"));
    }
    for (Row row : decided.defaultRows()) {
      String lead = decided.result().byDefault() ? "no row matches: " : "or no row matches: ";
      page.paragraph(4, lead + row.because() + " " + Words.reference(row, advice.protocol()));
    }
  }

  private void row(Premise.Decided decided, Firing firing) {
    Row row = firing.row();
    String gives = decided.result().table().hitPolicy().isSingleHit() ? "" : gives(firing);
    String may = firing.standing() == Standing.MAY_DECIDE ? "may be: " : "";
    page.paragraph(4, may + gives + row.because() + " " + Words.reference(row, advice.protocol()));
    page.paragraph(6, "at " + row.at().plain() + ": " + tests.all(firing));
  }

  private static String gives(Firing firing) {
    List<String> words = new ArrayList<>();
    for (int i = 0; i < firing.results().size(); i++) {
      PossibleValues value = firing.results().get(i);
      words.add(Words.values(value, firing.table().outputs().get(i).symbol()));
    }
    return String.join("; ", words) + ": ";
  }
}
