package org.cotyla.protocol;

import java.util.List;
import java.util.Optional;
import org.cotyla.issue.CellRef;

/**
 * A case that a protocol's author wrote beside it, with the answer that it should get.
 *
 * @param name what it is called, unique in the sheet
 * @param stage its stage, when one is stated; otherwise the protocol's first
 * @param given the data that it states
 * @param expected what its answer should be
 * @param because why this answer is right; may be empty
 * @param at the cell of its name
 */
public record TestCase(
    String name,
    Optional<String> stage,
    List<Datum> given,
    List<Expected> expected,
    String because,
    CellRef at) {

  /** A datum as it is written, still to be read against its field. */
  public record Datum(Field field, String text, CellRef at) {}

  /** One thing that the answer should be, as it is written. */
  public record Expected(Subject subject, String text, CellRef at) {}

  /** What an expectation is about. */
  public sealed interface Subject {
    /** What a decision gives or a calculation works out. */
    record Named(org.cotyla.expression.Symbol symbol) implements Subject {}

    /** The option that comes first of a ranking, certain or not. */
    record First(String ranking) implements Subject {}

    /** Options that must be ruled out of a ranking. */
    record RuledOut(String ranking) implements Subject {}

    /** Rows that must fire. */
    record Rows() implements Subject {}

    /** Rows that must not fire. */
    record NoRows() implements Subject {}
  }

  public TestCase {
    given = List.copyOf(given);
    expected = List.copyOf(expected);
  }
}
