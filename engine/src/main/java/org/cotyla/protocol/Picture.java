package org.cotyla.protocol;

import java.util.List;
import java.util.Optional;
import org.cotyla.expression.Expression;
import org.cotyla.issue.CellRef;

/**
 * What a report draws, beside what it says of every protocol. It shows what was decided and decides
 * nothing.
 *
 * @param title what people read above it
 * @param onFirstPage whether it stands with the advice, before the detail
 * @param parts in the order of the workbook
 * @param at the cell of its title
 */
public record Picture(
    String title, PictureKind kind, boolean onFirstPage, List<Part> parts, CellRef at) {

  /**
   * One part.
   *
   * @param role what it is for the picture
   * @param label what people read beside it; may be empty
   * @param shows where it comes from
   * @param at the cell of what it shows
   */
  public record Part(PictureRole role, String label, Shown shows, CellRef at) {}

  /** Where a part comes from. */
  public sealed interface Shown {

    /** A value that is worked out. */
    record Worked(Expression expression) implements Shown {}

    /** A finding by itself. */
    record Finding(Field field) implements Shown {}

    /** The list that a decision gives. */
    record Listed(DecisionTable decision) implements Shown {}
  }

  public Picture {
    parts = List.copyOf(parts);
  }

  public List<Part> parts(PictureRole role) {
    return parts.stream().filter(part -> part.role() == role).toList();
  }

  public Optional<Part> part(PictureRole role) {
    return parts(role).stream().findFirst();
  }
}
