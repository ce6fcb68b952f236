package org.cotyla.dmn;

import org.cotyla.expression.Expression;

/**
 * A part of a formula that FEEL cannot work out, since it calls a function that a host adds. In an
 * exported model it is input data, and who runs the model gives its value.
 *
 * @param name the input's name in the model
 * @param call the part of the formula, over the protocol's names
 */
public record HostValue(String name, Expression.Call call) {

  /** The call as it stands in the workbook's language. */
  public String formula() {
    return call.print();
  }
}
