package org.cotyla.rules.geometry;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.cotyla.expression.RangedArgument;
import org.cotyla.expression.RangedFunction;
import org.cotyla.value.Interval;
import org.cotyla.value.PossibleValues;
import org.cotyla.value.Value;
import org.cotyla.value.Value.NumberValue;
import org.cotyla.value.ValueSet;
import org.cotyla.value.ValueType;

@Label("Laws of geometry over measurements that are not yet known")
class RangeLawTest {

  private static final int FILLED_IN = 20;

  @Provide
  Arbitrary<RangedFunction> functions() {
    return Arbitraries.of(Geometry.functions().stream().map(RangedFunction.class::cast).toList());
  }

  @Property(tries = 3000)
  @Label("However the unknown is filled in, the result was among the possible ones")
  void everyFillingIsHeld(@ForAll("functions") RangedFunction function, @ForAll Random random) {
    List<PossibleValues> open =
        function.arguments().stream().map(argument -> anything(argument, random)).toList();
    PossibleValues possible = function.apply(open);
    for (int i = 0; i < FILLED_IN; i++) {
      List<PossibleValues> filled = open.stream().map(values -> one(values, random)).toList();
      PossibleValues result = function.apply(filled);
      assertThat(possible.containsAll(result))
          .as("%s%s gives %s, not in %s of %s", function.name(), filled, result, possible, open)
          .isTrue();
    }
  }

  @Property(tries = 1000)
  @Label("Knowing more never makes anything possible that was not")
  void knowingMoreNarrows(@ForAll("functions") RangedFunction function, @ForAll Random random) {
    List<PossibleValues> open =
        function.arguments().stream().map(argument -> anything(argument, random)).toList();
    List<PossibleValues> closer = new ArrayList<>(open);
    int place = random.nextInt(open.size());
    closer.set(place, one(open.get(place), random));
    assertThat(function.apply(open).containsAll(function.apply(closer))).isTrue();
  }

  /** A point, a few points or a stretch, mostly where the argument makes sense. */
  private static PossibleValues anything(RangedArgument argument, Random random) {
    Value first = near(argument, random);
    Value second = near(argument, random);
    ValueSet set =
        switch (random.nextInt(4)) {
          case 0 -> ValueSet.of(first);
          case 1 -> ValueSet.of(ValueType.NUMBER, List.of(first, second));
          default -> {
            boolean ordered = first.compareTo(second) <= 0;
            Value low = ordered ? first : second;
            Value high = ordered ? second : first;
            yield ValueSet.between(ValueType.NUMBER, low, true, high, true);
          }
        };
    return new PossibleValues(set, random.nextInt(10) == 0);
  }

  private static Value near(RangedArgument argument, Random random) {
    double low = asDouble(argument.allowed().low());
    double high = asDouble(argument.allowed().high());
    double beyond = random.nextInt(6) == 0 ? (high - low) / 5 : 0;
    double within = random.nextBoolean() ? 1 : 0.2;
    double middle = random.nextInt(4) == 0 ? 0 : (low + high) / 2 * within;
    double half = ((high - low) / 2 + beyond) * within;
    return number(middle + (2 * random.nextDouble() - 1) * half);
  }

  private static PossibleValues one(PossibleValues values, Random random) {
    if (values.isNothing() || (values.orNothing() && random.nextInt(5) == 0)) {
      return PossibleValues.nothing(ValueType.NUMBER);
    }
    List<Interval> parts = values.values().parts();
    Interval part = parts.get(random.nextInt(parts.size()));
    double low = asDouble(part.low());
    double high = asDouble(part.high());
    double share = random.nextInt(6) == 0 ? random.nextInt(2) : random.nextDouble();
    return PossibleValues.of(part.isPoint() ? part.low() : number(low + share * (high - low)));
  }

  private static Value number(double number) {
    return Value.of(BigDecimal.valueOf(number).setScale(9, RoundingMode.HALF_EVEN));
  }

  private static double asDouble(Value value) {
    return ((NumberValue) value).number().doubleValue();
  }
}
