package org.cotyla.evaluate;

import java.math.BigDecimal;
import org.cotyla.protocol.Effect;

/**
 * What one row does to an option.
 *
 * @param firing the row
 * @param effect what it does
 * @param points what it adds to the sum, below 0 when it opposes; 0 when it rules out
 */
public record Contribution(Firing firing, Effect effect, BigDecimal points) {

  /** Whether it counts whatever the open data are. */
  public boolean isCertain() {
    return firing.standing() == Standing.DECIDES;
  }
}
