package org.cotyla.audit;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import org.apache.commons.statistics.distribution.NormalDistribution;

/**
 * How many are free of an event after a time, by Kaplan and Meier, with 95 % limits.
 *
 * <p>At each time t with d events among n at risk the share S is multiplied by 1 − d/n. The
 * variance of log S is Greenwood's Σ d/(n(n − d)) = V, and the limits are S raised to exp(± z √V /
 * log S), which are those of log(−log S) and so never leave 0 to 1. Who is censored at a time is
 * still at risk at it.
 *
 * @param subjects how many were followed
 * @param events how many had the event
 * @param steps one for each time with an event
 * @param ends after how many days each was last known, in order: for numbers at risk
 */
public record Survival(long subjects, long events, List<Step> steps, List<Long> ends) {

  private static final double DEVIATIONS =
      NormalDistribution.of(0, 1).inverseCumulativeProbability(1 - Proportion.MISSES / 2);

  public Survival {
    steps = List.copyOf(steps);
    ends = List.copyOf(ends);
  }

  /** One who was followed: until when, in days, and whether the event ended it. */
  public record Followed(long days, boolean event) {}

  /**
   * A time with an event.
   *
   * @param days the time
   * @param atRisk how many were at risk just before it
   * @param events how many events
   * @param free the share that is free of the event after it
   * @param lower the lower limit; 0 when nobody is left and none can be reckoned
   * @param upper the upper limit; 1 when nobody is left and none can be reckoned
   */
  public record Step(
      long days, long atRisk, long events, double free, double lower, double upper) {}

  /** The curve of those who were followed. */
  public static Survival of(List<Followed> followed) {
    TreeMap<Long, long[]> times = new TreeMap<>();
    for (Followed one : followed) {
      long[] counts = times.computeIfAbsent(one.days(), any -> new long[2]);
      counts[one.event() ? 0 : 1]++;
    }
    List<Step> steps = new ArrayList<>();
    long atRisk = followed.size();
    double free = 1;
    double variance = 0;
    for (var time : times.entrySet()) {
      long events = time.getValue()[0];
      if (events > 0) {
        free *= 1 - (double) events / atRisk;
        variance += (double) events / atRisk / (atRisk - events);
        steps.add(step(time.getKey(), atRisk, events, free, variance));
      }
      atRisk -= events + time.getValue()[1];
    }
    return new Survival(
        followed.size(),
        followed.stream().filter(Followed::event).count(),
        steps,
        followed.stream().map(Followed::days).sorted().toList());
  }

  private static Step step(long days, long atRisk, long events, double free, double variance) {
    if (events == atRisk) {
      return new Step(days, atRisk, events, 0, 0, 1);
    }
    double reach = DEVIATIONS * Math.sqrt(variance) / Math.log(free);
    return new Step(
        days,
        atRisk,
        events,
        free,
        Math.pow(free, Math.exp(-reach)),
        Math.pow(free, Math.exp(reach)));
  }

  /** How many are still followed, and had no event before, at a time. */
  public long atRisk(long days) {
    return ends.stream().filter(end -> end >= days).count();
  }

  /** The last time at which anybody was followed. */
  public long lastDay() {
    return ends.isEmpty() ? 0 : ends.get(ends.size() - 1);
  }
}
