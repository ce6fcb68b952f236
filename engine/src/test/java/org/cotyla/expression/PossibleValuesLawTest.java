package org.cotyla.expression;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.function.Supplier;
import net.jqwik.api.Assume;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.PropertyDefaults;
import org.cotyla.value.PossibleValues;
import org.cotyla.value.Truth;
import org.cotyla.value.Value;
import org.cotyla.value.ValueSet;
import org.cotyla.value.ValueType;

/** Whatever the open data turn out to be, the result lies inside what was said before. */
@PropertyDefaults(tries = 1500, edgeCases = EdgeCasesMode.NONE)
class PossibleValuesLawTest {

  private static final int SAMPLES = 12;
  private static final List<Symbol> INPUTS =
      List.of(SampleNames.SIZE, SampleNames.ANSWER, SampleNames.GRADE, SampleNames.DAY);

  @Property
  @Label("A formula at single values gives something that it could give over their sets")
  void formulas(@ForAll long seed, @ForAll ValueType type) {
    Random random = new Random(seed);
    Expression formula = new RandomCells(random).formula(type, 4);
    Map<Symbol, PossibleValues> open = randomCase(random);
    PossibleValues before = formula.evaluate(open::get);
    for (int i = 0; i < SAMPLES; i++) {
      Map<Symbol, PossibleValues> filled = filled(open, random);
      PossibleValues after = formula.evaluate(filled::get);
      assertThat(after.isCertain()).as(() -> formula.print() + " at " + filled).isTrue();
      assertThat(before.containsAll(after))
          .as(
              () ->
                  formula.print()
                      + " over "
                      + open
                      + " = "
                      + before
                      + "; "
                      + filled
                      + " = "
                      + after)
          .isTrue();
    }
  }

  @Property
  @Label("A test that is true or false over sets is so at every single value, and never open there")
  void tests(@ForAll long seed, @ForAll boolean constant) {
    Random random = new Random(seed);
    RandomCells cells = new RandomCells(random);
    Symbol input = cells.pick(INPUTS);
    CellTest test = cells.cell(input, 3, constant);
    PreparedTest prepared = prepare(test, input);
    Map<Symbol, PossibleValues> open = randomCase(random);
    Truth before = prepared.truth(open.get(input), open::get);
    for (int i = 0; i < SAMPLES; i++) {
      Map<Symbol, PossibleValues> filled = filled(open, random);
      Truth after = prepared.truth(filled.get(input), filled::get);
      Supplier<String> what =
          () -> input.name() + " " + test.print() + " over " + open + "; " + filled;
      assertThat(after).as(what).isNotEqualTo(Truth.OPEN);
      assertThat(before).as(what).isIn(after, Truth.OPEN);
    }
  }

  @Property
  @Label("A test with a region is exact: open only when some values meet it and some do not")
  void constantTestsAreExact(@ForAll long seed) {
    Random random = new Random(seed);
    RandomCells cells = new RandomCells(random);
    Symbol input = cells.pick(INPUTS);
    CellTest test = cells.cell(input, 2, true);
    PreparedTest prepared = prepare(test, input);
    Assume.that(prepared.region().isPresent());
    PossibleValues given = finite(input, random);
    List<PossibleValues> ways = new ArrayList<>();
    given.values().values().forEach(value -> ways.add(PossibleValues.of(value)));
    if (given.orNothing()) {
      ways.add(PossibleValues.nothing(input.type()));
    }
    long met =
        ways.stream()
            .filter(way -> test.outcome(way, SampleNames.constants()).matches() == Truth.TRUE)
            .count();
    Truth expected = met == ways.size() ? Truth.TRUE : met == 0 ? Truth.FALSE : Truth.OPEN;
    assertThat(prepared.truth(given, SampleNames.constants()))
        .as(input.name() + " " + test.print() + " over " + given)
        .isEqualTo(expected);
  }

  private static PreparedTest prepare(CellTest test, Symbol input) {
    return PreparedTest.of(test, input.type(), SampleNames.constants(), SampleNames.CONSTANTS);
  }

  private static Map<Symbol, PossibleValues> randomCase(Random random) {
    Map<Symbol, PossibleValues> values = new HashMap<>();
    for (Symbol symbol : SampleNames.ALL) {
      boolean range = symbol.type() == ValueType.NUMBER || symbol.type() == ValueType.DATE;
      values.put(
          symbol,
          range && random.nextInt(3) > 0 ? range(symbol.type(), random) : finite(symbol, random));
    }
    values.put(SampleNames.HOUSE_LINE, SampleNames.houseLine());
    return values;
  }

  private static PossibleValues range(ValueType type, Random random) {
    RandomCells cells = new RandomCells(random);
    Value a = cells.literal(type);
    Value b = cells.literal(type);
    Value low = a.compareTo(b) <= 0 ? a : b;
    Value high = a.compareTo(b) <= 0 ? b : a;
    // Between two days next to each other lies no day, so a range of days holds its ends.
    boolean point = a.compareTo(b) == 0 || type == ValueType.DATE;
    ValueSet set =
        ValueSet.between(
            type,
            random.nextInt(8) == 0 ? null : low,
            point || random.nextBoolean(),
            random.nextInt(8) == 0 ? null : high,
            point || random.nextBoolean());
    return new PossibleValues(set, random.nextInt(5) == 0);
  }

  private static PossibleValues finite(Symbol symbol, Random random) {
    RandomCells cells = new RandomCells(random);
    List<Value> values = new ArrayList<>();
    for (int i = random.nextInt(3); i >= 0; i--) {
      values.add(cells.literal(symbol.type()));
    }
    return new PossibleValues(ValueSet.of(symbol.type(), values), random.nextInt(5) == 0);
  }

  private static Map<Symbol, PossibleValues> filled(
      Map<Symbol, PossibleValues> open, Random random) {
    Map<Symbol, PossibleValues> filled = new HashMap<>();
    open.forEach((symbol, values) -> filled.put(symbol, one(values, random)));
    return filled;
  }

  private static PossibleValues one(PossibleValues values, Random random) {
    List<PossibleValues> ways = new ArrayList<>();
    candidates(values.type()).stream()
        .filter(values.values()::contains)
        .forEach(value -> ways.add(PossibleValues.of(value)));
    if (values.orNothing()) {
      ways.add(PossibleValues.nothing(values.type()));
    }
    return ways.get(random.nextInt(ways.size()));
  }

  /** The values that generated cells name, and numbers and days around and between them. */
  private static List<Value> candidates(ValueType type) {
    List<Value> values = new ArrayList<>();
    switch (type) {
      case NUMBER -> {
        for (int half = -80; half <= 80; half++) {
          values.add(Value.of(BigDecimal.valueOf(half * 5L, 2)));
        }
        values.add(Value.of(1000));
        values.add(Value.of(new BigDecimal("-77.7")));
      }
      case DATE -> {
        for (int day = -2; day <= 8; day++) {
          values.add(Value.of(java.time.LocalDate.of(2026, 1, 1).plusDays(day)));
        }
      }
      case YES_NO -> values.addAll(List.of(Value.of(true), Value.of(false)));
      case TEXT -> SampleNames.GRADES.forEach(grade -> values.add(Value.of(grade)));
    }
    return values;
  }
}
