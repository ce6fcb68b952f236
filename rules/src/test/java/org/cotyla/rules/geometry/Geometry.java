package org.cotyla.rules.geometry;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import java.util.stream.DoubleStream;
import org.cotyla.expression.FormulaFunction;
import org.cotyla.expression.FormulaLibrary;
import org.cotyla.value.PossibleValues;
import org.cotyla.value.Value;
import org.cotyla.value.Value.NumberValue;

/** The functions as a host finds them, called by name with numbers. */
final class Geometry {

  static final List<String> SYSTEMS = List.of("radiographic", "operative", "anatomic");

  private Geometry() {}

  static List<FormulaFunction> functions() {
    return FormulaLibrary.installed();
  }

  static FormulaFunction function(String name) {
    List<FormulaFunction> found =
        functions().stream().filter(function -> function.name().equals(name)).toList();
    assertThat(found).as("functions of the name `%s`", name).hasSize(1);
    return found.get(0);
  }

  static double call(String name, double... numbers) {
    PossibleValues result = result(name, numbers);
    assertThat(result.isCertain()).as("`%s` has one result", name).isTrue();
    assertThat(result.isNothing()).as("`%s` has no result", name).isFalse();
    return ((NumberValue) result.single().orElseThrow()).number().doubleValue();
  }

  static PossibleValues result(String name, double... numbers) {
    FormulaFunction function = function(name);
    assertThat(numbers).as("arguments of `%s`", name).hasSize(function.parameters().size());
    return function.apply(DoubleStream.of(numbers).mapToObj(Geometry::certain).toList());
  }

  static PossibleValues certain(double number) {
    return PossibleValues.of(Value.of(BigDecimal.valueOf(number)));
  }

  /** Inclination and anteversion of the one system in the other. */
  static double[] convert(String from, String to, double[] angles) {
    return new double[] {
      call(to + " inclination from " + from, angles[0], angles[1]),
      call(to + " anteversion from " + from, angles[0], angles[1])
    };
  }
}
