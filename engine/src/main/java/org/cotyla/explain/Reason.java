package org.cotyla.explain;

import java.math.BigDecimal;
import java.util.List;
import org.cotyla.evaluate.Contribution;
import org.cotyla.evaluate.Firing.TestSeen;
import org.cotyla.protocol.Effect;
import org.cotyla.protocol.Protocol;
import org.cotyla.protocol.Row;
import org.cotyla.protocol.Source;
import org.cotyla.value.Truth;

/**
 * A row that speaks for an option, against it or rules it out, with all that it rests on.
 *
 * @param contribution what it does, and what it saw
 * @param sources where its statement comes from, each with its certainty
 */
public record Reason(Contribution contribution, List<Source> sources) {

  public Reason {
    sources = List.copyOf(sources);
  }

  static Reason of(Contribution contribution, Protocol protocol) {
    List<Source> sources =
        contribution.firing().row().sources().stream()
            .flatMap(key -> protocol.source(key).stream())
            .toList();
    return new Reason(contribution, sources);
  }

  public Row row() {
    return contribution.firing().row();
  }

  public Effect effect() {
    return contribution.effect();
  }

  /** What it adds to the sum, below 0 when it opposes; 0 when it rules out. */
  public BigDecimal points() {
    return contribution.points();
  }

  /** Whether it counts whatever the open data are; otherwise it may. */
  public boolean isCertain() {
    return contribution.isCertain();
  }

  /** Its tests with the values that met them, in the order of the sheet. */
  public List<TestSeen> tests() {
    return contribution.firing().tests();
  }

  /** The tests that hang on open data: it counts only if they hold. */
  public List<TestSeen> openTests() {
    return tests().stream().filter(test -> test.truth() == Truth.OPEN).toList();
  }
}
