package org.cotyla.expression;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import org.cotyla.value.PossibleValues;
import org.cotyla.value.Value;
import org.cotyla.value.ValueSet;
import org.cotyla.value.ValueType;

/**
 * Rounding to a number of places after the point. It rises with the number, but neither rises nor
 * falls with the places (15 is 15, 20 and 0 to 0, -1 and -2 places), so these are taken one by one.
 *
 * @param name the name in plain words
 * @param mode which way
 */
record Rounding(String name, RoundingMode mode) implements FormulaFunction {

  /** More places than a number has digits, either way, are refused as nothing. */
  private static final BigDecimal PLACES_AT_MOST = BigDecimal.valueOf(6000);

  @Override
  public List<ValueType> parameters() {
    return List.of(ValueType.NUMBER, ValueType.NUMBER);
  }

  @Override
  public ValueType result() {
    return ValueType.NUMBER;
  }

  @Override
  public PossibleValues apply(List<PossibleValues> arguments) {
    PossibleValues places = arguments.get(1);
    if (!places.values().isFinite()) {
      return new PossibleValues(ValueSet.all(ValueType.NUMBER), true);
    }
    PossibleValues result = new PossibleValues(ValueSet.none(ValueType.NUMBER), false);
    for (Value place : places.values().values()) {
      result = result.union(toPlaces(RangeArithmetic.number(place), arguments.get(0)));
    }
    return places.orNothing() ? result.union(PossibleValues.nothing(ValueType.NUMBER)) : result;
  }

  private PossibleValues toPlaces(BigDecimal places, PossibleValues number) {
    boolean sensible = places.abs().compareTo(PLACES_AT_MOST) < 0;
    return new NumberFunction(
            name,
            1,
            false,
            numbers ->
                sensible
                    ? Optional.of(round(numbers.get(0), places.intValue(), mode))
                    : Optional.empty())
        .apply(List.of(number));
  }

  /** The number itself when it has no digit to round, so that a huge one is never written out. */
  static BigDecimal round(BigDecimal number, int places, RoundingMode mode) {
    return number.scale() <= places ? number : number.setScale(places, mode);
  }
}
