package org.cotyla.evaluate;

import java.util.List;
import org.cotyla.protocol.Effect;
import org.cotyla.protocol.Option;

/**
 * An option and how it stands.
 *
 * @param option the option
 * @param place its place, counted from 1; options that are ruled out come after all others
 * @param points its sum of points
 * @param availability whether a row rules it out
 * @param canBeFirst whether some way to fill in the open data puts it first
 * @param tiedWith the names of other options with the same points, when all are certain
 * @param contributions every row that speaks for or against it, in the order of the workbook
 */
public record RankedOption(
    Option option,
    int place,
    Points points,
    Availability availability,
    boolean canBeFirst,
    List<String> tiedWith,
    List<Contribution> contributions) {

  /** Whether an option is ruled out. */
  public enum Availability {
    AVAILABLE("available"),
    /** A row that may match would rule it out. */
    MAY_BE_RULED_OUT("may be ruled out"),
    RULED_OUT("ruled out");

    private final String word;

    Availability(String word) {
      this.word = word;
    }

    public String word() {
      return word;
    }
  }

  public RankedOption {
    tiedWith = List.copyOf(tiedWith);
    contributions = List.copyOf(contributions);
  }

  public String name() {
    return option.name();
  }

  /** The rows that rule it out, or may. */
  public List<Contribution> rulings() {
    return contributions.stream().filter(c -> c.effect() == Effect.RULE_OUT).toList();
  }

  /** The rows that give or take points. */
  public List<Contribution> votes() {
    return contributions.stream().filter(c -> c.effect() != Effect.RULE_OUT).toList();
  }
}
