package org.cotyla.testcases.differential;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.cotyla.expression.CellTest;
import org.cotyla.expression.Expression;
import org.cotyla.expression.FormulaFunction;
import org.cotyla.expression.Relation;
import org.cotyla.expression.Symbol;
import org.cotyla.value.PossibleValues;
import org.cotyla.value.Value;

/**
 * What formulas and tests are at single values, walked plainly: a number, text, boolean or date, or
 * null. Written from the standard (DMN clauses 8 to 10) and sharing nothing with the engine's own
 * evaluation.
 */
final class PlainFormulas {

  private final Function<Symbol, Object> names;

  PlainFormulas(Function<Symbol, Object> names) {
    this.names = names;
  }

  static Object plain(Value value) {
    if (value instanceof Value.NumberValue number) {
      return number.number();
    }
    if (value instanceof Value.TextValue text) {
      return text.text();
    }
    return value instanceof Value.YesNoValue answer
        ? (Object) answer.yes()
        : ((Value.DateValue) value).date();
  }

  Object formula(Expression formula) {
    if (formula instanceof Expression.Literal literal) {
      return plain(literal.value());
    }
    if (formula instanceof Expression.Reference reference) {
      return names.apply(reference.symbol());
    }
    if (formula instanceof Expression.Negation minus) {
      return arithmetic("-", BigDecimal.ZERO, formula(minus.operand()));
    }
    if (formula instanceof Expression.Arithmetic joined) {
      return arithmetic(joined.sign().sign(), formula(joined.left()), formula(joined.right()));
    }
    if (formula instanceof Expression.Comparison compared) {
      return compare(compared.relation(), formula(compared.left()), formula(compared.right()));
    }
    if (formula instanceof Expression.Logic logic) {
      Object a = formula(logic.left());
      Object b = formula(logic.right());
      return logic.conjunction() ? and(a, b) : not(and(not(a), not(b)));
    }
    if (formula instanceof Expression.Not turned) {
      return not(formula(turned.operand()));
    }
    if (formula instanceof Expression.Membership in) {
      return test(in.test(), formula(in.operand()));
    }
    if (formula instanceof Expression.Conditional choice) {
      boolean first = Boolean.TRUE.equals(formula(choice.condition()));
      return formula(first ? choice.whenTrue() : choice.otherwise());
    }
    if (formula instanceof Expression.Call call) {
      List<Object> arguments = new ArrayList<>();
      call.arguments().forEach(argument -> arguments.add(formula(argument)));
      return arguments.contains(null) ? null : call(call.function(), arguments);
    }
    return null;
  }

  private static Object call(FormulaFunction function, List<Object> arguments) {
    String name = function.name();
    List<BigDecimal> numbers = arguments.stream().map(BigDecimal.class::cast).toList();
    BigDecimal first = numbers.get(0);
    return switch (name) {
      case "min" -> numbers.stream().reduce(BigDecimal::min).orElseThrow();
      case "max" -> numbers.stream().reduce(BigDecimal::max).orElseThrow();
      case "abs" -> first.abs();
      case "floor" -> first.setScale(0, RoundingMode.FLOOR);
      case "ceiling" -> first.setScale(0, RoundingMode.CEILING);
      case "round half up" -> first.setScale(numbers.get(1).intValue(), RoundingMode.HALF_UP);
      case "sqrt" -> first.signum() < 0 ? null : first.sqrt(MathContext.DECIMAL128);
      default -> ofTrade(function, numbers);
    };
  }

  /**
   * A trade's function is checked against published values elsewhere; here it is taken as it is.
   */
  private static Object ofTrade(FormulaFunction function, List<BigDecimal> numbers) {
    List<PossibleValues> known = numbers.stream().map(Value::of).map(PossibleValues::of).toList();
    return function.apply(known).single().map(PlainFormulas::plain).orElse(null);
  }

  private static Object arithmetic(String sign, Object left, Object right) {
    if (!(left instanceof BigDecimal a) || !(right instanceof BigDecimal b)) {
      return null;
    }
    return switch (sign) {
      case "+" -> a.add(b, MathContext.DECIMAL128);
      case "-" -> a.subtract(b, MathContext.DECIMAL128);
      case "*" -> a.multiply(b, MathContext.DECIMAL128);
      case "/" -> b.signum() == 0 ? null : a.divide(b, MathContext.DECIMAL128);
      default -> a.pow(b.intValueExact(), MathContext.DECIMAL128);
    };
  }

  /** True, false, or null where the standard says null. */
  Boolean test(CellTest test, Object input) {
    if (test instanceof CellTest.Compared compared) {
      return compare(compared.relation(), input, formula(compared.endpoint()));
    }
    if (test instanceof CellTest.Between between) {
      Relation from = between.lowIncluded() ? Relation.AT_LEAST : Relation.GREATER;
      Relation to = between.highIncluded() ? Relation.AT_MOST : Relation.LESS;
      return and(
          compare(from, input, formula(between.low())),
          compare(to, input, formula(between.high())));
    }
    if (test instanceof CellTest.AnyOf any) {
      Boolean none = true;
      for (CellTest one : any.tests()) {
        none = and(none, not(test(one, input)));
      }
      return not(none);
    }
    if (test instanceof CellTest.NoneOf none) {
      return not(test(none.inner(), input));
    }
    return test instanceof CellTest.Anything ? Boolean.TRUE : null;
  }

  static boolean same(Object a, Object b) {
    return a instanceof BigDecimal x && b instanceof BigDecimal y
        ? x.compareTo(y) == 0
        : java.util.Objects.equals(a, b);
  }

  private static Boolean compare(Relation relation, Object a, Object b) {
    if (relation == Relation.EQUAL || relation == Relation.UNEQUAL) {
      return same(a, b) == (relation == Relation.EQUAL);
    }
    int order;
    if (a instanceof BigDecimal x && b instanceof BigDecimal y) {
      order = x.compareTo(y);
    } else if (a instanceof LocalDate x && b instanceof LocalDate y) {
      order = x.compareTo(y);
    } else if (a instanceof String x && b instanceof String y) {
      order = x.compareTo(y);
    } else {
      return null;
    }
    return switch (relation) {
      case LESS -> order < 0;
      case AT_MOST -> order <= 0;
      case GREATER -> order > 0;
      default -> order >= 0;
    };
  }

  private static Boolean not(Object a) {
    return a instanceof Boolean known ? !known : null;
  }

  private static Boolean and(Object a, Object b) {
    if (Boolean.FALSE.equals(a) || Boolean.FALSE.equals(b)) {
      return false;
    }
    return a instanceof Boolean && b instanceof Boolean ? Boolean.TRUE : null;
  }
}
