package org.cotyla.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.cotyla.expression.CellTest;
import org.cotyla.expression.PreparedTest;
import org.cotyla.expression.Relation;
import org.cotyla.expression.Symbol;
import org.cotyla.finite.Claim;
import org.cotyla.value.PossibleValues;

/** What one finding must be for a difference to be there. */
public sealed interface Condition {

  /** The finding by its name. */
  String name();

  /** In words: {@code width above 28 mm up to 30 mm}. */
  String words();

  Claim claim();

  /**
   * The finding has one of these values.
   *
   * @param unit its unit; empty for none
   * @param choices the values of a choice in order
   * @param all everything that it can be
   * @param oldName the name in the old protocol, when that has it
   * @param newName the name in the new protocol
   * @param steady whether both protocols have the same value of it in every case
   * @param given whether a case states it
   * @param before its values by the old protocol
   * @param after its values by the new protocol; the same unless the two can differ
   */
  record Within(
      String name,
      String unit,
      List<String> choices,
      PossibleValues all,
      Optional<Symbol> oldName,
      Optional<Symbol> newName,
      boolean steady,
      boolean given,
      PossibleValues before,
      PossibleValues after)
      implements Condition {

    public Within {
      choices = List.copyOf(choices);
    }

    @Override
    public String words() {
      ConditionWords words = new ConditionWords(name, unit, choices, all, given);
      if (steady || before.equals(after)) {
        return words.of(after);
      }
      if (after.equals(all)) {
        return name + " " + words.valueOf(before) + " before";
      }
      return before.equals(all)
          ? words.of(after) + " now"
          : words.of(after) + " (was " + words.valueOf(before) + ")";
    }

    @Override
    public Claim claim() {
      List<Claim> claims = new ArrayList<>();
      boolean one = steady && newName.isPresent();
      newName.ifPresent(is -> claims.add(new Claim.Of(1, new Claim.Is(is, after))));
      if (!one) {
        oldName.ifPresent(was -> claims.add(new Claim.Of(0, new Claim.Is(was, before))));
      }
      return claims.size() == 1 ? claims.get(0) : new Claim.All(claims);
    }
  }

  /** A test against another finding holds, or does not. */
  record Tested(String name, int side, Symbol input, PreparedTest test, boolean holds)
      implements Condition {

    @Override
    public String words() {
      return name + (holds ? " " : " not ") + asked();
    }

    /** The test as people say it. */
    private String asked() {
      if (test.test() instanceof CellTest.Compared compared && compared.relation().isOrder()) {
        return said(compared.relation()) + " " + compared.endpoint().print();
      }
      return test.test() instanceof CellTest.Between between
          ? (between.lowIncluded() ? "from " : "above ")
              + between.low().print()
              + (between.highIncluded() ? " up to " : " below ")
              + between.high().print()
          : test.test().print();
    }

    private static String said(Relation relation) {
      return switch (relation) {
        case LESS -> "below";
        case AT_MOST -> "at most";
        case GREATER -> "above";
        case AT_LEAST -> "at least";
        case EQUAL, UNEQUAL -> relation.sign();
      };
    }

    /**
     * Whether the other is the same test by the other protocol, in which it may come out otherwise.
     */
    boolean isAlsoAskedBy(Condition other) {
      return other instanceof Tested tested
          && tested.side != side
          && tested.name.equals(name)
          && tested.asked().equals(asked());
    }

    @Override
    public Claim claim() {
      Claim claim = new Claim.Of(side, new Claim.Holds(input, test));
      return holds ? claim : new Claim.Not(claim);
    }
  }
}
