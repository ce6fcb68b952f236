package org.cotyla.retrospective;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.cotyla.issue.Issues;
import org.cotyla.issue.Place;
import org.cotyla.issue.RejectedException;
import org.cotyla.protocol.Protocol;

/**
 * What each column of a file is taken for. Columns that nothing is known of are ignored, and said.
 *
 * @param columns every column of the file, in its order
 */
public record ColumnMapping(List<Column> columns) {

  public ColumnMapping {
    columns = List.copyOf(columns);
  }

  /** The mapping that the headings suggest. */
  public static ColumnMapping guess(List<String> headings, Protocol protocol) {
    return of(headings, protocol, Map.of());
  }

  /** The same, with columns corrected that a mapping file names. */
  static ColumnMapping of(List<String> headings, Protocol protocol, Map<String, Column> corrected) {
    MappingGuess guess = new MappingGuess(protocol);
    List<Column> columns = new ArrayList<>();
    for (int i = 0; i < headings.size(); i++) {
      String heading = headings.get(i);
      Column given = corrected.get(heading);
      columns.add(
          given == null
              ? guess.column(i, heading)
              : new Column(i, heading, given.meaning(), given.unit(), given.found()));
    }
    return new ColumnMapping(columns);
  }

  public List<Column> used() {
    return columns.stream().filter(column -> !column.isIgnored()).toList();
  }

  public List<Column> ignored() {
    return columns.stream().filter(Column::isIgnored).toList();
  }

  /**
   * Makes sure that cases can be judged by it.
   *
   * @throws RejectedException when two columns say one thing, or none says what was done
   */
  public ColumnMapping checked(String file) {
    Issues issues = new Issues();
    Map<String, Column> seen = new LinkedHashMap<>();
    Map<String, Column> headings = new LinkedHashMap<>();
    for (Column column : columns) {
      Place place = new Place.InFile(file, new Place.Whole("column `" + column.heading() + "`"));
      if (!column.isIgnored() && headings.putIfAbsent(column.heading(), column) != null) {
        issues.error("R002", place, "two columns have this heading", "give each its own");
        continue;
      }
      Column earlier =
          column.isIgnored() ? null : seen.putIfAbsent(column.meaning().word(), column);
      if (earlier != null) {
        issues.error(
            "R003",
            place,
            "it says the same as the column `"
                + earlier.heading()
                + "`: "
                + column.meaning().word(),
            Optional.of("say in a mapping file which of them to use, and `-` for the other"));
      }
    }
    if (columns.stream().noneMatch(column -> column.meaning() instanceof Meaning.Done)) {
      issues.error(
          "R004",
          new Place.Whole(file),
          "no column says what was done",
          "head one with the name of a ranking, or name it in a mapping file as `done: RANKING`");
    }
    if (issues.hasErrors()) {
      throw new RejectedException(issues.list());
    }
    return this;
  }
}
