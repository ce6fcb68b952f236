package org.cotyla.expression;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.cotyla.value.PossibleValues;
import org.cotyla.value.Value;
import org.cotyla.value.ValueType;

/** A formula, parsed once. Immutable; prints itself back as S-FEEL. */
public sealed interface Expression {

  /**
   * What the formula can be when its names can be what the scope says. Never throws for bad data.
   */
  PossibleValues evaluate(Scope scope);

  /** The kind of value that it gives. */
  ValueType type();

  /** The formula as S-FEEL text; parsing it again gives an equal formula. */
  String print();

  /** The parts that it is made of. */
  List<Expression> parts();

  /** Every name that it uses. */
  default Set<Symbol> references() {
    return parts().stream()
        .flatMap(part -> part.references().stream())
        .collect(Collectors.toUnmodifiableSet());
  }

  /** A value written in the cell. */
  record Literal(Value value) implements Expression {
    @Override
    public PossibleValues evaluate(Scope scope) {
      return PossibleValues.of(value);
    }

    @Override
    public ValueType type() {
      return value.type();
    }

    @Override
    public String print() {
      return value.literal();
    }

    @Override
    public List<Expression> parts() {
      return List.of();
    }
  }

  /** The standard's null, of the type that its place asks for. */
  record Nothing(ValueType type) implements Expression {
    @Override
    public PossibleValues evaluate(Scope scope) {
      return PossibleValues.nothing(type);
    }

    @Override
    public String print() {
      return "null";
    }

    @Override
    public List<Expression> parts() {
      return List.of();
    }
  }

  /** A name. */
  record Reference(Symbol symbol) implements Expression {
    @Override
    public PossibleValues evaluate(Scope scope) {
      return scope.valueOf(symbol);
    }

    @Override
    public ValueType type() {
      return symbol.type();
    }

    @Override
    public String print() {
      return symbol.name();
    }

    @Override
    public List<Expression> parts() {
      return List.of();
    }

    @Override
    public Set<Symbol> references() {
      return Set.of(symbol);
    }
  }

  /** A sign before a number. */
  record Negation(Expression operand) implements Expression {
    @Override
    public PossibleValues evaluate(Scope scope) {
      PossibleValues zero = PossibleValues.of(Value.of(0));
      return RangeArithmetic.combine(ArithmeticSign.SUBTRACT, zero, operand.evaluate(scope));
    }

    @Override
    public ValueType type() {
      return ValueType.NUMBER;
    }

    @Override
    public String print() {
      return "-(" + operand.print() + ")";
    }

    @Override
    public List<Expression> parts() {
      return List.of(operand);
    }
  }

  /** Two numbers joined by a sign, or two texts joined by a plus. */
  record Arithmetic(ArithmeticSign sign, Expression left, Expression right) implements Expression {
    @Override
    public PossibleValues evaluate(Scope scope) {
      return RangeArithmetic.combine(sign, left.evaluate(scope), right.evaluate(scope));
    }

    @Override
    public ValueType type() {
      boolean texts = left.type() == ValueType.TEXT && right.type() == ValueType.TEXT;
      return texts && sign == ArithmeticSign.ADD ? ValueType.TEXT : ValueType.NUMBER;
    }

    @Override
    public String print() {
      return "(" + left.print() + " " + sign.sign() + " " + right.print() + ")";
    }

    @Override
    public List<Expression> parts() {
      return List.of(left, right);
    }
  }

  /** A comparison. */
  record Comparison(Relation relation, Expression left, Expression right) implements Expression {
    @Override
    public PossibleValues evaluate(Scope scope) {
      return relation.compare(left.evaluate(scope), right.evaluate(scope)).toValues();
    }

    @Override
    public ValueType type() {
      return ValueType.YES_NO;
    }

    @Override
    public String print() {
      return "(" + left.print() + " " + relation.sign() + " " + right.print() + ")";
    }

    @Override
    public List<Expression> parts() {
      return List.of(left, right);
    }
  }

  /** Two conditions joined by and or or, in the standard's three-valued logic. */
  record Logic(boolean conjunction, Expression left, Expression right) implements Expression {
    @Override
    public PossibleValues evaluate(Scope scope) {
      Ternary a = Ternary.of(left.evaluate(scope));
      Ternary b = Ternary.of(right.evaluate(scope));
      return (conjunction ? a.and(b) : a.or(b)).toValues();
    }

    @Override
    public ValueType type() {
      return ValueType.YES_NO;
    }

    @Override
    public String print() {
      return "(" + left.print() + (conjunction ? " and " : " or ") + right.print() + ")";
    }

    @Override
    public List<Expression> parts() {
      return List.of(left, right);
    }
  }

  /** A condition turned round. */
  record Not(Expression operand) implements Expression {
    @Override
    public PossibleValues evaluate(Scope scope) {
      return Ternary.of(operand.evaluate(scope)).not().toValues();
    }

    @Override
    public ValueType type() {
      return ValueType.YES_NO;
    }

    @Override
    public String print() {
      return "not(" + operand.print() + ")";
    }

    @Override
    public List<Expression> parts() {
      return List.of(operand);
    }
  }

  /** A value that meets a cell test, as {@code x in [1..3]} and {@code x between 1 and 3}. */
  record Membership(Expression operand, CellTest test) implements Expression {
    @Override
    public PossibleValues evaluate(Scope scope) {
      return test.outcome(operand.evaluate(scope), scope).toValues();
    }

    @Override
    public ValueType type() {
      return ValueType.YES_NO;
    }

    @Override
    public String print() {
      return "(" + operand.print() + " in (" + test.print() + "))";
    }

    @Override
    public List<Expression> parts() {
      return Stream.concat(Stream.of(operand), test.parts().stream()).toList();
    }
  }

  /** One of two formulas, by a condition; a condition that is not true takes the second. */
  record Conditional(Expression condition, Expression whenTrue, Expression otherwise)
      implements Expression {
    @Override
    public PossibleValues evaluate(Scope scope) {
      return switch (Ternary.of(condition.evaluate(scope)).matches()) {
        case TRUE -> whenTrue.evaluate(scope);
        case FALSE -> otherwise.evaluate(scope);
        case OPEN -> whenTrue.evaluate(scope).union(otherwise.evaluate(scope));
      };
    }

    @Override
    public ValueType type() {
      return whenTrue instanceof Nothing ? otherwise.type() : whenTrue.type();
    }

    @Override
    public String print() {
      return "(if "
          + condition.print()
          + " then "
          + whenTrue.print()
          + " else "
          + otherwise.print()
          + ")";
    }

    @Override
    public List<Expression> parts() {
      return List.of(condition, whenTrue, otherwise);
    }
  }

  /** A function applied to arguments. */
  record Call(FormulaFunction function, List<Expression> arguments) implements Expression {
    public Call {
      arguments = List.copyOf(arguments);
    }

    @Override
    public PossibleValues evaluate(Scope scope) {
      List<PossibleValues> values = arguments.stream().map(part -> part.evaluate(scope)).toList();
      for (int i = 0; i < values.size(); i++) {
        if (!values.get(i).isNothing() && !function.accepts(values.get(i).type(), i)) {
          return PossibleValues.nothing(function.result());
        }
      }
      return function.apply(values);
    }

    @Override
    public ValueType type() {
      return function.result();
    }

    @Override
    public String print() {
      return function.name()
          + arguments.stream().map(Expression::print).collect(Collectors.joining(", ", "(", ")"));
    }

    @Override
    public List<Expression> parts() {
      return arguments;
    }
  }
}
