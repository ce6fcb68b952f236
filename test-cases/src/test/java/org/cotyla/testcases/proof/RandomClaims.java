package org.cotyla.testcases.proof;

import java.time.LocalDate;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.cotyla.expression.Symbol;
import org.cotyla.finite.Claim;
import org.cotyla.protocol.DecisionTable;
import org.cotyla.protocol.Protocol;
import org.cotyla.protocol.Ranking;
import org.cotyla.protocol.Row;
import org.cotyla.value.PossibleValues;
import org.cotyla.value.Value;
import org.cotyla.value.ValueSet;
import org.cotyla.value.ValueType;

/** Random claims of every kind about a protocol, some of them made of others. */
final class RandomClaims {

  private final Random random;
  private final List<Protocol> protocols;

  /** Claims about the protocols, which are asked together in this order. */
  RandomClaims(Random random, List<Protocol> protocols) {
    this.random = random;
    this.protocols = protocols;
  }

  /**
   * A claim.
   *
   * @param depth how often claims may be made of others
   */
  Claim next(int depth) {
    return next(depth, 0);
  }

  private Claim next(int depth, int side) {
    int dice = random.nextInt(depth > 0 ? 14 : 8);
    if (dice >= 8) {
      return switch (dice) {
        case 8, 9 -> new Claim.Not(next(depth - 1, side));
        case 10 -> new Claim.Any(some(depth - 1, side));
        case 11 -> of(depth, random.nextInt(protocols.size()));
        default -> new Claim.All(some(depth - 1, side));
      };
    }
    return simple(dice, protocols.get(side));
  }

  private Claim of(int depth, int other) {
    return new Claim.Of(other, next(depth - 1, other));
  }

  private List<Claim> some(int depth, int side) {
    int count = 1 + random.nextInt(3);
    return IntStream.range(0, count).mapToObj(i -> next(depth, side)).toList();
  }

  private Claim simple(int dice, Protocol protocol) {
    DecisionTable table = pick(protocol.decisions());
    Ranking ranking = pick(protocol.rankings());
    String option = pick(ranking.options()).name();
    return switch (dice) {
      case 0 ->
          new Claim.Matches(table, random.nextInt(4) == 0 ? lastRow(table) : pick(table.rows()));
      case 1 -> new Claim.Counts(table, pick(table.rows()));
      case 2 -> new Claim.Counts(table, lastRow(table));
      case 3 -> new Claim.NoRow(table);
      case 4 -> is(pick(protocol.vocabulary().symbols()));
      case 5 -> new Claim.First(ranking, option);
      case 6 -> new Claim.RuledOut(ranking, option);
      default -> holds(table);
    };
  }

  private static Row lastRow(DecisionTable table) {
    return table.otherwise().orElse(table.rows().get(table.rows().size() - 1));
  }

  private Claim holds(DecisionTable table) {
    Row row = pick(table.rows());
    int column = random.nextInt(table.inputs().size());
    return new Claim.Holds(table.inputs().get(column).symbol(), row.tests().get(column).prepared());
  }

  private Claim is(Symbol symbol) {
    if (random.nextInt(5) == 0) {
      return new Claim.Is(symbol, PossibleValues.nothing(symbol.type()));
    }
    return new Claim.Is(symbol, new PossibleValues(region(symbol), random.nextInt(4) == 0));
  }

  private ValueSet region(Symbol symbol) {
    if (symbol.type() == ValueType.NUMBER) {
      int low = random.nextInt(9) - 1;
      return random.nextBoolean()
          ? ValueSet.of(Value.of(low))
          : ValueSet.between(
              ValueType.NUMBER,
              Value.of(low),
              random.nextBoolean(),
              Value.of(low + 1 + random.nextInt(4)),
              random.nextBoolean());
    }
    return ValueSet.of(word(symbol));
  }

  private Value word(Symbol symbol) {
    return switch (symbol.type()) {
      case YES_NO -> Value.of(random.nextBoolean());
      case DATE -> Value.of(LocalDate.of(2026, 1, 1 + random.nextInt(6)));
      default ->
          Value.of(
              pick(symbol.isChoice() ? symbol.choices() : List.of("alpha", "beta gamma", "delta")));
    };
  }

  private <T> T pick(List<T> list) {
    return list.get(random.nextInt(list.size()));
  }
}
