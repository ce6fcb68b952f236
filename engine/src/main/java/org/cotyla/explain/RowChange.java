package org.cotyla.explain;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.cotyla.evaluate.DecisionResult;
import org.cotyla.evaluate.Firing;
import org.cotyla.evaluate.Standing;
import org.cotyla.protocol.Row;
import org.cotyla.value.PossibleValues;

/**
 * A row whose part in a result differs between two answers.
 *
 * @param row the row
 * @param before its part in the one answer, if it counts there
 * @param after its part in the other
 */
public record RowChange(Row row, Optional<Part> before, Optional<Part> after) {

  /**
   * What a row adds to a result.
   *
   * @param standing whether it decides or may
   * @param results what its output columns give; empty for a default row
   */
  public record Part(Standing standing, List<PossibleValues> results) {
    public Part {
      results = List.copyOf(results);
    }

    public boolean isCertain() {
      return standing == Standing.DECIDES;
    }
  }

  /** How the two differ. */
  public enum Kind {
    /** It counts now, for certain, and did not. */
    ADDED("added"),
    /** It does not count any more, and did for certain. */
    REMOVED("removed"),
    /** It counts in both, with other results. */
    OTHER_RESULT("other result"),
    /** It was open whether it counts, and is certain now. */
    SETTLED("settled"),
    /** It may count now, which was certain before or out of the question. */
    OPENED("opened"),
    /** It may have counted before and is out of the question now. */
    EXCLUDED("excluded");

    private final String word;

    Kind(String word) {
      this.word = word;
    }

    public String word() {
      return word;
    }
  }

  public Kind kind() {
    if (after.isEmpty()) {
      return isCertain(before) ? Kind.REMOVED : Kind.EXCLUDED;
    }
    if (!isCertain(after) && !(before.isPresent() && !isCertain(before))) {
      return Kind.OPENED;
    }
    if (before.isEmpty()) {
      return Kind.ADDED;
    }
    return isCertain(after) && !isCertain(before) ? Kind.SETTLED : Kind.OTHER_RESULT;
  }

  private static boolean isCertain(Optional<Part> part) {
    return part.filter(Part::isCertain).isPresent();
  }

  /**
   * The rows of a decision that count otherwise: those of the second result first, in its order.
   */
  static List<RowChange> between(DecisionResult before, DecisionResult after) {
    return between(parts(before), parts(after));
  }

  /** The rows that count otherwise among firings: those of the second first, in their order. */
  static List<RowChange> between(List<Firing> before, List<Firing> after) {
    return between(parts(before), parts(after));
  }

  private static List<RowChange> between(
      Map<String, Counting> before, Map<String, Counting> after) {
    Map<String, Counting> all = new LinkedHashMap<>(after);
    before.forEach(all::putIfAbsent);
    List<RowChange> changes = new ArrayList<>();
    all.forEach(
        (id, counting) -> {
          Optional<Part> was = Optional.ofNullable(before.get(id)).map(Counting::part);
          Optional<Part> is = Optional.ofNullable(after.get(id)).map(Counting::part);
          if (!was.equals(is)) {
            changes.add(new RowChange(counting.row(), was, is));
          }
        });
    return changes;
  }

  private static Map<String, Counting> parts(DecisionResult result) {
    Map<String, Counting> parts = parts(result.counting());
    if (result.mayBeByDefault()) {
      Standing standing = result.byDefault() ? Standing.DECIDES : Standing.MAY_DECIDE;
      Part part = new Part(standing, result.defaultResults());
      result.table().otherwise().ifPresent(row -> parts.put(row.id(), new Counting(row, part)));
    }
    return parts;
  }

  private static Map<String, Counting> parts(List<Firing> firings) {
    Map<String, Counting> parts = new LinkedHashMap<>();
    for (Firing firing : firings) {
      if (firing.counts()) {
        Part part = new Part(firing.standing(), firing.results());
        parts.put(firing.row().id(), new Counting(firing.row(), part));
      }
    }
    return parts;
  }

  private record Counting(Row row, Part part) {}
}
