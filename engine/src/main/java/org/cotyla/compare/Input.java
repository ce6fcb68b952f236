package org.cotyla.compare;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.cotyla.expression.PreparedTest;
import org.cotyla.expression.Symbol;
import org.cotyla.name.Names;
import org.cotyla.protocol.DecisionTable;
import org.cotyla.protocol.Row;
import org.cotyla.value.Interval;
import org.cotyla.value.PossibleValues;
import org.cotyla.value.Value;
import org.cotyla.value.ValueSet;

/**
 * An input of a decision in two protocols, cut into the classes of values that their rows can tell
 * apart.
 *
 * @param before the name in the old protocol, when that has it
 * @param after the name in the new protocol
 * @param steady whether it has the same value in both in every case
 * @param given whether a case states it
 * @param classes the classes in ascending order; nothing is one of its own
 * @param formulas tests against other names, each with its side
 */
record Input(
    String name,
    String unit,
    List<String> choices,
    Optional<Symbol> before,
    Optional<Symbol> after,
    boolean steady,
    boolean given,
    List<PossibleValues> classes,
    List<FormulaTest> formulas) {

  /** A test whose limits are not the same in every case. */
  record FormulaTest(int side, Symbol input, PreparedTest test) {}

  /** The inputs that some row of either table tests, in the order of the new table. */
  static List<Input> of(DecisionTable before, DecisionTable after, Side old, Side young) {
    Map<String, String> names = new LinkedHashMap<>();
    Stream.concat(after.inputs().stream(), before.inputs().stream())
        .map(input -> input.symbol().name())
        .forEach(name -> names.putIfAbsent(Names.key(name), name));
    List<Input> inputs = new ArrayList<>();
    names.forEach(
        (key, name) -> {
          List<PreparedTest> was = tests(before, key);
          List<PreparedTest> is = tests(after, key);
          if (!was.isEmpty() || !is.isEmpty()) {
            inputs.add(of(name, was, is, old, young));
          }
        });
    return inputs;
  }

  private static List<PreparedTest> tests(DecisionTable table, String key) {
    List<PreparedTest> tests = new ArrayList<>();
    for (int i = 0; i < table.inputs().size(); i++) {
      if (Names.key(table.inputs().get(i).symbol().name()).equals(key)) {
        for (Row row : table.rows()) {
          PreparedTest test = row.tests().get(i).prepared();
          if (!test.isAnything()) {
            tests.add(test);
          }
        }
      }
    }
    return tests;
  }

  private static Input of(
      String name, List<PreparedTest> was, List<PreparedTest> is, Side old, Side young) {
    Optional<Symbol> before = old.symbol(name);
    Optional<Symbol> after = young.symbol(name);
    Side side = after.isPresent() ? young : old;
    Symbol symbol = after.or(() -> before).orElseThrow();
    PossibleValues all = side.all(symbol);
    List<ValueSet> cells = new ArrayList<>(pieces(all.values()));
    List<FormulaTest> formulas = new ArrayList<>();
    for (PreparedTest test : Stream.concat(is.stream(), was.stream()).toList()) {
      Optional<ValueSet> region = test.region();
      if (region.isPresent() && region.get().type() == symbol.type()) {
        cells = cut(cells, region.get());
      }
    }
    was.stream()
        .filter(test -> test.region().isEmpty())
        .forEach(test -> before.ifPresent(in -> formulas.add(new FormulaTest(0, in, test))));
    is.stream()
        .filter(test -> test.region().isEmpty())
        .forEach(test -> after.ifPresent(in -> formulas.add(new FormulaTest(1, in, test))));
    List<PossibleValues> classes = new ArrayList<>();
    cells.stream().sorted(Input::inOrder).forEach(cell -> classes.add(PossibleValues.of(cell)));
    if (all.orNothing()) {
      classes.add(PossibleValues.nothing(symbol.type()));
    }
    boolean steady = !young.unsteady().contains(Names.key(name));
    return new Input(
        name,
        side.unit(symbol),
        symbol.choices(),
        before,
        after,
        steady,
        side.isGiven(symbol),
        classes,
        formulas);
  }

  /** A choice's or free text's values stay together until something tells them apart. */
  private static List<ValueSet> pieces(ValueSet all) {
    return all.isFinite()
        ? List.of(all)
        : all.parts().stream()
            .map(part -> ValueSet.ofIntervals(all.type(), List.of(part)))
            .toList();
  }

  private static List<ValueSet> cut(List<ValueSet> cells, ValueSet region) {
    List<ValueSet> finer = new ArrayList<>();
    for (ValueSet cell : cells) {
      for (ValueSet part : List.of(cell.intersect(region), cell.intersect(region.complement()))) {
        if (!part.isEmpty()) {
          finer.addAll(pieces(part));
        }
      }
    }
    return finer;
  }

  private static int inOrder(ValueSet a, ValueSet b) {
    Interval one = a.hull();
    Interval other = b.hull();
    Value low = one.low();
    Value otherLow = other.low();
    if (low == null || otherLow == null) {
      return low == null ? otherLow == null ? 0 : -1 : 1;
    }
    int order = low.compareTo(otherLow);
    return order != 0 ? order : Boolean.compare(other.lowIncluded(), one.lowIncluded());
  }

  /** Everything that it can be. */
  PossibleValues all() {
    return classes.stream().reduce(PossibleValues::union).orElseThrow();
  }

  /** The place of the class in which a certain value lies. */
  Optional<Integer> classOf(PossibleValues value) {
    for (int i = 0; i < classes.size(); i++) {
      if (value.isCertain() && classes.get(i).containsAll(value)) {
        return Optional.of(i);
      }
    }
    return Optional.empty();
  }
}
