package org.cotyla.cli;

import java.util.Optional;
import java.util.function.Supplier;
import org.cotyla.issue.Issues;
import org.cotyla.issue.RejectedException;

/** Collects the faults of several readings, so that one run says them all. Used once. */
final class Faults {

  private final Issues issues = new Issues();

  /** What the reading gives; nothing when it is refused. */
  <T> Optional<T> of(Supplier<T> reading) {
    try {
      return Optional.of(reading.get());
    } catch (RejectedException rejected) {
      issues.addAll(rejected.issues());
      return Optional.empty();
    }
  }

  /**
   * Ends the run when any reading was refused.
   *
   * @throws RejectedException listing every fault
   */
  void refuseIfAny() {
    if (issues.hasErrors()) {
      throw new RejectedException(issues.list());
    }
  }
}
