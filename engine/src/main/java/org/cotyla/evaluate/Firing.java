package org.cotyla.evaluate;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.cotyla.issue.CellRef;
import org.cotyla.protocol.DecisionTable;
import org.cotyla.protocol.Row;
import org.cotyla.value.PossibleValues;
import org.cotyla.value.Truth;

/**
 * A row that matched or may match, with what it saw and what became of it. Immutable.
 *
 * @param table its decision
 * @param row the row
 * @param certain whether all its tests hold whatever the open data are
 * @param standing what became of it
 * @param seen what each input column's name could be
 * @param truths whether each test holds
 * @param results what each output column gives
 */
public record Firing(
    DecisionTable table,
    Row row,
    boolean certain,
    Standing standing,
    List<PossibleValues> seen,
    List<Truth> truths,
    List<PossibleValues> results) {

  /** One test and the value that met it. */
  public record TestSeen(
      String input, String test, CellRef at, PossibleValues value, Truth truth) {}

  public Firing {
    seen = List.copyOf(seen);
    truths = List.copyOf(truths);
    results = List.copyOf(results);
  }

  /** The tests that say something, with the values that met them, in the order of the sheet. */
  public List<TestSeen> tests() {
    List<TestSeen> tests = new ArrayList<>();
    for (int i = 0; i < row.tests().size(); i++) {
      Row.Test test = row.tests().get(i);
      if (!test.prepared().isAnything()) {
        String input = table.inputs().get(i).symbol().name();
        tests.add(new TestSeen(input, test.text(), test.at(), seen.get(i), truths.get(i)));
      }
    }
    return tests;
  }

  Firing standing(Standing newStanding) {
    return standing == newStanding
        ? this
        : new Firing(table, row, certain, newStanding, seen, truths, results);
  }

  /** Whether the row gives something else than another of its table, whatever the open data are. */
  public boolean differsFrom(Firing other) {
    return !row.vote().equals(other.row().vote())
        || IntStream.range(0, results.size())
            .anyMatch(output -> isOther(results.get(output), other.results().get(output)));
  }

  private static boolean isOther(PossibleValues one, PossibleValues other) {
    return !(one.orNothing() && other.orNothing()) && !one.values().intersects(other.values());
  }

  /** Whether the row is part of the result, or may be. */
  public boolean counts() {
    return standing != Standing.SET_ASIDE;
  }
}
