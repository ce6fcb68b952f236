package org.cotyla.unit;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Pattern;
import org.fhir.ucum.Decimal;
import org.fhir.ucum.UcumEssenceService;
import org.fhir.ucum.UcumException;
import org.fhir.ucum.UcumModel;
import org.fhir.ucum.UcumService;

/**
 * Units by their codes in the Unified Code for Units of Measure (UCUM), case-sensitive form.
 * Thread-safe.
 */
public final class Units {

  /** One with 33 zeros: the library rounds to the digits that it is given. */
  private static final String ONE = "1." + "0".repeat(33);

  /** No unit that people write is longer; a longer text is not looked at. */
  private static final int LENGTH_AT_MOST = 40;

  /** An exponent above two digits, which would keep the library multiplying for minutes. */
  private static final Pattern HUGE_EXPONENT = Pattern.compile("[*^+\\-\\p{Alpha}\\]'\"]\\d{3,}");

  private Units() {}

  /** Whether the code is a unit of UCUM. */
  public static boolean isKnown(String code) {
    boolean sensible =
        !code.isEmpty() && code.length() <= LENGTH_AT_MOST && !HUGE_EXPONENT.matcher(code).find();
    return sensible && Ucum.isKnown(code);
  }

  /**
   * The quantity in the other unit, or nothing when one unit is unknown or the two do not fit. Only
   * units that differ by a factor are converted, so not degrees Celsius and kelvin.
   */
  public static Optional<BigDecimal> convert(BigDecimal quantity, String from, String to) {
    return conversion(from, to).map(conversion -> conversion.apply(quantity));
  }

  static Optional<UnitConversion> conversion(String from, String to) {
    if (from.equals(to)) {
      return Optional.of(new UnitConversion(BigDecimal.ONE, false));
    }
    if (!isKnown(from) || !isKnown(to)) {
      return Optional.empty();
    }
    return Ucum.factor(from, to)
        .flatMap(there -> Ucum.factor(to, from).map(back -> UnitConversion.shorter(there, back)));
  }

  /** The definitions of UCUM; only read. */
  static UcumModel model() {
    return Ucum.SERVICE.getModel();
  }

  /** The library's service, loaded when the first unit is asked for. */
  private static final class Ucum {
    private static final UcumService SERVICE = load();

    static boolean isKnown(String code) {
      synchronized (SERVICE) {
        return SERVICE.validate(code) == null;
      }
    }

    static Optional<BigDecimal> factor(String from, String to) {
      synchronized (SERVICE) {
        try {
          if (!SERVICE.isComparable(from, to)) {
            return Optional.empty();
          }
          Decimal one = SERVICE.convert(new Decimal(ONE), from, to);
          return Optional.of(new BigDecimal(one.asDecimal()));
        } catch (UcumException doesNotConvert) {
          return Optional.empty();
        }
      }
    }

    private static UcumService load() {
      try (InputStream definitions = UcumService.class.getResourceAsStream("/ucum-essence.xml")) {
        return new UcumEssenceService(definitions);
      } catch (UcumException | IOException damaged) {
        throw new UncheckedIOException(
            new IOException("the unit definitions of UCUM cannot be read", damaged));
      }
    }
  }
}
