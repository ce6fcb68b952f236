package org.cotyla.expression;

import java.util.List;

/**
 * Functions that a trade adds to the formulas of its workbooks.
 *
 * <p>Hosts that want them find every library on the class path with {@link java.util.ServiceLoader}
 * and hand the functions over when they read a workbook. A department adds its own by a jar that
 * names its library in {@code META-INF/services/org.cotyla.expression.FormulaLibrary}.
 */
public interface FormulaLibrary {

  /** The functions, each with a name of its own. */
  List<FormulaFunction> functions();
}
