package org.cotyla.explain;

import org.cotyla.finding.Datum;
import org.cotyla.protocol.Field;
import org.cotyla.value.ValueSet;

/**
 * One finding that would have to be otherwise for a ruling no longer to hold; tried on the case.
 *
 * @param now the finding as it is
 * @param values the values with which the row does not rule the option out
 * @param isWhole whether these are all such values; otherwise some that were tried
 * @param frees whether no row at all rules the option out, or may, with these values; otherwise
 *     another does
 */
public record Lift(Datum now, ValueSet values, boolean isWhole, boolean frees) {

  public Field field() {
    return now.field();
  }
}
