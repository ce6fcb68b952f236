package org.cotyla.audit;

import java.util.List;

/**
 * A table of a report, for every way of showing it.
 *
 * @param name what it is about, short
 * @param headings one for each column
 * @param rows cells, as many in each row as there are headings
 */
public record AuditTable(String name, List<String> headings, List<List<Cell>> rows) {

  public AuditTable {
    headings = List.copyOf(headings);
    rows = rows.stream().map(List::copyOf).toList();
  }

  /** What stands in a cell. */
  public sealed interface Cell {}

  /** Words; may be empty. */
  public record Words(String text) implements Cell {}

  /** A whole number. */
  public record Number(long number) implements Cell {}

  /** A share, from 0 to 1. */
  public record Share(double share) implements Cell {}
}
