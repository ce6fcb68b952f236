package org.cotyla.cli.text;

import java.util.List;
import org.cotyla.protocol.DecisionTable;

/** What the results of one decision are called beside each other. */
public final class OutputNames {

  private OutputNames() {}

  /**
   * The names without the words that all of them start with, so that {@code target inclination} and
   * {@code target anteversion} read {@code inclination} and {@code anteversion}; each keeps at
   * least one word.
   */
  public static List<String> inShort(List<DecisionTable.Output> outputs) {
    List<List<String>> names =
        outputs.stream().map(output -> List.of(output.symbol().name().split(" "))).toList();
    int shared = names.size() < 2 ? 0 : shared(names);
    return names.stream()
        .map(words -> String.join(" ", words.subList(shared, words.size())))
        .toList();
  }

  private static int shared(List<List<String>> names) {
    List<String> first = names.get(0);
    int shared = 0;
    while (shared + 1 < first.size() && isShared(names, first.get(shared), shared)) {
      shared++;
    }
    return shared;
  }

  private static boolean isShared(List<List<String>> names, String word, int at) {
    return names.stream().allMatch(name -> name.size() > at + 1 && name.get(at).equals(word));
  }
}
