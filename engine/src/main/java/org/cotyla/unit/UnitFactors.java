package org.cotyla.unit;

import java.math.BigDecimal;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Conversions that remember the factors of the units they have met, since working one out costs
 * more than a whole case. Thread-safe. Cases name the units, so it remembers only so many.
 */
public final class UnitFactors {

  private static final int REMEMBERED_AT_MOST = 500;

  /** Two units, from and to. */
  private record Pair(String from, String to) {}

  private final Map<Pair, UnitConversion> conversions = new ConcurrentHashMap<>();

  /** The quantity in the other unit, as {@link Units#convert} gives it. */
  public Optional<BigDecimal> convert(BigDecimal quantity, String from, String to) {
    return conversion(new Pair(from, to)).map(conversion -> conversion.apply(quantity));
  }

  private Optional<UnitConversion> conversion(Pair pair) {
    UnitConversion known = conversions.get(pair);
    if (known != null) {
      return Optional.of(known);
    }
    Optional<UnitConversion> found = Units.conversion(pair.from(), pair.to());
    found
        .filter(conversion -> conversions.size() < REMEMBERED_AT_MOST)
        .ifPresent(conversion -> conversions.put(pair, conversion));
    return found;
  }
}
