package org.cotyla.value;

import java.util.Optional;

/**
 * What a datum can be, as far as is known: one value when it is certain, a set or range when it is
 * not, and whether it may be nothing at all.
 *
 * <p>Nothing is the standard's null: a decision in which no row matched, or a field that belongs to
 * a later stage. A datum that was merely not recorded is not nothing: it has some value, and all
 * allowed values are possible.
 *
 * @param values the values it can have
 * @param orNothing whether it can be nothing instead
 */
public record PossibleValues(ValueSet values, boolean orNothing) {

  public static PossibleValues of(Value value) {
    return new PossibleValues(ValueSet.of(value), false);
  }

  public static PossibleValues of(ValueSet values) {
    return new PossibleValues(values, false);
  }

  public static PossibleValues nothing(ValueType type) {
    return new PossibleValues(ValueSet.none(type), true);
  }

  public ValueType type() {
    return values.type();
  }

  /** Whether exactly one thing is possible: one value, or nothing. */
  public boolean isCertain() {
    return orNothing ? values.isEmpty() : values.single().isPresent();
  }

  public boolean isNothing() {
    return orNothing && values.isEmpty();
  }

  /** The value, when exactly one is possible and it cannot be nothing. */
  public Optional<Value> single() {
    return orNothing ? Optional.empty() : values.single();
  }

  public PossibleValues union(PossibleValues other) {
    if (equals(other)) {
      return this;
    }
    return new PossibleValues(values.union(other.values), orNothing || other.orNothing);
  }

  /** Whether everything that the other can be is possible here too. */
  public boolean containsAll(PossibleValues other) {
    return (orNothing || !other.orNothing) && values.containsAll(other.values);
  }

  /**
   * As people read it: {@code 34}, {@code 2A, 2B}, {@code [0..200] or nothing}, {@code nothing}.
   */
  public String plain() {
    if (values.isEmpty()) {
      return "nothing";
    }
    return orNothing ? values.plain() + " or nothing" : values.plain();
  }

  @Override
  public String toString() {
    return plain();
  }
}
