package org.cotyla.protocol;

import java.util.List;
import java.util.Optional;
import org.cotyla.issue.CellRef;

/**
 * A case that a protocol's author wrote beside it, with the answer that it should get.
 *
 * @param name what it is called, unique in the sheet
 * @param stage its stage, when one is stated; otherwise the protocol's first
 * @param stageAt the cell of its stage
 * @param given the data that it states
 * @param expected what its answer should be
 * @param because why this answer is right; may be empty
 * @param at the cell of its name
 */
public record TestCase(
    String name,
    Optional<String> stage,
    CellRef stageAt,
    List<Stated> given,
    List<Expected> expected,
    String because,
    CellRef at) {

  /** A datum as it is written, still to be read against its field. */
  public record Stated(Field field, String text, CellRef at) {}

  /**
   * One thing that the answer should be.
   *
   * @param about a derived field, a calculation, {@code first <ranking>}, a decision that gives a
   *     list, or a word of {@link ExpectWord}
   * @param values the values, options, rows or fields, spelt as the protocol spells them
   */
  public record Expected(String about, List<String> values, CellRef at) {
    public Expected {
      values = List.copyOf(values);
    }
  }

  public TestCase {
    given = List.copyOf(given);
    expected = List.copyOf(expected);
  }
}
