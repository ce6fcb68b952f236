package org.cotyla.explore;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.cotyla.finding.Datum;
import org.cotyla.finite.Answer;
import org.cotyla.finite.CaseSearch;
import org.cotyla.finite.Claim;
import org.cotyla.value.Interval;
import org.cotyla.value.PossibleValues;
import org.cotyla.value.Value;
import org.cotyla.value.ValueSet;
import org.cotyla.value.ValueType;

/** The value of one finding, nearest to what is known of it, at which all claims can be true. */
final class Nearest {

  private final Datum datum;
  private final CaseSearch search;
  private final List<Claim> others;
  private Optional<Value> line = Optional.empty();

  /**
   * @param others what else is to be true; as it stands now
   */
  Nearest(Datum datum, CaseSearch search, List<Claim> others) {
    this.datum = datum;
    this.search = search;
    this.others = List.copyOf(others);
  }

  /** The line beyond which the value lies, when it does not lie on it. */
  Optional<Value> line() {
    return line;
  }

  /** The case with the nearest value, no farther than in the case that is known. */
  Answer.Found find(FieldClasses classes, Answer.Found best) {
    ValueSet differing = datum.field().allowed().intersect(datum.value().values().complement());
    List<ValueSet> pieces = new ArrayList<>(classes.of(datum.field(), differing));
    if (datum.field().symbol().type() == ValueType.NUMBER) {
      pieces.sort(Comparator.comparing(this::distance));
    } else if (datum.field().symbol().isChoice()) {
      pieces.sort(Comparator.comparing(this::places));
    }
    for (ValueSet piece : pieces) {
      Optional<Answer.Found> found = in(piece);
      if (found.isPresent()) {
        return piece.type() == ValueType.NUMBER ? closest(piece, found.get()) : found.get();
      }
    }
    return best;
  }

  private Optional<Answer.Found> in(ValueSet values) {
    List<Claim> all = new ArrayList<>(others);
    all.add(new Claim.Is(datum.field().symbol(), PossibleValues.of(values)));
    return search.find(new Claim.All(all)) instanceof Answer.Found found
        ? Optional.of(found)
        : Optional.empty();
  }

  private int places(ValueSet piece) {
    List<String> choices = datum.field().symbol().choices();
    int at = choices.indexOf(piece.values().get(0).plain());
    return datum.value().values().values().stream()
        .mapToInt(value -> Math.abs(choices.indexOf(value.plain()) - at))
        .min()
        .orElse(0);
  }

  private boolean isAbove(ValueSet piece) {
    return number(piece.hull().low(), BigDecimal.ZERO)
            .compareTo(number(datum.value().values().hull().high(), BigDecimal.ZERO))
        >= 0;
  }

  private BigDecimal distance(ValueSet piece) {
    Interval known = datum.value().values().hull();
    return isAbove(piece)
        ? number(piece.hull().low(), BigDecimal.ZERO)
            .subtract(number(known.high(), BigDecimal.ZERO))
        : number(known.low(), BigDecimal.ZERO)
            .subtract(number(piece.hull().high(), BigDecimal.ZERO));
  }

  private static BigDecimal number(
      @org.jspecify.annotations.Nullable Value end, BigDecimal otherwise) {
    return end instanceof Value.NumberValue number ? number.number() : otherwise;
  }

  /** The end of the class on this side; just beyond it; or by halving, when formulas cut it. */
  private Answer.Found closest(ValueSet piece, Answer.Found found) {
    boolean above = isAbove(piece);
    Interval hull = piece.hull();
    BigDecimal end = number(above ? hull.low() : hull.high(), BigDecimal.ZERO);
    boolean included = above ? hull.lowIncluded() : hull.highIncluded();
    Optional<Value> first =
        included ? Optional.of(Value.of(end)) : Steps.beyond(end, piece, above, decimals(end));
    Optional<Answer.Found> at = first.flatMap(value -> in(ValueSet.of(value)));
    if (at.isPresent()) {
      line = included ? Optional.empty() : Optional.of(Value.of(end));
      return at.get();
    }
    return halved(end, found);
  }

  private int decimals(BigDecimal end) {
    Interval known = datum.value().values().hull();
    return Math.max(
        scale(end),
        Math.max(
            scale(number(known.low(), BigDecimal.ZERO)),
            scale(number(known.high(), BigDecimal.ZERO))));
  }

  private static int scale(BigDecimal number) {
    return Math.max(0, number.stripTrailingZeros().scale());
  }

  /** On a grid of one decimal more than is recorded; where the grid has no such value, as found. */
  private Answer.Found halved(BigDecimal end, Answer.Found found) {
    BigDecimal far =
        number(
            found
                .findings()
                .datum(datum.field().name())
                .orElseThrow()
                .value()
                .single()
                .orElseThrow(),
            end);
    BigDecimal grid = BigDecimal.ONE.movePointLeft(decimals(end) + 1);
    BigInteger low = BigInteger.ZERO;
    BigInteger high = far.subtract(end).abs().divide(grid, 0, RoundingMode.CEILING).toBigInteger();
    BigDecimal sign = far.compareTo(end) >= 0 ? BigDecimal.ONE : BigDecimal.ONE.negate();
    Answer.Found best = found;
    while (high.subtract(low).compareTo(BigInteger.ONE) > 0) {
      BigInteger middle = low.add(high).shiftRight(1);
      Optional<Answer.Found> at = in(ValueSet.of(on(end, sign, grid, middle)));
      if (at.isPresent()) {
        best = at.get();
        high = middle;
      } else {
        low = middle;
      }
    }
    return pastLine(on(end, sign, grid, low), sign, best);
  }

  private static Value on(BigDecimal end, BigDecimal sign, BigDecimal grid, BigInteger steps) {
    return Value.of(end.add(sign.multiply(grid).multiply(new BigDecimal(steps))));
  }

  /** Where the last value that does not do is a round one, it is the line. */
  private Answer.Found pastLine(Value last, BigDecimal sign, Answer.Found best) {
    BigDecimal round = number(last, BigDecimal.ZERO);
    int usual = decimals(round.setScale(0, RoundingMode.FLOOR));
    boolean onRound =
        best.findings().datum(datum.field().name()).flatMap(now -> now.value().single()).stream()
            .anyMatch(value -> scale(number(value, BigDecimal.ZERO)) <= usual);
    if (onRound || scale(round) > usual) {
      return best;
    }
    line = Optional.of(last);
    ValueSet allowed = datum.field().allowed();
    return Steps.beyond(round, allowed, sign.signum() > 0, decimals(round))
        .flatMap(value -> in(ValueSet.of(value)))
        .orElse(best);
  }
}
