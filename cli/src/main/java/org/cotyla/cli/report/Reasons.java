package org.cotyla.cli.report;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.cotyla.evaluate.DecisionResult;
import org.cotyla.evaluate.MissingDatum;
import org.cotyla.evaluate.Points;
import org.cotyla.evaluate.Recommendation;
import org.cotyla.protocol.DecisionTable;
import org.cotyla.value.PossibleValues;

/** Pieces of sentences about decisions that several parts of the page use. */
final class Reasons {

  private Reasons() {}

  /** What a decision came to; a result of many values is counted. */
  static String outputs(Sheet sheet, DecisionResult result) {
    List<DecisionTable.Output> outputs = result.table().outputs();
    List<String> words = new ArrayList<>();
    for (DecisionTable.Output output : outputs) {
      PossibleValues value = result.outputs().get(output.symbol().name());
      String text = value == null ? "nothing" : sheet.known().inWords(output.symbol(), value);
      words.add(outputs.size() == 1 ? text : output.symbol().name() + " " + text);
    }
    return String.join("; ", words);
  }

  /** A sum with a true minus. */
  static String points(Points points) {
    return points.plain().replace('-', '−');
  }

  /** The open findings on which a decision hangs. */
  static List<String> waitsFor(Recommendation advice, String decision) {
    return advice.missing().stream()
        .filter(missing -> missing.mayChange().contains(decision))
        .map(MissingDatum::datum)
        .map(datum -> datum.field().name())
        .toList();
  }

  /** The open findings that may change what a ranking puts first. */
  static List<String> mayChangeFirst(Recommendation advice, String ranking) {
    return advice.missing().stream()
        .filter(missing -> missing.mayChangeFirst().contains(ranking))
        .map(missing -> missing.datum().field().name())
        .collect(Collectors.toList());
  }
}
