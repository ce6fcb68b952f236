package org.cotyla.testcases.faults;

import java.util.Locale;
import java.util.Map;

/** The share of faults that were told, by kind and by what told them. */
record FaultTable(Map<FaultKind, Map<Told, Integer>> counts) {

  String text() {
    StringBuilder text = new StringBuilder(String.format(Locale.ROOT, "%-24s", "fault"));
    for (Told told : Told.values()) {
      text.append(String.format(Locale.ROOT, "%10s", told.words()));
    }
    counts.forEach(
        (kind, row) -> {
          text.append(String.format(Locale.ROOT, "%n%-24s", kind.words()));
          for (Told told : Told.values()) {
            text.append(String.format(Locale.ROOT, "%10d", row.getOrDefault(told, 0)));
          }
        });
    text.append(String.format(Locale.ROOT, "%n%-24s", "all"));
    for (Told told : Told.values()) {
      text.append(String.format(Locale.ROOT, "%10d", sum(told)));
    }
    int all = 0;
    for (Told told : Told.values()) {
      all += sum(told);
    }
    double share = 100.0 * (all - sum(Told.MISSED)) / Math.max(1, all);
    return text.append(String.format(Locale.ROOT, "%ntold: %.1f %% of %d", share, all)).toString();
  }

  private int sum(Told told) {
    return counts.values().stream().mapToInt(row -> row.getOrDefault(told, 0)).sum();
  }
}
