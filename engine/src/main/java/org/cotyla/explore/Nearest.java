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
import org.jspecify.annotations.Nullable;

/** The value of one finding, nearest to what is known of it, at which all claims can be true. */
final class Nearest {

  private final Datum datum;
  private final CaseSearch search;
  private final List<Claim> others;
  private Optional<Value> line = Optional.empty();
  private boolean proven = true;

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

  /**
   * Whether it is proven that no nearer value does, on a grid of one decimal more than is recorded.
   */
  boolean isProven() {
    return proven;
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
    Answer answer = search.find(new Claim.All(all));
    if (answer instanceof Answer.Undecided) {
      proven = false;
    }
    return answer instanceof Answer.Found found ? Optional.of(found) : Optional.empty();
  }

  private int places(ValueSet piece) {
    List<String> choices = datum.field().symbol().choices();
    int at = choices.indexOf(piece.values().get(0).plain());
    return datum.value().values().values().stream()
        .mapToInt(value -> Math.abs(choices.indexOf(value.plain()) - at))
        .min()
        .orElse(0);
  }

  /** Whether the piece lies above all that is known; an end that is missing lies above nothing. */
  private boolean isAbove(ValueSet piece) {
    Value low = piece.hull().low();
    Value known = datum.value().values().hull().high();
    return low != null && known != null && low.compareTo(known) >= 0;
  }

  /** The end on the side of what is known; every piece has it, since it holds nothing known. */
  private BigDecimal nearEnd(ValueSet piece) {
    return number(isAbove(piece) ? piece.hull().low() : piece.hull().high());
  }

  private BigDecimal distance(ValueSet piece) {
    Interval known = datum.value().values().hull();
    if (isAbove(piece)) {
      return nearEnd(piece).subtract(number(known.high()));
    }
    // Without an end below, all that is not above lies in a gap of what is known.
    return known.low() == null
        ? BigDecimal.ZERO
        : number(known.low()).subtract(nearEnd(piece)).max(BigDecimal.ZERO);
  }

  private static BigDecimal number(@Nullable Value end) {
    if (end instanceof Value.NumberValue number) {
      return number.number();
    }
    throw new IllegalStateException("not a number, or no end: " + end);
  }

  /** The end of the class on this side; just beyond it; or by halving, when formulas cut it. */
  private Answer.Found closest(ValueSet piece, Answer.Found found) {
    boolean above = isAbove(piece);
    Interval hull = piece.hull();
    BigDecimal end = nearEnd(piece);
    boolean included = above ? hull.lowIncluded() : hull.highIncluded();
    Optional<Value> first =
        included ? Optional.of(Value.of(end)) : JustBeyond.line(end, piece, above, decimals(end));
    Optional<Answer.Found> at = first.flatMap(value -> in(ValueSet.of(value)));
    if (at.isPresent()) {
      line = included ? Optional.empty() : Optional.of(Value.of(end));
      return at.get();
    }
    return halved(piece, end, found);
  }

  private int decimals(BigDecimal end) {
    Interval known = datum.value().values().hull();
    return Math.max(scale(end), Math.max(scale(known.low()), scale(known.high())));
  }

  private static int scale(@Nullable Value end) {
    return end instanceof Value.NumberValue number ? scale(number.number()) : 0;
  }

  private static int scale(BigDecimal number) {
    return Math.max(0, number.stripTrailingZeros().scale());
  }

  /** On a grid of one decimal more than is recorded; where the grid has no such value, as found. */
  private Answer.Found halved(ValueSet piece, BigDecimal end, Answer.Found found) {
    BigDecimal far = number(value(found));
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
    Value last = on(end, sign, grid, low);
    ValueSet passed = piece.intersect(between(Value.of(end), last));
    // Single values were tried; whether one between them does is asked of all at once.
    if (!passed.isEmpty() && in(passed).isPresent()) {
      proven = false;
    }
    return pastLine(last, sign, best);
  }

  private static ValueSet between(Value one, Value other) {
    boolean ascending = one.compareTo(other) <= 0;
    Value low = ascending ? one : other;
    Value high = ascending ? other : one;
    return ValueSet.between(ValueType.NUMBER, low, true, high, true);
  }

  private Value value(Answer.Found found) {
    return found
        .findings()
        .datum(datum.field().name())
        .flatMap(now -> now.value().single())
        .orElseThrow();
  }

  private static Value on(BigDecimal end, BigDecimal sign, BigDecimal grid, BigInteger steps) {
    return Value.of(end.add(sign.multiply(grid).multiply(new BigDecimal(steps))));
  }

  /** Where the last value that does not do is a round one, it is the line. */
  private Answer.Found pastLine(Value last, BigDecimal sign, Answer.Found best) {
    BigDecimal round = number(last);
    int usual = decimals(round.setScale(0, RoundingMode.FLOOR));
    boolean onRound = scale(value(best)) <= usual;
    if (onRound || scale(round) > usual) {
      return best;
    }
    line = Optional.of(last);
    ValueSet allowed = datum.field().allowed();
    return JustBeyond.line(round, allowed, sign.signum() > 0, decimals(round))
        .flatMap(value -> in(ValueSet.of(value)))
        .orElse(best);
  }
}
