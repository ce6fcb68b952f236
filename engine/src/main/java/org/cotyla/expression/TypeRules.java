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

  static void number(String place, Expression expression) throws ExpressionException {
    if (expression.type() != ValueType.NUMBER) {
      throw new ExpressionException(
          place + " stands `" + expression.print() + "`, which is a " + expression.type().word(),
          "a number is needed there");
    }
  }

  static void arguments(FormulaFunction function, List<Expression> arguments)
      throws ExpressionException {
    List<ValueType> parameters = function.parameters();
    boolean enough =
        function.isVariadic()
            ? arguments.size() >= parameters.size()
            : arguments.size() == parameters.size();
    if (!enough) {
      throw new ExpressionException(
          "`"
              + function.name()
              + "` takes "
              + parameters.size()
              + (function.isVariadic() ? " or more" : "")
              + (parameters.size() == 1 && !function.isVariadic() ? " argument" : " arguments")
              + " but has "
              + arguments.size());
    }
    for (int i = 0; i < arguments.size(); i++) {
      ValueType wanted = parameters.get(Math.min(i, parameters.size() - 1));
      Expression argument = arguments.get(i);
      if (!(argument instanceof Nothing) && argument.type() != wanted) {
        throw new ExpressionException(
            "argument "
                + (i + 1)
                + " of `"
                + function.name()
                + "` is a "
                + argument.type().word()
                + " but must be a "
                + wanted.word());
      }
    }
  }
}
