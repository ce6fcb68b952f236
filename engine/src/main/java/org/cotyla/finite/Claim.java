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
import org.cotyla.evaluate.Results;
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
  default Truth truth(List<Recommendation> answers, int side) {
    return holds(answers.stream().map(AnswerScope::of).toList(), side);
  }

  /**
   * @param results what each protocol comes to for one case, worked out as far as is needed
   * @param side which of them the claim speaks of
   */
  Truth holds(List<? extends Results> results, int side);

  /** The claim about another of the protocols, counted from 0. */
  record Of(int other, Claim claim) implements Claim {
    @Override
    public Truth holds(List<? extends Results> results, int side) {
      return claim.holds(results, other);
    }
  }

  /** All the tests of a row hold; a default row matches when no other row does. */
  record Matches(DecisionTable table, Row row) implements Claim {
    @Override
    public Truth holds(List<? extends Results> results, int side) {
      if (isDefault(table, row)) {
        return new NoRow(table).holds(results, side);
      }
      return firing(results.get(side), table, row)
          .map(firing -> firing.certain() ? Truth.TRUE : Truth.OPEN)
          .orElse(Truth.FALSE);
    }
  }

  /** A row is part of its table's result; a default row is when no other row matches. */
  record Counts(DecisionTable table, Row row) implements Claim {
    @Override
    public Truth holds(List<? extends Results> results, int side) {
      if (isDefault(table, row)) {
        return new NoRow(table).holds(results, side);
      }
      return firing(results.get(side), table, row)
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
    public Truth holds(List<? extends Results> results, int side) {
      DecisionResult result = results.get(side).decision(table);
      if (result.firings().stream().anyMatch(Firing::certain)) {
        return Truth.FALSE;
      }
      return result.firings().isEmpty() ? Truth.TRUE : Truth.OPEN;
    }
  }

  /** A name's value is one of these. */
  record Is(Symbol name, PossibleValues among) implements Claim {
    @Override
    public Truth holds(List<? extends Results> results, int side) {
      PossibleValues value = results.get(side).valueOf(name);
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
    public Truth holds(List<? extends Results> results, int side) {
      Results scope = results.get(side);
      return test.truth(scope.valueOf(input), scope);
    }
  }

  /** An option comes first in a ranking. */
  record First(Ranking ranking, String option) implements Claim {
    @Override
    public Truth holds(List<? extends Results> results, int side) {
      RankingResult result = results.get(side).ranking(ranking);
      boolean can = result.option(option).filter(RankedOption::canBeFirst).isPresent();
      return !can ? Truth.FALSE : result.firstIsCertain() ? Truth.TRUE : Truth.OPEN;
    }
  }

  /** A row rules an option out. */
  record RuledOut(Ranking ranking, String option) implements Claim {
    @Override
    public Truth holds(List<? extends Results> results, int side) {
      Optional<Availability> availability =
          results.get(side).ranking(ranking).option(option).map(RankedOption::availability);
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
    public Truth holds(List<? extends Results> results, int side) {
      return claim.holds(results, side).not();
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
    public Truth holds(List<? extends Results> results, int side) {
      BigDecimal low = BigDecimal.ZERO;
      BigDecimal high = BigDecimal.ZERO;
      for (Weighted term : terms) {
        Truth truth = term.claim().holds(results, side);
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
    public Truth holds(List<? extends Results> results, int side) {
      Truth all = Truth.TRUE;
      for (int i = 0; i < claims.size() && all != Truth.FALSE; i++) {
        all = all.and(claims.get(i).holds(results, side));
      }
      return all;
    }
  }

  /** At least one of them is true. */
  record Any(List<Claim> claims) implements Claim {
    public Any {
      claims = List.copyOf(claims);
    }

    @Override
    public Truth holds(List<? extends Results> results, int side) {
      Truth any = Truth.FALSE;
      for (int i = 0; i < claims.size() && any != Truth.TRUE; i++) {
        any = any.or(claims.get(i).holds(results, side));
      }
      return any;
    }
  }

  /** So many of them or more are true. */
  record AtLeast(int count, List<Claim> claims) implements Claim {
    public AtLeast {
      claims = List.copyOf(claims);
    }

    @Override
    public Truth holds(List<? extends Results> results, int side) {
      List<Truth> truths = claims.stream().map(claim -> claim.holds(results, side)).toList();
      long certain = truths.stream().filter(Truth.TRUE::equals).count();
      long open = truths.stream().filter(Truth.OPEN::equals).count();
      return certain >= count ? Truth.TRUE : certain + open >= count ? Truth.OPEN : Truth.FALSE;
    }
  }

  private static boolean isDefault(DecisionTable table, Row row) {
    return table.otherwise().filter(other -> other == row).isPresent();
  }

  private static Optional<Firing> firing(Results results, DecisionTable table, Row row) {
    return results.decision(table).firings().stream()
        .filter(firing -> firing.row() == row)
        .findFirst();
  }
}
