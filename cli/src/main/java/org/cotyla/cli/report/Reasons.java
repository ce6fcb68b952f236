package org.cotyla.cli.report;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.cotyla.cli.text.OutputNames;
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
    List<String> names = OutputNames.inShort(outputs);
    List<String> words = new ArrayList<>();
    for (int i = 0; i < outputs.size(); i++) {
      PossibleValues value = result.outputs().get(outputs.get(i).symbol().name());
      String text =
          value == null ? "nothing" : sheet.known().inWords(outputs.get(i).symbol(), value);
      words.add(outputs.size() == 1 ? text : names.get(i) + " " + text);
    }
    return String.join("; ", words);
  }

  /** A sum with a true minus. */
  static String points(Points points) {
    return points.plain().replace('-', '−');
  }

  /** {@code 1 point}, {@code −2 points}, {@code 0 (−3 to 2) points}. */
  static String inPoints(Points points) {
    String words = points(points);
    return words + (words.equals("1") || words.equals("−1") ? " point" : " points");
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
