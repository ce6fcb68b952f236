package org.cotyla.explain;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.cotyla.expression.Symbol;
import org.cotyla.protocol.Calculation;
import org.cotyla.protocol.DecisionTable;
import org.cotyla.protocol.Field;
import org.cotyla.protocol.Protocol;
import org.cotyla.protocol.Row;
import org.cotyla.protocol.Row.Test;
import org.cotyla.value.Interval;
import org.cotyla.value.Value;
import org.cotyla.value.Value.NumberValue;
import org.cotyla.value.ValueSet;
import org.cotyla.value.ValueType;
import org.jspecify.annotations.Nullable;

/**
 * The allowed values of a field, parted where some test of the protocol draws a line.
 *
 * @param parts the parts, in ascending order; together they are all that is allowed
 * @param isWhole whether no test can tell two values of one part apart, since the field is only
 *     ever tested against constants and is part of no formula
 */
record FieldClasses(List<ValueSet> parts, boolean isWhole) {

  /** Where a formula blurs the lines, this many values in between are tried as well. */
  private static final int STEPS = 12;

  FieldClasses {
    parts = List.copyOf(parts);
  }

  static FieldClasses of(Protocol protocol, Field field) {
    Symbol symbol = field.symbol();
    List<Optional<ValueSet>> regions = tests(protocol, symbol);
    boolean whole =
        regions.stream().allMatch(Optional::isPresent)
            && formulas(protocol).noneMatch(references -> references.contains(symbol));
    TreeSet<Value> lines = new TreeSet<>();
    regions.stream().flatMap(Optional::stream).forEach(region -> addEnds(region, lines));
    addEnds(field.allowed(), lines);
    if (!whole) {
      field.usual().ifPresent(usual -> addEnds(usual, lines));
      addSteps(lines);
    }
    boolean tried = whole || symbol.type() != ValueType.TEXT || symbol.isChoice();
    return new FieldClasses(tried ? parts(field.allowed(), lines) : List.of(), whole);
  }

  /** A value of the part. */
  static Value sample(ValueSet part) {
    Interval first = part.parts().get(0);
    if (first.low() != null && first.lowIncluded()) {
      return first.low();
    }
    if (first.high() != null && first.highIncluded()) {
      return first.high();
    }
    return between(first.low(), first.high());
  }

  private static Value between(@Nullable Value low, @Nullable Value high) {
    if (low instanceof NumberValue from) {
      return high instanceof NumberValue to
          ? Value.of(half(from, to))
          : Value.of(from.number().add(BigDecimal.ONE));
    }
    if (high instanceof NumberValue to) {
      return Value.of(to.number().subtract(BigDecimal.ONE));
    }
    if (low instanceof Value.DateValue from) {
      return Value.of(from.date().plusDays(1));
    }
    if (high instanceof Value.DateValue to) {
      return Value.of(to.date().minusDays(1));
    }
    return low instanceof Value.TextValue text ? Value.of(text.text() + " ") : Value.of(0);
  }

  private static BigDecimal half(NumberValue low, NumberValue high) {
    return low.number().add(high.number()).divide(BigDecimal.valueOf(2), Value.ARITHMETIC);
  }

  /** What satisfies each test on the name; nothing where that differs from case to case. */
  private static List<Optional<ValueSet>> tests(Protocol protocol, Symbol symbol) {
    List<Optional<ValueSet>> regions = new ArrayList<>();
    for (DecisionTable table : protocol.decisions()) {
      for (int i = 0; i < table.inputs().size(); i++) {
        if (table.inputs().get(i).symbol().equals(symbol)) {
          for (Row row : table.rows()) {
            regions.add(row.tests().get(i).prepared().region());
          }
        }
      }
    }
    return regions;
  }

  /** The names that each formula and each endpoint reads. */
  private static Stream<Set<Symbol>> formulas(Protocol protocol) {
    Stream<Set<Symbol>> calculations = protocol.calculations().stream().map(Calculation::needs);
    Stream<Set<Symbol>> cells =
        protocol
            .allRows()
            .flatMap(
                row ->
                    Stream.concat(
                        row.tests().stream().map(Test::prepared).map(test -> test.references()),
                        row.results().stream().map(result -> result.expression().references())));
    return Stream.concat(calculations, cells);
  }

  private static void addEnds(ValueSet region, TreeSet<Value> lines) {
    for (Interval part : region.parts()) {
      Stream.of(Optional.ofNullable(part.low()), Optional.ofNullable(part.high()))
          .flatMap(Optional::stream)
          .forEach(lines::add);
    }
  }

  private static void addSteps(TreeSet<Value> lines) {
    if (lines.size() < 2
        || !(lines.first() instanceof NumberValue from)
        || !(lines.last() instanceof NumberValue to)) {
      return;
    }
    BigDecimal step =
        to.number().subtract(from.number()).divide(BigDecimal.valueOf(STEPS), new MathContext(2));
    for (int i = 1; i < STEPS; i++) {
      lines.add(Value.of(from.number().add(step.multiply(BigDecimal.valueOf(i)))));
    }
  }

  /** Every line is a part of its own, and so is what lies between two of them. */
  private static List<ValueSet> parts(ValueSet allowed, TreeSet<Value> lines) {
    if (allowed.isFinite()) {
      return allowed.values().stream().map(ValueSet::of).toList();
    }
    List<ValueSet> parts = new ArrayList<>();
    Value before = null;
    for (Value line : lines) {
      parts.add(ValueSet.between(allowed.type(), before, false, line, false));
      parts.add(ValueSet.of(line));
      before = line;
    }
    parts.add(ValueSet.between(allowed.type(), before, false, null, false));
    return parts.stream()
        .map(part -> part.intersect(allowed))
        .filter(part -> !part.isEmpty())
        .toList();
  }
}
