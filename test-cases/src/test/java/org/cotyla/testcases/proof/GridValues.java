package org.cotyla.testcases.proof;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.cotyla.protocol.Field;
import org.cotyla.value.Value;

/**
 * The values of a field that the cells of generated protocols can tell apart: every threshold that
 * they are written with, and one value between any two neighbours and beside the last.
 */
final class GridValues {

  private GridValues() {}

  static List<Value> of(Field field) {
    Stream<Value> values =
        switch (field.symbol().type()) {
          case NUMBER ->
              IntStream.rangeClosed(0, 12)
                  .mapToObj(half -> Value.of(BigDecimal.valueOf(half * 5L, 1)));
          case YES_NO -> Stream.of(Value.of(false), Value.of(true));
          case DATE -> IntStream.rangeClosed(1, 6).mapToObj(GridValues::january);
          case TEXT ->
              field.symbol().isChoice()
                  ? field.symbol().choices().stream().map(Value::of)
                  : Stream.of("a", "alpha", "b", "beta gamma", "other").map(Value::of);
        };
    return values.filter(field.allowed()::contains).toList();
  }

  private static Value january(int day) {
    return Value.of(LocalDate.of(2026, 1, day));
  }
}
