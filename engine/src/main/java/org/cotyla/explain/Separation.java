package org.cotyla.explain;

import java.math.BigDecimal;
import org.cotyla.protocol.Effect;

/**
 * A row that separates two options: it speaks for or against one of them alone.
 *
 * @param reason the row
 * @param option the name of the option that it speaks of
 * @param toAsked what it adds to the lead of the option that was asked about over the other; below
 *     0 when it widens the gap
 */
public record Separation(Reason reason, String option, BigDecimal toAsked) {

  /** Whether it counts whatever the open data are; otherwise it may. */
  public boolean isCertain() {
    return reason.isCertain();
  }

  /** Whether it bars an option, which no points outweigh. */
  public boolean isRuling() {
    return reason.effect() == Effect.RULE_OUT;
  }
}
