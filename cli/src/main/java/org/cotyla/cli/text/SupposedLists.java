package org.cotyla.cli.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.cotyla.explain.Comparison;
import org.cotyla.explain.DecisionChange;
import org.cotyla.explain.RowChange;
import org.cotyla.explain.RowChange.Kind;
import org.cotyla.explain.RowChange.Part;
import org.cotyla.protocol.DecisionTable;

/** The entries of lists, such as cautions, that would be new or gone. */
final class SupposedLists {

  private final Page page;
  private final Comparison comparison;

  SupposedLists(Page page, Comparison comparison) {
    this.page = page;
    this.comparison = comparison;
  }

  /** Lists with new or gone entries; those with entries that only may apply share one line. */
  void write() {
    List<String> open = new ArrayList<>();
    for (DecisionChange change : comparison.decisions()) {
      if (ListChangePart.isShown(change.table())) {
        list(change);
        if (!change.openedEntries().isEmpty()) {
          open.add(change.table().name() + " (" + change.openedEntries().size() + ")");
        }
      }
    }
    if (!open.isEmpty()) {
      page.heading("Entries that may apply then");
      page.paragraph(2, String.join(", ", open));
    }
  }

  private void list(DecisionChange change) {
    if (change.newEntries().isEmpty() && change.goneEntries().isEmpty()) {
      return;
    }
    page.heading(change.table().name());
    for (RowChange row : change.newEntries()) {
      String was = row.kind() == Kind.SETTLED ? " (was open)" : "";
      page.marked(2, Mark.FOR, "new: " + entry(change, row, row.after()) + was);
    }
    change
        .goneEntries()
        .forEach(row -> page.marked(2, Mark.AGAINST, "gone: " + entry(change, row, row.before())));
  }

  private static String entry(DecisionChange change, RowChange row, Optional<Part> part) {
    List<DecisionTable.Output> outputs = change.table().outputs();
    List<String> words = new ArrayList<>();
    part.ifPresent(
        known -> {
          for (int i = 0; i < Math.min(outputs.size(), known.results().size()); i++) {
            words.add(Words.values(known.results().get(i), outputs.get(i).symbol()));
          }
        });
    String says = words.isEmpty() ? row.row().because() : String.join("; ", words);
    return says + " [" + row.row().id() + "]";
  }
}
