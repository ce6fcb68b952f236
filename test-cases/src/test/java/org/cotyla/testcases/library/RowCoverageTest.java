package org.cotyla.testcases.library;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.cotyla.evaluate.DecisionResult;
import org.cotyla.evaluate.Engine;
import org.cotyla.evaluate.Recommendation;
import org.cotyla.evaluate.Standing;
import org.cotyla.protocol.Row;
import org.cotyla.testcases.house.House;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("Coverage of the protocol by the case library")
class RowCoverageTest {

  @Test
  @DisplayName("every row of every table counts as certain in at least one case")
  void everyRowCounts() {
    Engine engine = House.engine();
    Set<String> reached = new LinkedHashSet<>();
    CaseLibrary.cases().stream()
        .map(libraryCase -> engine.evaluate(libraryCase.read()))
        .forEach(recommendation -> note(recommendation, reached));
    List<String> all = engine.protocol().allRows().map(RowCoverageTest::name).toList();
    List<String> unreached = all.stream().filter(row -> !reached.contains(row)).toList();
    System.out.println(
        "Rows of the protocol that count as certain in the case library: "
            + (all.size() - unreached.size())
            + " / "
            + all.size());
    assertThat(unreached).as("rows that no case reaches with certainty").isEmpty();
  }

  private static void note(Recommendation recommendation, Set<String> reached) {
    recommendation.firings().stream()
        .filter(firing -> firing.standing() == Standing.DECIDES)
        .forEach(firing -> reached.add(name(firing.row())));
    recommendation.decisions().stream()
        .filter(DecisionResult::byDefault)
        .flatMap(decision -> decision.table().otherwise().stream())
        .forEach(row -> reached.add(name(row)));
  }

  /** The row's id, and its cell, since default rows share theirs. */
  private static String name(Row row) {
    return row.id() + " (" + row.at().plain() + ")";
  }
}
