package org.cotyla.expression;

import java.util.List;
import java.util.ServiceLoader;

/**
 * Functions that a trade adds to the formulas of its workbooks.
 *
 * <p>Hosts that want them find every library on the class path with {@link ServiceLoader} and hand
 * the functions over when they read a workbook. A department adds its own by a jar that names its
 * library in {@code META-INF/services/org.cotyla.expression.FormulaLibrary}.
 */
public interface FormulaLibrary {

  /** The functions, each with a name of its own. */
  List<FormulaFunction> functions();

  /** The functions of every library on the class path, in the order in which they are found. */
  static List<FormulaFunction> installed() {
    return ServiceLoader.load(FormulaLibrary.class).stream()
        .flatMap(library -> library.get().functions().stream())
        .toList();
  }
}
