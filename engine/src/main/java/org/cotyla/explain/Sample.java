package org.cotyla.explain;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.stream.Stream;
import org.cotyla.value.Interval;
import org.cotyla.value.Value;
import org.cotyla.value.Value.DateValue;
import org.cotyla.value.Value.NumberValue;
import org.cotyla.value.Value.TextValue;
import org.cotyla.value.ValueSet;
import org.cotyla.value.ValueType;
import org.jspecify.annotations.Nullable;

/** A value that stands for others. */
final class Sample {

  private Sample() {}

  /** One of the values: an end of the first stretch when it belongs to it, else one inside. */
  static Optional<Value> of(ValueSet values) {
    return values.parts().stream()
        .flatMap(part -> candidates(values.type(), part))
        .filter(values::contains)
        .findFirst();
  }

  private static Stream<Value> candidates(ValueType type, Interval part) {
    Stream<Value> ends =
        Stream.of(Optional.ofNullable(part.low()), Optional.ofNullable(part.high()))
            .flatMap(Optional::stream);
    return Stream.concat(ends, inside(type, part.low(), part.high()).stream());
  }

  private static Optional<Value> inside(ValueType type, @Nullable Value low, @Nullable Value high) {
    return switch (type) {
      case NUMBER -> Optional.of(Value.of(number(low, high)));
      case DATE ->
          low instanceof DateValue from
              ? Optional.of(Value.of(from.date().plusDays(1)))
              : high instanceof DateValue to
                  ? Optional.of(Value.of(to.date().minusDays(1)))
                  : Optional.empty();
      case TEXT -> Optional.of(Value.of(low instanceof TextValue text ? text.text() + " " : ""));
      case YES_NO -> Optional.empty();
    };
  }

  private static BigDecimal number(@Nullable Value low, @Nullable Value high) {
    if (low instanceof NumberValue from) {
      return high instanceof NumberValue to
          ? from.number().add(to.number()).divide(BigDecimal.valueOf(2), Value.ARITHMETIC)
          : from.number().add(BigDecimal.ONE);
    }
    return high instanceof NumberValue to ? to.number().subtract(BigDecimal.ONE) : BigDecimal.ZERO;
  }
}
