package org.cotyla.finding;

import org.cotyla.protocol.Field;
import org.cotyla.value.PossibleValues;

/**
 * A given field and what is known of it.
 *
 * @param field the field
 * @param knowledge how much the case says of it
 * @param value what it can be, in the field's unit
 */
public record Datum(Field field, Knowledge knowledge, PossibleValues value) {

  /** How much a case says of a field. */
  public enum Knowledge {
    /** One value is stated. */
    RECORDED,
    /** A range or some alternatives are stated. */
    PARTLY,
    /** Nothing is stated: every allowed value is possible. */
    MISSING,
    /** It belongs to a later stage than the case's: there is nothing yet. */
    NOT_YET
  }
}
