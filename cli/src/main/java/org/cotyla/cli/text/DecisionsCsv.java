package org.cotyla.cli.text;

import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.cotyla.audit.JudgedDecision;
import org.cotyla.audit.Judgement;

/**
 * Every decision as it was judged, as comma-separated values (RFC 4180): a line for each ranking,
 * so that an audit can be recounted by other means. A decision that nothing was advised for has one
 * line without a ranking.
 */
public final class DecisionsCsv {

  private static final String[] HEADINGS = {
    "entry",
    "case reference",
    "day",
    "role",
    "protocol",
    "standing",
    "ranking",
    "chosen",
    "stood first",
    "verdict",
    "rows departed from",
    "ruled out by",
    "reason",
    "in own words",
    "missing data",
    "missing data that might have changed a first place"
  };

  private final StringWriter text = new StringWriter();
  private final CSVPrinter csv;

  public DecisionsCsv() {
    try {
      csv = new CSVPrinter(text, CSVFormat.RFC4180.builder().setHeader(HEADINGS).get());
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
  }

  /** Adds a decision. */
  public void add(JudgedDecision decision) {
    if (decision.judgements().isEmpty()) {
      line(decision, List.of("", "", "", "nothing advised", "", ""));
    }
    for (Judgement one : decision.judgements()) {
      line(
          decision,
          List.of(
              one.ranking(),
              one.chosen(),
              one.first().orElse(""),
              one.verdict().word(),
              String.join(", ", one.rows()),
              String.join(", ", one.ruledOutBy())));
    }
  }

  private void line(JudgedDecision decision, List<String> judged) {
    Stream<String> before =
        Stream.of(
            decision.place(),
            decision.reference(),
            decision.day().map(Object::toString).orElse(""),
            decision.role(),
            decision.protocolVersion(),
            decision.standing());
    Stream<String> after =
        Stream.of(
            decision.reason().orElse(""),
            decision.because().orElse(""),
            String.join(", ", decision.missing().keySet()),
            String.join(
                ", ",
                decision.missing().keySet().stream().filter(decision.missing()::get).toList()));
    try {
      csv.printRecord(
          Stream.of(before, judged.stream(), after)
              .flatMap(cells -> cells)
              .map(SafeCell::of)
              .toList());
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
  }

  @Override
  public String toString() {
    return text.toString();
  }
}
