package org.cotyla.compare;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.cotyla.issue.CellRef;
import org.cotyla.issue.Issue;
import org.cotyla.issue.Issues;
import org.cotyla.name.Names;
import org.cotyla.protocol.DecisionTable;
import org.cotyla.protocol.Protocol;
import org.cotyla.protocol.Row;
import org.cotyla.protocol.Safeguard;

/**
 * Whether an id still means what it meant, since the records of old plans name rows by their ids:
 * one that is gone must be retired, and none may come to stand in another decision.
 */
final class RowIds {

  /** A row or safeguard and where its id stands; a safeguard is of no table. */
  private record Holder(String id, Optional<DecisionTable> table, CellRef at) {

    static Holder of(DecisionTable table, Row row) {
      return new Holder(row.id(), Optional.of(table), row.at());
    }

    static Holder of(Safeguard safeguard) {
      return new Holder(safeguard.id(), Optional.empty(), safeguard.at());
    }

    String home() {
      return table.map(DecisionTable::name).orElse("Safeguards");
    }
  }

  private final Pairs pairs;
  private final Issues issues = new Issues();

  private RowIds(Pairs pairs) {
    this.pairs = pairs;
  }

  /** What is to be said of ids, in the order of the old workbook. */
  static List<Issue> between(Protocol old, Protocol young, Pairs pairs) {
    RowIds ids = new RowIds(pairs);
    Map<String, Holder> after = holders(young);
    Set<String> retired = new HashSet<>();
    young
        .changes()
        .forEach(change -> change.retiredIds().forEach(id -> retired.add(Names.key(id))));
    holders(old)
        .forEach(
            (key, was) -> {
              Holder is = after.get(key);
              if (is != null) {
                ids.stays(was, is);
              } else if (!retired.contains(key)) {
                ids.gone(was);
              }
            });
    return ids.issues.list();
  }

  private static Map<String, Holder> holders(Protocol protocol) {
    Map<String, Holder> holders = new LinkedHashMap<>();
    for (DecisionTable table : protocol.decisions()) {
      table.rows().forEach(row -> holders.put(Names.key(row.id()), Holder.of(table, row)));
    }
    for (Safeguard safeguard : protocol.checks().safeguards()) {
      holders.put(Names.key(safeguard.id()), Holder.of(safeguard));
    }
    return holders;
  }

  private void gone(Holder was) {
    issues.warning(
        "W253",
        was.at(),
        "row id `" + was.id() + "` of the old workbook is gone and is not among the retired ids",
        "list it in the new workbook on the sheet Changes, so that it cannot come back");
  }

  private void stays(Holder was, Holder is) {
    Optional<DecisionTable> then = is.table().flatMap(pairs::oldOf);
    boolean same = is.table().isPresent() ? then.equals(was.table()) : was.table().isEmpty();
    if (!same) {
      issues.warning(
          "W254",
          is.at(),
          "row id `"
              + was.id()
              + "` stood in `"
              + was.home()
              + "` and now stands in `"
              + is.home()
              + "`",
          "records of old plans mean the row that stood there; give it a new id and retire the"
              + " old one");
    }
  }
}
