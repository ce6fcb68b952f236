package org.cotyla.compare;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.cotyla.finite.Claim;
import org.cotyla.protocol.DecisionTable;
import org.cotyla.protocol.Row;

/** The order in which the entries of a list come, by the order of its rows. */
final class ListOrder {

  private final DecisionTable table;
  private final int side;
  private final Map<String, List<Row>> rows = new LinkedHashMap<>();

  ListOrder(DecisionTable table, Side side) {
    this.table = table;
    this.side = side.number();
    for (Row row : table.rows()) {
      rows.computeIfAbsent(new Entry(table, row, side).words(), same -> new ArrayList<>()).add(row);
    }
  }

  List<String> entries() {
    return List.copyOf(rows.keySet());
  }

  private List<Row> of(String entry) {
    return rows.getOrDefault(entry, List.of());
  }

  boolean startsBefore(String one, String other) {
    return of(one).get(0).position() < of(other).get(0).position();
  }

  /** Whether rows of the one stand on both sides of a row of the other. */
  boolean mayTurn(String one, String other) {
    int firstOfOne = of(one).get(0).position();
    int lastOfOne = of(one).get(of(one).size() - 1).position();
    int firstOfOther = of(other).get(0).position();
    int lastOfOther = of(other).get(of(other).size() - 1).position();
    return firstOfOne < lastOfOther && firstOfOther < lastOfOne;
  }

  Claim both(String one, String other) {
    return new Claim.All(List.of(counts(of(one)), counts(of(other))));
  }

  /** The first row of the one that counts stands before every row of the other that does. */
  Claim precedes(String one, String other) {
    List<Claim> ways = new ArrayList<>();
    for (Row row : of(one)) {
      List<Row> earlier =
          of(other).stream().filter(rival -> rival.position() < row.position()).toList();
      ways.add(new Claim.All(List.of(counts(List.of(row)), new Claim.Not(counts(earlier)))));
    }
    return new Claim.Any(ways);
  }

  private Claim counts(List<Row> some) {
    return new Claim.Of(
        side,
        new Claim.Any(some.stream().map(row -> (Claim) new Claim.Counts(table, row)).toList()));
  }
}
