package org.cotyla.cli;

import org.cotyla.evaluate.Engine;
import org.cotyla.evaluate.Recommendation;
import org.cotyla.explore.Conditions;
import org.cotyla.explore.Goal;
import org.cotyla.explore.Goals;
import org.cotyla.explore.Margins;
import org.cotyla.explore.SmallestChange;
import org.cotyla.explore.WhatMatters;

/**
 * What lies around the invented cases of sprained ankles, where days since injury have a
 * measurement error of one day.
 */
public final class AnkleAround {

  private static final Engine ENGINE =
      Engine.of(
          TextProtocol.ankle(
              text ->
                  text.replace(
                          "meaning | source\ndays", "meaning | source | measurement error\ndays")
                      .replace("Whole days. | HOUSE", "Whole days. | HOUSE | 1")));

  private AnkleAround() {}

  public static Recommendation advice(String name) {
    return ENGINE.evaluate(AnkleCases.named(name));
  }

  public static WhatMatters matters(String name) {
    return WhatMatters.of(ENGINE, advice(name));
  }

  public static Conditions conditions(String name) {
    return Conditions.of(ENGINE, matters(name));
  }

  public static Margins margins(String name) {
    return Margins.of(ENGINE, advice(name));
  }

  /** The smallest changes of a case for the goal of that name. */
  public static SmallestChange change(String name, String wanted) {
    Goal goal = Goals.one(ENGINE.protocol(), wanted);
    return SmallestChange.of(ENGINE, advice(name), goal, 2);
  }
}
