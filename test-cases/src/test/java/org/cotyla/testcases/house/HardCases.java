package org.cotyla.testcases.house;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.cotyla.expression.Symbol;
import org.cotyla.protocol.Field;
import org.cotyla.value.Interval;
import org.cotyla.value.Value;
import org.cotyla.value.Value.NumberValue;
import org.cotyla.value.Value.TextValue;
import org.cotyla.value.ValueType;

/**
 * Complete invented cases in which every finding is drawn by itself, so that rare things meet each
 * other far more often than in any clinic. A statement that holds for all cases is tried on these.
 */
public final class HardCases {

  private static final int SEED = 71;

  /** Yes is the usual answer to these, and no to all others. */
  private static final List<String> USUALLY_YES =
      List.of(
          "porous metal to hand",
          "bone bank",
          "custom device obtainable",
          "ct scan",
          "kept shell usable",
          "defect contained",
          "blood products accepted",
          "date can move");

  private HardCases() {}

  /** So many cases, the same ones each time. */
  public static Stream<OrdinaryCase> cases(int count) {
    return LongStream.range(SEED, SEED + count).mapToObj(HardCases::drawn);
  }

  /** The case of a seed; two in five are in theatre. */
  public static OrdinaryCase drawn(long seed) {
    Draw draw = new Draw(seed);
    OrdinaryCase start = OrdinaryCase.planned();
    OrdinaryCase ordinary = draw.percent(40) ? start.inTheatre() : start;
    Map<String, Object> drawn = new HashMap<>();
    for (Field field : House.engine().protocol().givenFields()) {
      boolean isAsked = field.stage() == 0 || ordinary.isInTheatre();
      if (isAsked && (ordinary.get(field.name()) == null || draw.percent(50))) {
        drawn.put(field.name(), value(field, draw));
      }
    }
    if (draw.percent(80)) {
      drawn.putAll(withoutInfection());
    }
    return ordinary.with(drawn);
  }

  /** Markers that leave the hip not infected before the operation. */
  private static Map<String, Object> withoutInfection() {
    return Map.of(
        "sinus tract",
        false,
        "crp",
        4,
        "esr",
        12,
        "culture results",
        "no growth",
        "d dimer measured",
        false,
        "synovial white cells",
        500,
        "synovial neutrophils",
        30,
        "alpha defensin",
        "negative",
        "leukocyte esterase",
        "negative");
  }

  /** Any value that the field may have; a number inside what is usually met. */
  public static Object value(Field field, Draw draw) {
    Symbol symbol = field.symbol();
    if (symbol.type() == ValueType.YES_NO) {
      return draw.percent(USUALLY_YES.contains(field.name()) ? 70 : 15);
    }
    if (symbol.isChoice()) {
      List<Value> choices = field.allowed().values();
      return ((TextValue) draw.oneOf(choices)).text();
    }
    Interval usual = field.usual().orElse(field.allowed()).hull();
    return draw.between(end(usual.low()), end(usual.high()));
  }

  private static int end(Value end) {
    return ((NumberValue) end).number().intValue();
  }
}
