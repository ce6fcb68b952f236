package org.cotyla.finite;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.cotyla.value.Interval;
import org.cotyla.value.Value;
import org.cotyla.value.ValueSet;
import org.cotyla.value.ValueType;
import org.jspecify.annotations.Nullable;

/** Picks single values out of sets, with as few decimals as will do. */
public final class Representative {

  private static final BigDecimal FAR = BigDecimal.valueOf(1_000_000);
  private static final int DECIMALS_AT_MOST = 12;
  private static final List<String> WORDS = List.of("other", "a", "m", "z", "", "zzzz");

  private Representative() {}

  /** A value of the set, near its middle. */
  public static Value of(ValueSet values) {
    return at(values, 0.5);
  }

  /** A value of the set, at random near an end or anywhere in it. */
  public static Value sample(ValueSet values, SplittableRandom random) {
    double where =
        switch (random.nextInt(5)) {
          case 0 -> 0.0;
          case 1 -> 1.0;
          case 2 -> 0.05;
          case 3 -> 0.95;
          default -> random.nextDouble();
        };
    return at(values, where);
  }

  private static Value at(ValueSet values, double where) {
    Optional<Value> single = values.single();
    if (single.isPresent()) {
      return single.get();
    }
    if (values.isFinite()) {
      List<Value> all = values.values();
      return all.get((int) Math.round(where * (all.size() - 1)));
    }
    // Each part is as likely as any other, so that what lies between two of them is never taken.
    List<Interval> parts = values.parts();
    int place = Math.min((int) (where * parts.size()), parts.size() - 1);
    double within = where * parts.size() - place;
    // A stretch between two texts or days can hold none, and then another one is taken.
    return IntStream.range(0, parts.size())
        .mapToObj(i -> parts.get((place + i) % parts.size()))
        .map(part -> within(part, values.type(), within))
        .filter(values::contains)
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("no value of " + values + " is known"));
  }

  private static Value within(Interval part, ValueType type, double where) {
    return switch (type) {
      case NUMBER -> number(part, where);
      case DATE -> day(part, where);
      case TEXT, YES_NO -> text(part);
    };
  }

  /** A usual word, or the part's own lower end continued: a text that comes right after it. */
  private static Value text(Interval part) {
    return WORDS.stream()
        .map(Value::of)
        .filter(part::contains)
        .findFirst()
        .orElseGet(
            () ->
                part.low() instanceof Value.TextValue low && !part.lowIncluded()
                    ? Value.of(low.text() + " ")
                    : Optional.ofNullable(part.low()).orElse(Value.of("")));
  }

  private static Value number(Interval part, double where) {
    BigDecimal low = end(part.low(), end(part.high(), FAR).subtract(FAR).min(FAR.negate()));
    BigDecimal high = end(part.high(), low.add(FAR).max(FAR));
    BigDecimal width = high.subtract(low);
    BigDecimal exact = low.add(width.multiply(BigDecimal.valueOf(where)));
    for (int decimals = 0; decimals <= DECIMALS_AT_MOST; decimals++) {
      for (RoundingMode mode :
          List.of(RoundingMode.HALF_EVEN, RoundingMode.UP, RoundingMode.DOWN)) {
        Value rounded = Value.of(exact.setScale(decimals, mode));
        boolean near =
            exact
                    .subtract(exact.setScale(decimals, mode))
                    .abs()
                    .multiply(BigDecimal.valueOf(10))
                    .compareTo(width)
                <= 0;
        if (near && part.contains(rounded)) {
          return rounded;
        }
      }
    }
    Value middle = Value.of(low.add(width.divide(BigDecimal.valueOf(2))));
    return part.contains(middle) ? middle : Value.of(low);
  }

  private static BigDecimal end(@Nullable Value end, BigDecimal otherwise) {
    return end instanceof Value.NumberValue number ? number.number() : otherwise;
  }

  private static Value day(Interval part, double where) {
    LocalDate low = part.low() instanceof Value.DateValue day ? day.date() : null;
    LocalDate high = part.high() instanceof Value.DateValue day ? day.date() : null;
    LocalDate from = low != null ? low : high != null ? high.minusYears(1) : LocalDate.EPOCH;
    LocalDate to = high != null ? high : from.plusYears(1);
    long days = Math.round(where * (to.toEpochDay() - from.toEpochDay()));
    for (long shift : new long[] {0, 1, -1}) {
      Value day = Value.of(from.plusDays(days + shift));
      if (part.contains(day)) {
        return day;
      }
    }
    return Value.of(from);
  }
}
