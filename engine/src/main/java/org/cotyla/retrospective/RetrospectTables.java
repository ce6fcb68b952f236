package org.cotyla.retrospective;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.cotyla.audit.AuditLine;
import org.cotyla.audit.AuditTable;
import org.cotyla.audit.AuditTable.Cell;
import org.cotyla.audit.AuditTable.Number;
import org.cotyla.audit.AuditTable.Share;
import org.cotyla.audit.AuditTable.Words;
import org.cotyla.audit.AuditTables;
import org.cotyla.audit.Proportion;
import org.cotyla.audit.SideBySide;
import org.cotyla.protocol.Ranking;

/** The tables of past cases: those of an audit, what the columns mean, and the other protocol. */
public final class RetrospectTables {

  private RetrospectTables() {}

  public static List<AuditTable> of(RetrospectiveReport report) {
    List<AuditTable> tables = new ArrayList<>(AuditTables.ofDecisions(report.audit()));
    tables.add(columns(report.mapping()));
    report
        .comparison()
        .ifPresent(
            other -> {
              tables.add(1, summary(other));
              tables.add(2, sideBySide(SideBySide.of(report.audit(), other.audit())));
              tables.add(3, changes(report, other.changes()));
              tables.add(4, examples(other.changes()));
            });
    return tables;
  }

  private static AuditTable columns(ColumnMapping mapping) {
    List<List<Cell>> rows = new ArrayList<>();
    for (Column column : mapping.columns()) {
      String note =
          column.meaning() instanceof Meaning.Ignored ignored
              ? ignored.why()
              : column.found().words();
      rows.add(
          List.of(
              new Words(column.heading()),
              new Words(column.meaning().word()),
              new Words(column.unit().orElse("")),
              new Words(note)));
    }
    return new AuditTable("Columns", List.of("heading", "taken for", "unit", "how"), rows);
  }

  private static AuditTable summary(RetrospectiveReport.Comparison other) {
    List<List<Cell>> rows = new ArrayList<>();
    other
        .audit()
        .source()
        .identity()
        .forEach(fact -> rows.add(List.of(new Words(fact.name()), new Words(fact.value()))));
    other
        .unknown()
        .forEach(field -> rows.add(List.of(new Words("does not ask for"), new Words(field))));
    return new AuditTable("The other protocol", List.of("what", "value"), rows);
  }

  private static AuditTable sideBySide(List<SideBySide> lines) {
    List<List<Cell>> rows = new ArrayList<>();
    for (SideBySide line : lines) {
      List<Cell> cells = new ArrayList<>();
      cells.add(new Words(AuditTables.rankingName(line.ranking())));
      cells.add(new Words(line.by()));
      cells.add(new Words(line.value()));
      cells.addAll(half(line.one()));
      cells.addAll(half(line.other()));
      rows.add(cells);
    }
    List<String> headings = new ArrayList<>(List.of("ranking", "by", "value"));
    for (String which : List.of("this", "other")) {
      for (String figure : List.of("judged", "first", "acceptable", "ruled out")) {
        headings.add(which + ": " + figure);
        if (!figure.equals("judged")) {
          headings.add(which + ": " + figure + " share");
        }
      }
    }
    return new AuditTable("Side by side", headings, rows);
  }

  private static List<Cell> half(Optional<AuditLine> line) {
    List<Cell> cells = new ArrayList<>();
    cells.add(line.<Cell>map(one -> new Number(one.tally().judged())).orElse(new Words("")));
    cells.addAll(share(line.map(AuditLine::first)));
    cells.addAll(share(line.map(AuditLine::acceptable)));
    cells.addAll(share(line.map(AuditLine::ruledOut)));
    return cells;
  }

  private static List<Cell> share(Optional<Proportion> proportion) {
    return List.of(
        proportion.<Cell>map(one -> new Number(one.count())).orElse(new Words("")),
        proportion
            .filter(one -> one.share().isPresent())
            .<Cell>map(one -> new Share(one.share().orElseThrow()))
            .orElse(new Words("")));
  }

  private static AuditTable changes(RetrospectiveReport report, DraftChanges changes) {
    List<List<Cell>> rows = new ArrayList<>();
    List<String> rankings = new ArrayList<>();
    report.protocol().rankings().stream().map(Ranking::name).forEach(rankings::add);
    rankings.add("");
    for (String ranking : rankings) {
      for (DraftChanges.Kind kind : DraftChanges.Kind.values()) {
        changes
            .values(kind, ranking)
            .forEach(
                (value, count) ->
                    rows.add(
                        List.of(
                            new Words(ranking),
                            new Words(kind.words()),
                            new Words(value),
                            new Number(count))));
      }
    }
    return new AuditTable(
        "Judged otherwise", List.of("ranking", "what", "from and to", "cases"), rows);
  }

  private static AuditTable examples(DraftChanges changes) {
    List<List<Cell>> rows = new ArrayList<>();
    for (DraftChanges.Example one : changes.examples()) {
      rows.add(
          List.of(
              new Words(one.reference()),
              new Words("row " + one.row()),
              new Words(one.ranking()),
              new Words(one.change())));
    }
    return new AuditTable(
        "Examples", List.of("case", "written as", "ranking", "judged otherwise"), rows);
  }
}
