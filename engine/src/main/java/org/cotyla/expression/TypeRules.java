package org.cotyla.expression;

import java.util.List;
import org.cotyla.expression.Expression.Nothing;
import org.cotyla.value.ValueType;

/** What may stand with what in a formula, checked when it is read. */
final class TypeRules {

  private TypeRules() {}

  static void same(String leftPlace, Expression left, String rightPlace, Expression right)
      throws ExpressionException {
    if (left instanceof Nothing || right instanceof Nothing || left.type() == right.type()) {
      return;
    }
    throw new ExpressionException(
        leftPlace
            + " stands a "
            + left.type().word()
            + " but "
            + rightPlace
            + " a "
            + right.type().word(),
        "both must be of one type");
  }

  static void arithmetic(ArithmeticSign sign, Expression left, Expression right)
      throws ExpressionException {
    boolean texts =
        sign == ArithmeticSign.ADD
            && left.type() == ValueType.TEXT
            && right.type() == ValueType.TEXT;
    if (!texts) {
      number("left of " + sign.sign(), left);
      number("right of " + sign.sign(), right);
    }
  }

  /** Days between dates are a duration, a type that is not had here: refused rather than null. */
  static void noDuration(ArithmeticSign sign, Expression left, Expression right)
      throws ExpressionException {
    boolean dates = left.type() == ValueType.DATE && right.type() == ValueType.DATE;
    if (dates && sign == ArithmeticSign.SUBTRACT) {
      throw new ExpressionException(
          "`" + left.print() + " - " + right.print() + "` is a duration, which is not read here",
          "compare the dates instead");
    }
  }

  static void number(String place, Expression expression) throws ExpressionException {
    if (expression.type() != ValueType.NUMBER) {
      throw new ExpressionException(
          place + " stands `" + expression.print() + "`, which is a " + expression.type().word(),
          "a number is needed there");
    }
  }

  static void count(FormulaFunction function, List<Expression> arguments)
      throws ExpressionException {
    int wanted = function.parameters().size();
    boolean enough =
        function.isVariadic() ? arguments.size() >= wanted : arguments.size() == wanted;
    if (!enough) {
      throw new ExpressionException(
          "`"
              + function.name()
              + "` takes "
              + wanted
              + (function.isVariadic() ? " or more" : "")
              + (wanted == 1 && !function.isVariadic() ? " argument" : " arguments")
              + " but has "
              + arguments.size());
    }
  }

  static void arguments(FormulaFunction function, List<Expression> arguments)
      throws ExpressionException {
    for (int i = 0; i < arguments.size(); i++) {
      Expression argument = arguments.get(i);
      if (!(argument instanceof Nothing) && !function.accepts(argument.type(), i)) {
        throw new ExpressionException(
            "argument "
                + (i + 1)
                + " of `"
                + function.name()
                + "` is a "
                + argument.type().word()
                + " but must be a "
                + function.parameter(i).word());
      }
    }
  }
}
