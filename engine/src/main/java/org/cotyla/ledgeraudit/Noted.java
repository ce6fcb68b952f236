package org.cotyla.ledgeraudit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.cotyla.audit.NamedCases;

/** Gathers references under what they have in common; only the first of each are kept. */
final class Noted {

  private final Map<String, List<String>> first = new LinkedHashMap<>();
  private final Map<String, Long> counts = new LinkedHashMap<>();

  void add(String what, String reference) {
    List<String> references = first.computeIfAbsent(what, any -> new ArrayList<>());
    if (references.size() < NamedCases.MOST) {
      references.add(reference);
    }
    counts.merge(what, 1L, Long::sum);
  }

  List<NamedCases> list() {
    return first.entrySet().stream()
        .map(
            entry ->
                new NamedCases(
                    entry.getKey(), counts.getOrDefault(entry.getKey(), 0L), entry.getValue()))
        .toList();
  }
}
