package org.cotyla.protocol;

import org.cotyla.expression.Symbol;
import org.cotyla.issue.CellRef;

/** What a safeguard demands of every case that meets its tests. */
public sealed interface Demand {

  /** The cell that says what is demanded. */
  CellRef at();

  /** The demand as its author wrote it, for example {@code never come first: brace}. */
  String plain();

  /** The option is never the first of its ranking. */
  record NeverFirst(String ranking, String option, CellRef at) implements Demand {
    @Override
    public String plain() {
      return DemandWord.NEVER_COME_FIRST.word() + ": " + option;
    }
  }

  /** The option is ruled out. */
  record RuledOut(String ranking, String option, CellRef at) implements Demand {
    @Override
    public String plain() {
      return DemandWord.BE_RULED_OUT.word() + ": " + option;
    }
  }

  /** The row counts in the result of its decision. */
  record RowCounts(String decision, String row, CellRef at) implements Demand {
    @Override
    public String plain() {
      return DemandWord.BE_SHOWN.word() + ": " + row;
    }
  }

  /** The text stands in what a decision gives, by whichever of its rows. */
  record TextShown(String decision, Symbol output, String text, CellRef at) implements Demand {
    @Override
    public String plain() {
      return DemandWord.BE_SHOWN.word() + ": " + text;
    }
  }

  /** What a decision or calculation gives, meets a test. */
  record Holds(Symbol name, Row.Test test) implements Demand {
    @Override
    public CellRef at() {
      return test.at();
    }

    @Override
    public String plain() {
      return DemandWord.HOLD.word() + ": " + name.name() + ": " + test.text();
    }
  }
}
