package org.cotyla.testcases.conformance;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** What is printed at the end: a short table, and for the build's output every name left out. */
final class ConformanceReport {

  private final List<FolderOutcome> outcomes = new ArrayList<>();

  void add(FolderOutcome outcome) {
    outcomes.add(outcome);
  }

  /** One line for each folder, the reasons, and the share that passes. */
  String table() {
    StringBuilder table = new StringBuilder();
    line(table, "Results that the DMN TCK expects, by folder: as expected / all");
    Map<String, Integer> reasons = new TreeMap<>();
    int passed = 0;
    int total = 0;
    for (FolderOutcome outcome : outcomes) {
      passed += outcome.passed();
      total += outcome.total();
      line(
          table,
          "  %-42s %3d / %3d%s"
              .formatted(
                  outcome.folder(),
                  outcome.passed(),
                  outcome.total(),
                  outcome.outside() == 0 ? "" : ", out of scope " + outcome.outside()));
      outcome
          .beyond()
          .forEach((reason, names) -> reasons.merge(reason, names.size(), Integer::sum));
    }
    line(table, "Out of scope, by reason:");
    reasons.forEach((reason, count) -> line(table, "  %4d  %s".formatted(count, reason)));
    int foreign =
        reasons.getOrDefault(OutOfScope.TIMES, 0) + reasons.getOrDefault(OutOfScope.DURATIONS, 0);
    line(table, "All: %d / %d (%.1f %%)".formatted(passed, total, share(passed, total)));
    line(
        table,
        "Without times and durations: %d / %d (%.1f %%)"
            .formatted(passed, total - foreign, share(passed, total - foreign)));
    return table.toString();
  }

  /** Every result left out, by folder and reason. */
  String names() {
    StringBuilder names = new StringBuilder();
    for (FolderOutcome outcome : outcomes) {
      outcome
          .beyond()
          .forEach(
              (reason, results) -> {
                line(names, outcome.folder() + ": " + reason);
                results.forEach(result -> line(names, "  " + result));
              });
    }
    return names.toString();
  }

  private static double share(int passed, int total) {
    return total == 0 ? 0 : 100.0 * passed / total;
  }

  private static void line(StringBuilder text, String line) {
    text.append(line).append('\n');
  }
}
