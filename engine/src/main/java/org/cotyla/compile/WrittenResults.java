package org.cotyla.compile;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.cotyla.draft.DecisionDraft;
import org.cotyla.draft.RowDraft;
import org.cotyla.name.Names;

/**
 * The rows and texts that decisions hold, as they are written. Taken from the draft, so that a
 * faulty row is still known by its id.
 */
final class WrittenResults {

  /** A row and its decision. */
  record RowOf(String decision, String id) {}

  /** A text that a decision can give under an output. */
  record Entry(String decision, String output) {}

  private final Map<String, RowOf> rows = new HashMap<>();
  private final Map<String, Set<Entry>> texts = new HashMap<>();

  WrittenResults(List<DecisionDraft> decisions) {
    decisions.forEach(this::add);
  }

  private void add(DecisionDraft decision) {
    for (RowDraft row : decision.rows()) {
      if (!Names.key(row.id().text()).equals("default")) {
        rows.putIfAbsent(
            Names.key(row.id().text()), new RowOf(decision.name().text(), row.id().text()));
      }
      int columns =
          decision.ranks().isNone() ? Math.min(decision.then().size(), row.results().size()) : 0;
      for (int i = 0; i < columns; i++) {
        Entry entry = new Entry(decision.name().text(), decision.then().get(i).text());
        texts.computeIfAbsent(row.results().get(i).text(), text -> new HashSet<>()).add(entry);
      }
    }
  }

  Optional<RowOf> row(String id) {
    return Optional.ofNullable(rows.get(Names.key(id)));
  }

  List<Entry> entries(String text) {
    List<Entry> entries = new ArrayList<>(texts.getOrDefault(text, Set.of()));
    entries.sort(java.util.Comparator.comparing(Entry::decision).thenComparing(Entry::output));
    return entries;
  }

  /** Every id, for suggestions. */
  List<String> ids() {
    return rows.values().stream().map(RowOf::id).toList();
  }

  /** Every id and every text, for suggestions. */
  List<String> all() {
    List<String> all = new ArrayList<>(ids());
    all.addAll(texts.keySet());
    return all;
  }
}
