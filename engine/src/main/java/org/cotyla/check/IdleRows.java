package org.cotyla.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.cotyla.expression.Symbol;
import org.cotyla.finite.Answer;
import org.cotyla.finite.Claim;
import org.cotyla.protocol.DecisionTable;
import org.cotyla.protocol.Row;

/** Rows that are part of the result in no case, and what keeps them from it. */
final class IdleRows {

  private static final int ROWS_NAMED = 4;

  private final TableCheck check;
  private final DecisionTable table;

  IdleRows(TableCheck check) {
    this.check = check;
    this.table = check.table();
  }

  void check() {
    for (Row row : table.rows()) {
      Answer answer = check.search().find(new Claim.Counts(table, row));
      if (answer instanceof Answer.Impossible) {
        report(row);
      } else if (answer instanceof Answer.Undecided undecided) {
        undecided(row, undecided);
      }
    }
    table.otherwise().ifPresent(this::checkDefault);
  }

  private void undecided(Row row, Answer.Undecided undecided) {
    check
        .remarks()
        .warning(
            "K122",
            row.at(),
            row.id(),
            "whether row `" + row.id() + "` ever counts is undecided: " + undecided.why(),
            Optional.empty(),
            Remarks.Example.none());
  }

  private void checkDefault(Row row) {
    if (check.search().find(new Claim.NoRow(table)) instanceof Answer.Impossible) {
      check
          .remarks()
          .warning(
              "K123",
              row.at(),
              row.id(),
              "the default row `" + row.id() + "` never counts: some other row matches every case",
              "delete it, unless it stands there for later rows");
    }
  }

  private void report(Row row) {
    boolean matches = !(search(matching(row)) instanceof Answer.Impossible);
    check
        .remarks()
        .warning(
            "K121",
            row.at(),
            row.id(),
            "row `" + row.id() + "` never counts: " + (matches ? taken(row) : neverTogether(row)),
            matches
                ? "move it before them, narrow them, or delete it"
                : "widen a test, or delete the row");
  }

  private Answer search(List<Claim> claims) {
    return check.search().find(new Claim.All(claims));
  }

  /** Each test that says something, as a claim of its own. */
  private List<Claim> matching(Row row) {
    List<Claim> tests = new ArrayList<>();
    for (int i = 0; i < row.tests().size(); i++) {
      Row.Test test = row.tests().get(i);
      if (!test.prepared().isAnything()) {
        tests.add(new Claim.Holds(table.inputs().get(i).symbol(), test.prepared()));
      }
    }
    return tests;
  }

  /** The fewest of the row's tests that no case meets together. */
  private String neverTogether(Row row) {
    List<Claim> tests = fewest(matching(row));
    List<String> named = new ArrayList<>();
    for (int i = 0; i < row.tests().size(); i++) {
      Symbol input = table.inputs().get(i).symbol();
      Claim claim = new Claim.Holds(input, row.tests().get(i).prepared());
      if (tests.contains(claim)) {
        String cell = row.tests().get(i).at().plain();
        named.add("`" + input.name() + "` `" + row.tests().get(i).text() + "` (" + cell + ")");
      }
    }
    return named.size() == 1
        ? "no case leads to " + named.get(0)
        : "no case meets " + String.join(" and ", named) + " together";
  }

  /** The fewest earlier or stronger rows that between them take every case of the row. */
  private String taken(Row row) {
    List<Row> others = new ArrayList<>(table.rows());
    others.remove(row);
    Claim matches = new Claim.Matches(table, row);
    for (Row other : List.copyOf(others)) {
      others.remove(other);
      List<Claim> claims = new ArrayList<>(List.of(matches));
      others.forEach(left -> claims.add(new Claim.Not(new Claim.Matches(table, left))));
      if (!(search(claims) instanceof Answer.Impossible)) {
        others.add(other);
      }
    }
    others.sort(java.util.Comparator.comparingInt(Row::position));
    String named =
        others.stream()
            .limit(ROWS_NAMED)
            .map(other -> "`" + other.id() + "` (" + other.at().plain() + ")")
            .collect(Collectors.joining(", "));
    String more =
        others.size() > ROWS_NAMED ? " and " + (others.size() - ROWS_NAMED) + " more" : "";
    return "every case that it matches is taken by " + named + more;
  }

  private List<Claim> fewest(List<Claim> claims) {
    List<Claim> left = new ArrayList<>(claims);
    for (Claim claim : claims) {
      List<Claim> fewer = new ArrayList<>(left);
      fewer.remove(claim);
      if (!fewer.isEmpty() && search(fewer) instanceof Answer.Impossible) {
        left = fewer;
      }
    }
    return left;
  }
}
