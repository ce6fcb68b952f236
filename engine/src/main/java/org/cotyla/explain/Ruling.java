package org.cotyla.explain;

import java.util.List;

/**
 * A row that rules an option out, or may, and what would lift it.
 *
 * @param reason the row, its tests and the values that met them
 * @param hinges its tests, each with the values that would not meet it
 * @param lifts the single findings that would lift it, each as it would have to be; empty when none
 *     was found, and for a row that only may rule out
 * @param isWhole whether every single finding was tried with every value that can tell, so that no
 *     lift is a proof that none exists
 */
public record Ruling(Reason reason, List<Hinge> hinges, List<Lift> lifts, boolean isWhole) {

  public Ruling {
    hinges = List.copyOf(hinges);
    lifts = List.copyOf(lifts);
  }
}
