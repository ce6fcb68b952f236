package org.cotyla.rules.geometry;

import java.util.List;
import java.util.stream.Stream;
import org.cotyla.expression.FormulaFunction;
import org.cotyla.expression.FormulaLibrary;

/** The functions of hip geometry that formulas of a workbook may call. */
public final class HipGeometry implements FormulaLibrary {

  /** For {@link java.util.ServiceLoader}. */
  public HipGeometry() {}

  @Override
  public List<FormulaFunction> functions() {
    return Stream.of(
            OrientationFunctions.all(),
            HeadFunctions.all(),
            MotionFunctions.all(),
            SurfaceFunctions.all())
        .flatMap(List::stream)
        .toList();
  }
}
