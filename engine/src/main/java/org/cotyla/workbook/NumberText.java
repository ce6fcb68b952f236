package org.cotyla.workbook;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.Optional;
import org.apache.poi.ss.usermodel.DateUtil;

/** A stored number as the text that its author would write. */
final class NumberText {

  /** All digits that a spreadsheet program shows. */
  private static final int SHOWN_DIGITS = 15;

  private static final int ALL_DIGITS = 17;

  /** The day after 9999-12-31, the last that spreadsheet programs know. */
  private static final double END_OF_DATES = 2_958_466;

  private NumberText() {}

  /**
   * The number rounded to as few digits, at least 15, as are stored as this same number; never in
   * powers of ten. Not {@code Double.toString}, whose digits differ between Java releases.
   */
  static String exact(double number) {
    BigDecimal all = new BigDecimal(number);
    for (int digits = SHOWN_DIGITS; digits < ALL_DIGITS; digits++) {
      BigDecimal rounded = all.round(new MathContext(digits, RoundingMode.HALF_EVEN));
      if (rounded.doubleValue() == number) {
        return plain(rounded);
      }
    }
    return plain(all.round(new MathContext(ALL_DIGITS, RoundingMode.HALF_EVEN)));
  }

  /** As many digits as its author sees at most: a formula's 0.1 + 0.2 is 0.3. */
  static String shown(double number) {
    return plain(
        new BigDecimal(number).round(new MathContext(SHOWN_DIGITS, RoundingMode.HALF_EVEN)));
  }

  private static String plain(BigDecimal number) {
    return number.signum() == 0 ? "0" : number.stripTrailingZeros().toPlainString();
  }

  /** The date, time or both in ISO form; nothing when the number is no date. */
  static Optional<String> date(double number, boolean from1904) {
    if (!(number >= 0 && number < END_OF_DATES)) {
      return Optional.empty();
    }
    LocalDateTime moment = DateUtil.getLocalDateTime(number, from1904, true);
    if (moment == null) {
      return Optional.empty();
    }
    if (number < 1) {
      return Optional.of(moment.toLocalTime().toString());
    }
    return Optional.of(iso(moment));
  }

  static String iso(LocalDateTime moment) {
    return moment.toLocalTime().equals(LocalTime.MIDNIGHT)
        ? moment.toLocalDate().toString()
        : moment.toString();
  }
}
