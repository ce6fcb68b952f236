package org.cotyla.explain;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.cotyla.evaluate.Firing;
import org.cotyla.evaluate.Firing.TestSeen;
import org.cotyla.evaluate.Recommendation;
import org.cotyla.expression.Symbol;
import org.cotyla.protocol.Field;
import org.cotyla.protocol.Row;
import org.cotyla.value.PossibleValues;
import org.cotyla.value.ValueSet;

/**
 * A test on which a row hinges, with the values that would not meet it.
 *
 * @param input the name that is tested
 * @param test the test and the value that met it
 * @param failsFor the allowed values with which the test fails, all else being as it is; absent
 *     when that is not known
 */
public record Hinge(Symbol input, TestSeen test, Optional<ValueSet> failsFor) {

  /** The tests of a row that fired, in the order of the sheet. */
  static List<Hinge> of(Recommendation advice, Firing firing) {
    Map<Symbol, PossibleValues> known = known(advice);
    List<TestSeen> tests = firing.tests();
    List<Hinge> hinges = new ArrayList<>();
    for (int i = 0; i < firing.row().tests().size(); i++) {
      Row.Test test = firing.row().tests().get(i);
      if (!test.prepared().isAnything()) {
        Symbol input = firing.table().inputs().get(i).symbol();
        hinges.add(
            new Hinge(input, tests.get(hinges.size()), failsFor(advice, known, input, test)));
      }
    }
    return hinges;
  }

  private static Optional<ValueSet> failsFor(
      Recommendation advice, Map<Symbol, PossibleValues> known, Symbol input, Row.Test test) {
    if (!known.keySet().containsAll(test.prepared().references())) {
      return Optional.empty();
    }
    ValueSet allowed =
        advice.protocol().fields().stream()
            .filter(field -> field.symbol().equals(input))
            .map(Field::allowed)
            .findFirst()
            .orElse(ValueSet.all(input.type()));
    return test.prepared()
        .test()
        .region(input.type(), name -> known.getOrDefault(name, PossibleValues.nothing(name.type())))
        .map(region -> allowed.intersect(region.complement()))
        .filter(fails -> !fails.isEmpty());
  }

  private static Map<Symbol, PossibleValues> known(Recommendation advice) {
    Map<Symbol, PossibleValues> known = new HashMap<>();
    advice.findings().data().forEach(datum -> known.put(datum.field().symbol(), datum.value()));
    advice
        .protocol()
        .calculations()
        .forEach(
            calculation ->
                Optional.ofNullable(advice.calculations().get(calculation.name()))
                    .ifPresent(value -> known.put(calculation.symbol(), value)));
    advice
        .decisions()
        .forEach(
            decision ->
                decision
                    .table()
                    .outputs()
                    .forEach(
                        output ->
                            Optional.ofNullable(decision.outputs().get(output.symbol().name()))
                                .ifPresent(value -> known.put(output.symbol(), value))));
    return known;
  }
}
