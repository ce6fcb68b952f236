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
import org.cotyla.protocol.ShownAs;

/** The entries of lists, such as cautions, that are new or gone. */
final class ListChangePart {

  private static final int MOST_GONE = 12;

  private final Page page;
  private final Comparison comparison;

  ListChangePart(Page page, Comparison comparison) {
    this.page = page;
    this.comparison = comparison;
  }

  void write() {
    comparison.decisions().stream()
        .filter(change -> isShown(change.table()) && change.changesResult())
        .forEach(this::list);
  }

  static boolean isShown(DecisionTable table) {
    return !table.votes() && table.hitPolicy().isList() && table.shownAs() != ShownAs.WORKING;
  }

  private void list(DecisionChange change) {
    page.heading(change.table().name());
    for (RowChange row : change.newEntries()) {
      String was = row.kind() == Kind.SETTLED ? " (was open)" : "";
      page.marked(2, Mark.FOR, entry(change, row, row.after()) + was);
    }
    List<RowChange> gone = change.goneEntries();
    gone.stream()
        .limit(MOST_GONE)
        .forEach(row -> page.marked(2, Mark.AGAINST, "gone: " + entry(change, row, row.before())));
    if (gone.size() > MOST_GONE) {
      page.marked(2, Mark.AGAINST, "and " + (gone.size() - MOST_GONE) + " more that are gone");
    }
    int open = change.openedEntries().size();
    if (open > 0) {
      String entries = Words.count(open, "entry", "entries");
      page.marked(2, Mark.OPEN, entries + " may apply now (see recommend)");
    }
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
