package org.cotyla.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.cotyla.compare.Edit.Kind;
import org.cotyla.issue.CellRef;
import org.cotyla.name.NameIndex;
import org.cotyla.name.Names;
import org.cotyla.protocol.Protocol;
import org.cotyla.protocol.Safeguard;

/**
 * What is demanded otherwise. A safeguard changes no answer, but one that was weakened lets an edit
 * pass that it would have stopped.
 */
final class SafeguardEdits {

  private SafeguardEdits() {}

  static List<Edit> between(Protocol old, Protocol young) {
    NameIndex<Safeguard> before = NameIndex.of(old.checks().safeguards(), Safeguard::id);
    NameIndex<Safeguard> after = NameIndex.of(young.checks().safeguards(), Safeguard::id);
    List<Edit> edits = new ArrayList<>();
    for (Safeguard is : young.checks().safeguards()) {
      Optional<Safeguard> was = before.find(is.id());
      if (was.isEmpty()) {
        edits.add(edit(Kind.SAFEGUARD_ADDED, is, "", said(is), Optional.empty(), is.at()));
      } else if (!said(was.get()).equals(said(is))) {
        edits.add(
            edit(
                Kind.SAFEGUARD_CHANGED,
                is,
                said(was.get()),
                said(is),
                Optional.of(was.get().at()),
                changed(was.get(), is)));
      }
    }
    for (Safeguard was : old.checks().safeguards()) {
      if (after.find(was.id()).isEmpty()) {
        edits.add(
            new Edit(
                Kind.SAFEGUARD_REMOVED,
                was.id(),
                "",
                said(was),
                "",
                Optional.of(was.at()),
                Optional.empty()));
      }
    }
    return edits;
  }

  private static Edit edit(
      Kind kind, Safeguard is, String was, String now, Optional<CellRef> before, CellRef after) {
    return new Edit(kind, is.id(), "", was, now, before, Optional.of(after));
  }

  private static String said(Safeguard safeguard) {
    String when =
        safeguard.tests().stream()
            .map(one -> one.input().symbol().name() + " " + one.test().text())
            .collect(Collectors.joining(", "));
    return "`" + safeguard.demand().plain() + (when.isEmpty() ? "" : "` when `" + when) + "`";
  }

  /** The first cell that says something else. */
  private static CellRef changed(Safeguard was, Safeguard is) {
    if (!was.demand().plain().equals(is.demand().plain())) {
      return is.demand().at();
    }
    Map<String, String> before = new TreeMap<>();
    was.tests().forEach(one -> before.put(name(one), one.test().text()));
    return is.tests().stream()
        .filter(one -> !one.test().text().equals(before.get(name(one))))
        .map(one -> one.test().at())
        .findFirst()
        .orElse(is.at());
  }

  private static String name(Safeguard.Condition condition) {
    return Names.key(condition.input().symbol().name());
  }
}
