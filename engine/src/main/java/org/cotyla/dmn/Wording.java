package org.cotyla.dmn;

import java.util.List;
import java.util.function.Supplier;
import org.cotyla.expression.Expression;
import org.cotyla.expression.Symbol;
import org.cotyla.value.Value;

/** How names, values and calls of functions are written on one side of an exchange. */
interface Wording {

  String name(Symbol symbol);

  /** A value inside a formula. */
  String literal(Value value);

  /** A value that stands as a test of its own under the input. */
  String alone(Value value, Symbol input);

  /** A call; its arguments are written only when they are asked for. */
  String call(Expression.Call call, Supplier<List<String>> arguments);

  /** The formula without what this side has no use for. */
  Expression simplified(Expression formula);

  /** The questions that must all be answered with no before the part is worked out. */
  List<Expression> guards(Expression part);

  /** A yes/no question that the input must answer as it is answered itself. */
  String sameAnswer(String formula);

  /** A test for any value but one, where it stands among other tests or for a yes/no. */
  String otherThan(String formula);
}
