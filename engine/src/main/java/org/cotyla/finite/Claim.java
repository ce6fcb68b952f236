package org.cotyla.finite;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.cotyla.evaluate.AnswerScope;
import org.cotyla.evaluate.DecisionResult;
import org.cotyla.evaluate.Firing;
import org.cotyla.evaluate.RankedOption;
import org.cotyla.evaluate.RankedOption.Availability;
import org.cotyla.evaluate.RankingResult;
import org.cotyla.evaluate.Recommendation;
import org.cotyla.expression.PreparedTest;
import org.cotyla.expression.Symbol;
import org.cotyla.protocol.DecisionTable;
import org.cotyla.protocol.Ranking;
import org.cotyla.protocol.Row;
import org.cotyla.value.PossibleValues;
import org.cotyla.value.Truth;

/**
 * Something that is true or false of a case and its answer. Immutable.
 *
 * <p>A claim can be looked for among all cases, and it can be read off an answer; the two agree.
 * Where several protocols are asked at once, a claim speaks of the one named by {@link Of}, or of
 * the first.
 */
public sealed interface Claim {

  /**
   * Whether the claim is true of the answers of each protocol to one case; open when that hangs on
   * what the case leaves open.
   */
  default Truth truth(List<Recommendation> answers) {
    return truth(answers, 0);
  }

  /** The same for a single protocol. */
  default Truth truth(Recommendation answer) {
    return truth(List.of(answer), 0);
  }

  /**
   * @param answers the answer of each protocol
   * @param side which of them the claim speaks of
   */
  Truth truth(List<Recommendation> answers, int side);

  /** The claim about another of the protocols, counted from 0. */
  record Of(int other, Claim claim) implements Claim {
    @Override
    public Truth truth(List<Recommendation> answers, int side) {
      return claim.truth(answers, other);
    }
  }

  /** All the tests of a row hold; a default row matches when no other row does. */
  record Matches(DecisionTable table, Row row) implements Claim {
    @Override
    public Truth truth(List<Recommendation> answers, int side) {
      if (isDefault(table, row)) {
        return new NoRow(table).truth(answers, side);
      }
      return firing(answers.get(side), table, row)
          .map(firing -> firing.certain() ? Truth.TRUE : Truth.OPEN)
          .orElse(Truth.FALSE);
    }
  }

  /** A row is part of its table's result; a default row is when no other row matches. */
  record Counts(DecisionTable table, Row row) implements Claim {
    @Override
    public Truth truth(List<Recommendation> answers, int side) {
      if (isDefault(table, row)) {
        return new NoRow(table).truth(answers, side);
      }
      return firing(answers.get(side), table, row)
          .map(Firing::standing)
          .map(
              standing ->
                  switch (standing) {
                    case DECIDES -> Truth.TRUE;
                    case MAY_DECIDE -> Truth.OPEN;
                    case SET_ASIDE -> Truth.FALSE;
                  })
          .orElse(Truth.FALSE);
    }
  }

  /** No row of the table matches. */
  record NoRow(DecisionTable table) implements Claim {
    @Override
    public Truth truth(List<Recommendation> answers, int side) {
      DecisionResult result = result(answers.get(side), table);
      if (result.firings().stream().anyMatch(Firing::certain)) {
        return Truth.FALSE;
      }
      return result.firings().isEmpty() ? Truth.TRUE : Truth.OPEN;
    }
  }

  /** A name's value is one of these. */
  record Is(Symbol name, PossibleValues among) implements Claim {
    @Override
    public Truth truth(List<Recommendation> answers, int side) {
      PossibleValues value = AnswerScope.of(answers.get(side)).valueOf(name);
      if (among.containsAll(value)) {
        return Truth.TRUE;
      }
      boolean some =
          (among.orNothing() && value.orNothing()) || among.values().intersects(value.values());
      return some ? Truth.OPEN : Truth.FALSE;
    }
  }

  /** A cell's test holds. */
  record Holds(Symbol input, PreparedTest test) implements Claim {
    @Override
    public Truth truth(List<Recommendation> answers, int side) {
      AnswerScope scope = AnswerScope.of(answers.get(side));
      return test.truth(scope.valueOf(input), scope);
    }
  }

  /** An option comes first in a ranking. */
  record First(Ranking ranking, String option) implements Claim {
    @Override
    public Truth truth(List<Recommendation> answers, int side) {
      RankingResult result = answers.get(side).ranking(ranking.name()).orElseThrow();
      boolean can = result.option(option).filter(RankedOption::canBeFirst).isPresent();
      return !can ? Truth.FALSE : result.firstIsCertain() ? Truth.TRUE : Truth.OPEN;
    }
  }

  /** A row rules an option out. */
  record RuledOut(Ranking ranking, String option) implements Claim {
    @Override
    public Truth truth(List<Recommendation> answers, int side) {
      Optional<Availability> availability =
          answers
              .get(side)
              .ranking(ranking.name())
              .flatMap(result -> result.option(option))
              .map(RankedOption::availability);
      return switch (availability.orElseThrow()) {
        case RULED_OUT -> Truth.TRUE;
        case MAY_BE_RULED_OUT -> Truth.OPEN;
        case AVAILABLE -> Truth.FALSE;
      };
    }
  }

  /** The opposite. */
  record Not(Claim claim) implements Claim {
    @Override
    public Truth truth(List<Recommendation> answers, int side) {
      return claim.truth(answers, side).not();
    }
  }

  /** A claim and what it adds to a sum when it is true. */
  record Weighted(Claim claim, BigDecimal weight) {}

  /** The weights of those that are true add up to so much, or more. */
  record AddUpTo(List<Weighted> terms, BigDecimal least) implements Claim {
    public AddUpTo {
      terms = List.copyOf(terms);
    }

    @Override
    public Truth truth(List<Recommendation> answers, int side) {
      BigDecimal low = BigDecimal.ZERO;
      BigDecimal high = BigDecimal.ZERO;
      for (Weighted term : terms) {
        Truth truth = term.claim().truth(answers, side);
        BigDecimal weight = term.weight();
        boolean open = truth == Truth.OPEN;
        boolean adds = truth == Truth.TRUE;
        low = adds || (open && weight.signum() < 0) ? low.add(weight) : low;
        high = adds || (open && weight.signum() > 0) ? high.add(weight) : high;
      }
      if (low.compareTo(least) >= 0) {
        return Truth.TRUE;
      }
      return high.compareTo(least) < 0 ? Truth.FALSE : Truth.OPEN;
    }
  }

  /** All of them are true. */
  record All(List<Claim> claims) implements Claim {
    public All {
      claims = List.copyOf(claims);
    }

    @Override
    public Truth truth(List<Recommendation> answers, int side) {
      return claims.stream()
          .map(claim -> claim.truth(answers, side))
          .reduce(Truth.TRUE, Truth::and);
    }
  }

  /** At least one of them is true. */
  record Any(List<Claim> claims) implements Claim {
    public Any {
      claims = List.copyOf(claims);
    }

    @Override
    public Truth truth(List<Recommendation> answers, int side) {
      return claims.stream()
          .map(claim -> claim.truth(answers, side))
          .reduce(Truth.FALSE, Truth::or);
    }
  }

  /** So many of them or more are true. */
  record AtLeast(int count, List<Claim> claims) implements Claim {
    public AtLeast {
      claims = List.copyOf(claims);
    }

    @Override
    public Truth truth(List<Recommendation> answers, int side) {
      List<Truth> truths = claims.stream().map(claim -> claim.truth(answers, side)).toList();
      long certain = truths.stream().filter(Truth.TRUE::equals).count();
      long open = truths.stream().filter(Truth.OPEN::equals).count();
      return certain >= count ? Truth.TRUE : certain + open >= count ? Truth.OPEN : Truth.FALSE;
    }
  }

  private static boolean isDefault(DecisionTable table, Row row) {
    return table.otherwise().filter(other -> other == row).isPresent();
  }

  private static DecisionResult result(Recommendation answer, DecisionTable table) {
    return answer.decisions().stream()
        .filter(decision -> decision.table() == table)
        .findFirst()
        .orElseThrow();
  }

  private static Optional<Firing> firing(Recommendation answer, DecisionTable table, Row row) {
    return result(answer, table).firings().stream()
        .filter(firing -> firing.row() == row)
        .findFirst();
  }
}
