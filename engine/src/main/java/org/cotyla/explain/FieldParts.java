package org.cotyla.explain;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.cotyla.expression.Expression;
import org.cotyla.expression.PreparedTest;
import org.cotyla.expression.Symbol;
import org.cotyla.protocol.Calculation;
import org.cotyla.protocol.DecisionTable;
import org.cotyla.protocol.Field;
import org.cotyla.protocol.Row;
import org.cotyla.protocol.Row.Test;
import org.cotyla.protocol.Step;
import org.cotyla.value.Interval;
import org.cotyla.value.Value;
import org.cotyla.value.Value.NumberValue;
import org.cotyla.value.ValueSet;
import org.cotyla.value.ValueType;

/**
 * The allowed values of a field, parted where some test of the protocol draws a line.
 *
 * @param parts the parts, in ascending order; together they are all that is allowed, when whole
 * @param isWhole whether no test can tell two values of one part apart, since the field is only
 *     ever tested against constants and is part of no formula
 */
record FieldParts(List<Part> parts, boolean isWhole) {

  /** Where a formula blurs the lines, this many values in between are tried as well. */
  private static final int STEPS = 12;

  FieldParts {
    parts = List.copyOf(parts);
  }

  /**
   * Values that no constant of a test tells apart.
   *
   * @param sample one of them
   */
  record Part(ValueSet values, Value sample) {
    Part {
      if (!values.contains(sample)) {
        throw new IllegalArgumentException(sample + " is none of " + values);
      }
    }

    /** Nothing for a part in which no value was found, such as between one day and the next. */
    static Optional<Part> of(ValueSet values) {
      return Sample.of(values).map(sample -> new Part(values, sample));
    }
  }

  /**
   * The classes as far as these steps can tell values apart.
   *
   * @param steps whatever the conclusion in question can hang on
   */
  static FieldParts of(Collection<Step> steps, Field field) {
    Set<Symbol> aliases = aliases(steps, field.symbol());
    List<Optional<ValueSet>> regions =
        aliases.stream().flatMap(alias -> tests(steps, alias).stream()).toList();
    boolean whole =
        regions.stream().allMatch(Optional::isPresent)
            && formulas(steps, aliases)
                .noneMatch(names -> aliases.stream().anyMatch(names::contains));
    TreeSet<Value> lines = new TreeSet<>();
    regions.stream().flatMap(Optional::stream).forEach(region -> addEnds(region, lines));
    addEnds(field.allowed(), lines);
    if (!whole) {
      field.usual().ifPresent(usual -> addEnds(usual, lines));
      addSteps(lines);
    }
    Symbol symbol = field.symbol();
    boolean tried = whole || symbol.type() != ValueType.TEXT || symbol.isChoice();
    List<ValueSet> cut = tried ? cut(field.allowed(), lines) : List.of();
    List<Part> parts = cut.stream().flatMap(values -> Part.of(values).stream()).toList();
    // There is no day between two days, but there may be a text between two texts.
    boolean found = parts.size() == cut.size() || symbol.type() == ValueType.DATE;
    return new FieldParts(parts, whole && found);
  }

  /** The name itself, and the outputs to which some row hands its value on as it is. */
  private static Set<Symbol> aliases(Collection<Step> steps, Symbol symbol) {
    Set<Symbol> aliases = new LinkedHashSet<>(Set.of(symbol));
    boolean grows = true;
    while (grows) {
      grows = false;
      for (DecisionTable table : tables(steps)) {
        for (Row row : rows(table)) {
          for (int i = 0; i < row.results().size(); i++) {
            if (isHandedOn(table, row.results().get(i), aliases)) {
              grows |= aliases.add(table.outputs().get(i).symbol());
            }
          }
        }
      }
    }
    return aliases;
  }

  /** An aggregate of several rows is a formula of its own, not a value that is handed on. */
  private static boolean isHandedOn(DecisionTable table, Row.Result result, Set<Symbol> aliases) {
    return table.hitPolicy().isSingleHit()
        && result.expression() instanceof Expression.Reference reference
        && aliases.contains(reference.symbol());
  }

  private static List<DecisionTable> tables(Collection<Step> steps) {
    return steps.stream()
        .filter(DecisionTable.class::isInstance)
        .map(DecisionTable.class::cast)
        .toList();
  }

  private static List<Row> rows(DecisionTable table) {
    return Stream.concat(table.rows().stream(), table.otherwise().stream()).toList();
  }

  /** What satisfies each test on the name; nothing where that differs from case to case. */
  private static List<Optional<ValueSet>> tests(Collection<Step> steps, Symbol symbol) {
    List<Optional<ValueSet>> regions = new ArrayList<>();
    for (DecisionTable table : tables(steps)) {
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

  /** The names that each formula and each endpoint reads, values handed on as they are aside. */
  private static Stream<Set<Symbol>> formulas(Collection<Step> steps, Set<Symbol> aliases) {
    Stream<Set<Symbol>> calculations =
        steps.stream().filter(Calculation.class::isInstance).map(Step::needs);
    Stream<Set<Symbol>> cells =
        tables(steps).stream()
            .flatMap(
                table ->
                    rows(table).stream()
                        .flatMap(
                            row ->
                                Stream.concat(
                                    row.tests().stream()
                                        .map(Test::prepared)
                                        .map(PreparedTest::references),
                                    row.results().stream()
                                        .filter(one -> !isHandedOn(table, one, aliases))
                                        .map(one -> one.expression().references()))));
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
  private static List<ValueSet> cut(ValueSet allowed, TreeSet<Value> lines) {
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
