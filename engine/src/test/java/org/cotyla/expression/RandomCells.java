package org.cotyla.expression;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.cotyla.expression.Expression.Arithmetic;
import org.cotyla.expression.Expression.Call;
import org.cotyla.expression.Expression.Comparison;
import org.cotyla.expression.Expression.Conditional;
import org.cotyla.expression.Expression.Literal;
import org.cotyla.expression.Expression.Logic;
import org.cotyla.expression.Expression.Membership;
import org.cotyla.expression.Expression.Negation;
import org.cotyla.expression.Expression.Not;
import org.cotyla.expression.Expression.Nothing;
import org.cotyla.expression.Expression.Reference;
import org.cotyla.value.Value;
import org.cotyla.value.ValueType;

/** Random formulas and tests in the form in which the parser builds them. */
final class RandomCells {

  private static final List<Relation> RELATIONS = List.of(Relation.values());
  private static final List<String> NUMBERS =
      List.of("-3", "-1", "-0.5", "0", "0.1", "0.3", "1", "1.5", "2", "3");
  private static final LocalDate FIRST_DAY = LocalDate.of(2026, 1, 1);

  private final Random random;

  RandomCells(Random random) {
    this.random = random;
  }

  <T> T pick(List<T> list) {
    return list.get(random.nextInt(list.size()));
  }

  Value number() {
    return Value.of(new BigDecimal(pick(NUMBERS)));
  }

  Value day() {
    return Value.of(FIRST_DAY.plusDays(random.nextInt(5)));
  }

  Value literal(ValueType type) {
    return switch (type) {
      case NUMBER -> number();
      case TEXT -> Value.of(pick(SampleNames.GRADES));
      case YES_NO -> Value.of(random.nextBoolean());
      case DATE -> day();
    };
  }

  Expression formula(ValueType type, int depth) {
    if (depth == 0 || random.nextInt(4) == 0) {
      return leaf(type);
    }
    if (random.nextInt(8) == 0) {
      return conditional(type, depth - 1);
    }
    return switch (type) {
      case NUMBER -> numberFormula(depth - 1);
      case YES_NO -> condition(depth - 1);
      case TEXT, DATE -> leaf(type);
    };
  }

  private Expression conditional(ValueType type, int depth) {
    Expression condition = formula(ValueType.YES_NO, depth);
    Expression first = random.nextInt(6) == 0 ? new Nothing(type) : formula(type, depth);
    return new Conditional(condition, first, formula(type, depth));
  }

  private Expression leaf(ValueType type) {
    List<Symbol> known =
        SampleNames.ALL.stream()
            .filter(symbol -> symbol.type() == type && !symbol.equals(SampleNames.NOTE))
            .toList();
    return random.nextInt(3) > 0 ? new Reference(pick(known)) : new Literal(literal(type));
  }

  private Expression numberFormula(int depth) {
    Expression a = formula(ValueType.NUMBER, depth);
    switch (random.nextInt(6)) {
      case 0:
        return a instanceof Literal ? a : new Negation(a);
      case 1:
        return call(a, depth);
      case 2:
        Literal exponent = new Literal(Value.of(random.nextInt(5) - 1));
        return new Arithmetic(ArithmeticSign.POWER, a, exponent);
      case 3:
        return new Arithmetic(ArithmeticSign.ADD, a, new Nothing(ValueType.NUMBER));
      default:
        ArithmeticSign sign = pick(List.of(ArithmeticSign.values()).subList(0, 4));
        return new Arithmetic(sign, a, formula(ValueType.NUMBER, depth));
    }
  }

  private Expression call(Expression argument, int depth) {
    FormulaFunction function =
        pick(
            SampleNames.FUNCTIONS.stream()
                .filter(known -> known.result() == ValueType.NUMBER)
                .filter(known -> known.parameters().get(0) == ValueType.NUMBER)
                .toList());
    List<Expression> arguments = new ArrayList<>(List.of(argument));
    if (function.isVariadic()) {
      arguments.add(formula(ValueType.NUMBER, depth));
    } else if (function.parameters().size() > 1) {
      arguments.add(new Literal(Value.of(random.nextInt(3) - 1)));
    }
    return new Call(function, arguments);
  }

  private Expression condition(int depth) {
    ValueType type = pick(List.of(ValueType.NUMBER, ValueType.TEXT, ValueType.DATE));
    return switch (random.nextInt(5)) {
      case 0 -> new Not(formula(ValueType.YES_NO, depth));
      case 1, 2 ->
          new Logic(
              random.nextBoolean(),
              formula(ValueType.YES_NO, depth),
              formula(ValueType.YES_NO, depth));
      case 3 ->
          new Membership(formula(ValueType.NUMBER, depth), tests(ValueType.NUMBER, depth, true));
      default -> {
        Relation relation =
            type == ValueType.TEXT
                ? pick(List.of(Relation.EQUAL, Relation.UNEQUAL))
                : pick(RELATIONS);
        yield new Comparison(relation, formula(type, depth), formula(type, depth));
      }
    };
  }

  /** A whole cell. */
  CellTest cell(Symbol input, int depth, boolean constant) {
    return switch (random.nextInt(8)) {
      case 0 -> new CellTest.Anything();
      case 1, 2 -> new CellTest.NoneOf(tests(input.type(), depth, constant));
      default -> tests(input.type(), depth, constant);
    };
  }

  private CellTest tests(ValueType type, int depth, boolean constant) {
    if (random.nextInt(3) > 0) {
      return test(type, depth, constant);
    }
    List<CellTest> several = new ArrayList<>();
    for (int i = 0; i < 2 + random.nextInt(2); i++) {
      several.add(test(type, depth, constant));
    }
    return new CellTest.AnyOf(several);
  }

  private CellTest test(ValueType type, int depth, boolean constant) {
    boolean ordered = type == ValueType.NUMBER || type == ValueType.DATE;
    if (ordered && random.nextInt(3) == 0) {
      return between(type, depth, constant);
    }
    Relation relation =
        ordered ? pick(RELATIONS) : pick(List.of(Relation.EQUAL, Relation.EQUAL, Relation.UNEQUAL));
    boolean isNull = random.nextInt(8) == 0;
    Expression endpoint = isNull ? new Nothing(type) : endpoint(type, depth, constant);
    return new CellTest.Compared(relation, endpoint);
  }

  private CellTest between(ValueType type, int depth, boolean constant) {
    Expression a = endpoint(type, depth, constant);
    Expression b = endpoint(type, depth, constant);
    boolean turned =
        a instanceof Literal low
            && b instanceof Literal high
            && low.value().compareTo(high.value()) > 0;
    boolean point = a.equals(b);
    return turned
        ? new CellTest.Between(b, random.nextBoolean(), a, random.nextBoolean())
        : new CellTest.Between(a, point || random.nextBoolean(), b, point || random.nextBoolean());
  }

  private Expression endpoint(ValueType type, int depth, boolean constant) {
    if (!constant) {
      return type == ValueType.YES_NO
          ? new Reference(SampleNames.SECOND_ANSWER)
          : formula(type, depth);
    }
    boolean house = type == ValueType.NUMBER && random.nextInt(4) == 0;
    return house ? new Reference(SampleNames.HOUSE_LINE) : new Literal(literal(type));
  }
}
