package org.cotyla.compare;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.cotyla.compare.Difference.Kind;
import org.cotyla.evaluate.Recommendation;
import org.cotyla.finite.Claim;
import org.cotyla.finite.Claim.Weighted;
import org.cotyla.value.Truth;
import org.cotyla.value.Value;

/**
 * A sum of points or numbers.
 *
 * @param about what is summed
 * @param unit its unit, or what is counted
 * @param before what adds to it in the old protocol
 * @param after what adds to it in the new protocol
 * @param kind the sort of difference
 */
record SumAspect(String about, String unit, List<Weighted> before, List<Weighted> after, Kind kind)
    implements Aspect {

  SumAspect {
    before = List.copyOf(before);
    after = List.copyOf(after);
  }

  @Override
  public Claim differs() {
    BigDecimal step = step();
    return new Claim.Any(
        List.of(new Claim.AddUpTo(change(1), step), new Claim.AddUpTo(change(-1), step)));
  }

  /** What the new sum is more than the old. */
  private List<Weighted> change(int sign) {
    List<Weighted> change = new ArrayList<>();
    BigDecimal plus = BigDecimal.valueOf(sign);
    after.forEach(term -> change.add(new Weighted(term.claim(), term.weight().multiply(plus))));
    before.forEach(
        term -> change.add(new Weighted(term.claim(), term.weight().multiply(plus.negate()))));
    return change;
  }

  /** The smallest decimal place of any weight. */
  private BigDecimal step() {
    int decimals =
        Stream.concat(before.stream(), after.stream())
            .mapToInt(term -> Math.max(0, term.weight().stripTrailingZeros().scale()))
            .max()
            .orElse(0);
    return BigDecimal.ONE.movePointLeft(decimals);
  }

  @Override
  public Optional<Difference> difference(List<Recommendation> answers) {
    BigDecimal more = BigDecimal.ZERO;
    for (Weighted term : change(1)) {
      Truth truth = term.claim().truth(answers);
      if (truth == Truth.OPEN) {
        return Optional.empty();
      }
      more = truth == Truth.TRUE ? more.add(term.weight()) : more;
    }
    if (more.signum() == 0) {
      return Optional.empty();
    }
    Claim exactly =
        new Claim.All(
            List.of(
                new Claim.AddUpTo(change(1), more),
                new Claim.Not(new Claim.AddUpTo(change(1), more.add(step())))));
    String words =
        Value.of(more.abs()).plain()
            + (unit.isEmpty() ? "" : " " + unitFor(more))
            + (more.signum() > 0 ? " more" : " fewer");
    return Optional.of(new Difference(exactly, kind, about, Optional.empty(), Optional.of(words)));
  }

  private String unitFor(BigDecimal more) {
    boolean one = more.abs().compareTo(BigDecimal.ONE) == 0;
    return one && unit.equals("points") ? "point" : unit;
  }
}
