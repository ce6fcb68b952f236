package org.cotyla.compare;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.cotyla.compare.CanonicalTable.CanonicalRow;
import org.cotyla.compare.Edit.Kind;
import org.cotyla.issue.CellRef;
import org.cotyla.name.Names;
import org.cotyla.protocol.DecisionTable;
import org.cotyla.protocol.HitPolicy;
import org.cotyla.protocol.Row;
import org.jspecify.annotations.Nullable;

/** What is written otherwise in one decision: by the ids of rows, else by what rows say. */
final class RowEdits {

  private final DecisionTable before;
  private final DecisionTable after;
  private final Side old;
  private final Side young;
  private final List<Edit> edits = new ArrayList<>();

  private RowEdits(DecisionTable before, DecisionTable after, Side old, Side young) {
    this.before = before;
    this.after = after;
    this.old = old;
    this.young = young;
  }

  static List<Edit> between(DecisionTable before, DecisionTable after, Side old, Side young) {
    RowEdits edits = new RowEdits(before, after, old, young);
    edits.head();
    edits.rows();
    return edits.edits;
  }

  private void head() {
    if (!before.name().equals(after.name())) {
      add(
          Kind.DECISION_RENAMED,
          after.name(),
          "",
          before.name(),
          after.name(),
          before.at(),
          after.at());
    }
    head("hit policy", before.hitPolicy().letters(), after.hitPolicy().letters());
    head("shown as", before.shownAs().word(), after.shownAs().word());
    if (!before.asks().equals(after.asks())) {
      add(
          Kind.REASON_ONLY,
          after.name(),
          "asks",
          before.asks(),
          after.asks(),
          before.at(),
          after.at());
    }
  }

  private void head(String part, String was, String now) {
    if (!was.equals(now)) {
      add(Kind.DECISION_CHANGED, after.name(), part, was, now, before.at(), after.at());
    }
  }

  private void rows() {
    Map<String, Row> gone = new LinkedHashMap<>();
    all(before).forEach(row -> gone.put(row.id(), row));
    List<Row> come = new ArrayList<>();
    for (Row is : all(after)) {
      Row was = gone.remove(is.id());
      if (was == null) {
        come.add(is);
      } else {
        row(was, is);
      }
    }
    for (Row is : come) {
      CanonicalRow says = CanonicalTable.row(after, is, young);
      Optional<Row> renamed =
          gone.values().stream()
              .filter(was -> CanonicalTable.row(before, was, old).equals(says))
              .findFirst();
      if (renamed.isPresent()) {
        gone.remove(renamed.get().id());
        add(
            Kind.ROW_RENAMED,
            after.name(),
            is.id(),
            renamed.get().id(),
            is.id(),
            renamed.get().at(),
            is.at());
      } else {
        add(Kind.ROW_ADDED, after.name(), is.id(), "", "", null, is.at());
      }
    }
    gone.values()
        .forEach(was -> add(Kind.ROW_REMOVED, after.name(), was.id(), "", "", was.at(), null));
    if (after.hitPolicy() == HitPolicy.FIRST || after.hitPolicy() == HitPolicy.RULE_ORDER) {
      Sequence.moved(before.rows(), after.rows(), Row::id)
          .forEach(is -> add(Kind.ROW_MOVED, after.name(), is.id(), "", "", null, is.at()));
    }
  }

  private static List<Row> all(DecisionTable table) {
    List<Row> rows = new ArrayList<>(table.rows());
    table.otherwise().ifPresent(rows::add);
    return rows;
  }

  private void row(Row was, Row is) {
    boolean same =
        CanonicalTable.row(before, was, old).equals(CanonicalTable.row(after, is, young));
    if (!same) {
      cells(was, is);
    }
    if (!was.because().equals(is.because())) {
      reason(was, is, "because", was.because(), is.because());
    }
    if (!was.sources().equals(is.sources())) {
      reason(was, is, "source", sources(was), sources(is));
    }
  }

  /** A cell that reads the same means something else only by a constant, which is its own edit. */
  private void cells(Row was, Row is) {
    Map<String, Cell> before = cellsOf(this.before, was);
    Map<String, Cell> after = cellsOf(this.after, is);
    Map<String, String> names = new LinkedHashMap<>();
    after.values().forEach(cell -> names.putIfAbsent(Names.key(cell.name()), cell.name()));
    before.values().forEach(cell -> names.putIfAbsent(Names.key(cell.name()), cell.name()));
    names.forEach(
        (key, name) -> {
          Cell one = before.get(key);
          Cell other = after.get(key);
          String text = one == null ? "-" : one.text();
          String now = other == null ? "-" : other.text();
          if (!text.equals(now)) {
            add(
                Kind.ROW_CHANGED,
                this.after.name(),
                is.id() + ", " + name,
                "`" + text + "`",
                "`" + now + "`",
                one == null ? was.at() : one.at(),
                other == null ? is.at() : other.at());
          }
        });
  }

  private record Cell(String name, String text, CellRef at) {}

  private static Map<String, Cell> cellsOf(DecisionTable table, Row row) {
    Map<String, Cell> cells = new LinkedHashMap<>();
    for (int i = 0; i < row.tests().size(); i++) {
      String name = table.inputs().get(i).symbol().name();
      Row.Test test = row.tests().get(i);
      cells.put(Names.key(name), new Cell(name, test.text(), test.at()));
    }
    for (int i = 0; i < row.results().size(); i++) {
      String name = table.outputs().get(i).symbol().name();
      Row.Result result = row.results().get(i);
      cells.put(Names.key(name), new Cell(name, result.text(), result.at()));
    }
    row.vote()
        .ifPresent(
            vote -> {
              cells.put("option", new Cell("option", vote.option(), row.at()));
              cells.put("effect", new Cell("effect", vote.effect().word(), row.at()));
              cells.put(
                  "points",
                  new Cell("points", vote.points().stripTrailingZeros().toPlainString(), row.at()));
            });
    return cells;
  }

  private static String sources(Row row) {
    return row.sources().isEmpty() ? "none" : String.join(", ", row.sources());
  }

  private void reason(Row was, Row is, String part, String before, String now) {
    add(Kind.REASON_ONLY, after.name(), is.id() + ", " + part, before, now, was.at(), is.at());
  }

  private void add(
      Kind kind,
      String subject,
      String part,
      String was,
      String now,
      @Nullable CellRef before,
      @Nullable CellRef after) {
    edits.add(
        new Edit(
            kind,
            subject,
            part,
            was,
            now,
            Optional.ofNullable(before),
            Optional.ofNullable(after)));
  }
}
