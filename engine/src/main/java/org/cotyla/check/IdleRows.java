package org.cotyla.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.cotyla.expression.PreparedTest;
import org.cotyla.finite.Answer;
import org.cotyla.finite.Claim;
import org.cotyla.protocol.DecisionTable;
import org.cotyla.protocol.Row;
import org.cotyla.value.Truth;

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
      if (!check.seen().contains(row)) {
        check(row);
      }
      check.step().run();
    }
    table.otherwise().ifPresent(this::checkDefault);
  }

  private void check(Row row) {
    Answer answer = check.search().find(new Claim.Counts(table, row));
    if (answer instanceof Answer.Impossible) {
      report(row);
    } else if (answer instanceof Answer.Undecided undecided) {
      undecided(row, "row", undecided);
    } else if (answer instanceof Answer.Found found) {
      check.seen().add(found.answers().get(0));
    }
  }

  private void undecided(Row row, String what, Answer.Undecided undecided) {
    check
        .remarks()
        .warning(
            "K122",
            row.at(),
            row.id(),
            "whether " + what + " `" + row.id() + "` ever counts is undecided: " + undecided.why(),
            Optional.empty(),
            Remarks.Example.none());
  }

  private void checkDefault(Row row) {
    Answer answer = check.search().find(new Claim.NoRow(table));
    if (answer instanceof Answer.Undecided undecided) {
      undecided(row, "the default row", undecided);
    } else if (answer instanceof Answer.Impossible) {
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
    Optional<List<Claim>> never = check.search().conflict(tests(row));
    check
        .remarks()
        .warning(
            "K121",
            row.at(),
            row.id(),
            "row `"
                + row.id()
                + "` never counts: "
                + never.map(claims -> neverTogether(row, claims)).orElseGet(() -> taken(row)),
            never.isPresent()
                ? "widen a test, or delete the row"
                : "move it before them, narrow them, or delete it");
  }

  /** Each test that says something, as a claim of its own. */
  private List<Claim> tests(Row row) {
    List<Claim> tests = new ArrayList<>();
    for (int i = 0; i < row.tests().size(); i++) {
      if (!row.tests().get(i).prepared().isAnything()) {
        tests.add(claim(row, i));
      }
    }
    return tests;
  }

  private Claim claim(Row row, int column) {
    return new Claim.Holds(table.inputs().get(column).symbol(), row.tests().get(column).prepared());
  }

  private String neverTogether(Row row, List<Claim> claims) {
    List<String> named = new ArrayList<>();
    for (int i = 0; i < row.tests().size(); i++) {
      if (claims.contains(claim(row, i))) {
        Row.Test test = row.tests().get(i);
        String input = table.inputs().get(i).symbol().name();
        named.add("`" + input + "` `" + test.text() + "` (" + test.at().plain() + ")");
      }
    }
    return named.size() == 1
        ? "no case leads to " + named.get(0)
        : "no case meets " + String.join(" and ", named) + " together";
  }

  /** The fewest rows that between them take every case of the row. */
  private String taken(Row row) {
    List<Row> rivals =
        table.rows().stream()
            .filter(other -> other != row)
            .filter(other -> mayGoBefore(other, row))
            .toList();
    List<Row> takers = rivals.stream().filter(other -> covers(other, row)).limit(1).toList();
    if (takers.isEmpty()) {
      List<Claim> claims = new ArrayList<>(List.of(new Claim.Matches(table, row)));
      rivals.forEach(other -> claims.add(new Claim.Not(new Claim.Matches(table, other))));
      List<Claim> enough = check.search().conflict(claims).orElse(List.of());
      takers =
          rivals.stream()
              .filter(other -> enough.contains(new Claim.Not(new Claim.Matches(table, other))))
              .toList();
    }
    String named =
        takers.stream()
            .limit(ROWS_NAMED)
            .map(other -> "`" + other.id() + "` (" + other.at().plain() + ")")
            .collect(Collectors.joining(", "));
    String more =
        takers.size() > ROWS_NAMED ? " and " + (takers.size() - ROWS_NAMED) + " more" : "";
    return takers.isEmpty()
        ? "whether no case meets its tests, or other rows take all that do, is undecided"
        : "every case that it matches is taken by " + named + more;
  }

  /** Whether a row can be the one that is taken where another matches too. */
  private boolean mayGoBefore(Row other, Row row) {
    return switch (table.hitPolicy()) {
      case FIRST -> other.position() < row.position();
      case PRIORITY ->
          !(check
                  .search()
                  .find(
                      new Claim.All(
                          List.of(new Claim.Matches(table, row), new Claim.Counts(table, other))))
              instanceof Answer.Impossible);
      default -> true;
    };
  }

  /** Whether the cells alone say that a row matches wherever another does. */
  private static boolean covers(Row wide, Row narrow) {
    for (int i = 0; i < wide.tests().size(); i++) {
      PreparedTest outer = wide.tests().get(i).prepared();
      PreparedTest inner = narrow.tests().get(i).prepared();
      boolean within =
          outer.isAnything()
              || outer.test().equals(inner.test())
              || (outer.region().isPresent()
                  && inner.region().isPresent()
                  && outer.region().get().containsAll(inner.region().get())
                  && (inner.forNothing() == Truth.FALSE || outer.forNothing() == Truth.TRUE));
      if (!within) {
        return false;
      }
    }
    return true;
  }
}
