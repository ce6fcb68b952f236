package org.cotyla.explore;

import java.util.List;
import java.util.Optional;
import org.cotyla.finding.Datum;
import org.cotyla.value.Value;

/**
 * A finding that would have to be another.
 *
 * @param before what is known of it
 * @param to a value at which it does; for a number the nearest one, or where that does not exist,
 *     one step of decimals beyond the line
 * @param line the line that a number has to cross, when it has to lie beyond and not on it
 * @param provenNearest whether it is proven that no value nearer to what is known does it; false
 *     also where the search met its limit, and for data that are open, of which none is nearer
 * @param others other values of a choice that do it too, with all else as it is
 */
public record Move(
    Datum before, Value to, Optional<Value> line, boolean provenNearest, List<Value> others) {

  public Move {
    others = List.copyOf(others);
  }
}
