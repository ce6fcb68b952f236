package org.cotyla.evaluate;

import java.math.BigDecimal;
import java.util.List;
import org.cotyla.value.Value;

/**
 * An option's sum of points.
 *
 * @param now the sum of what is certain
 * @param least the least that it can become
 * @param most the most that it can become
 */
public record Points(BigDecimal now, BigDecimal least, BigDecimal most) {

  static Points of(List<Contribution> contributions) {
    BigDecimal now = BigDecimal.ZERO;
    BigDecimal against = BigDecimal.ZERO;
    BigDecimal favour = BigDecimal.ZERO;
    for (Contribution contribution : contributions) {
      BigDecimal points = contribution.points();
      if (contribution.isCertain()) {
        now = now.add(points);
      } else if (points.signum() < 0) {
        against = against.add(points);
      } else {
        favour = favour.add(points);
      }
    }
    return new Points(now, now.add(against), now.add(favour));
  }

  public boolean isCertain() {
    return least.compareTo(most) == 0;
  }

  /** As people read it: {@code 7}, or {@code 4 (0 to 9)}. */
  public String plain() {
    return isCertain() ? plain(now) : plain(now) + " (" + plain(least) + " to " + plain(most) + ")";
  }

  private static String plain(BigDecimal points) {
    return Value.of(points).plain();
  }
}
