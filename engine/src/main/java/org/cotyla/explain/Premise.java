package org.cotyla.explain;

import java.util.List;
import org.cotyla.evaluate.DecisionResult;
import org.cotyla.evaluate.Firing;
import org.cotyla.evaluate.RankingResult;
import org.cotyla.expression.Symbol;
import org.cotyla.finding.Datum;
import org.cotyla.protocol.Calculation;
import org.cotyla.protocol.Row;
import org.cotyla.value.PossibleValues;

/**
 * Something that a conclusion rests on: one node of a proof whose leaves are recorded findings.
 * Every node stands once, however many others rest on it.
 */
public sealed interface Premise {

  /** The names that the nodes nearer to the conclusion read from it. */
  List<Symbol> names();

  /** The names that it rests on itself; each is given by a node further from the conclusion. */
  List<Symbol> restsOn();

  /** A datum as the case states it, or fails to. */
  record Recorded(Datum datum) implements Premise {

    @Override
    public List<Symbol> names() {
      return List.of(datum.field().symbol());
    }

    @Override
    public List<Symbol> restsOn() {
      return List.of();
    }
  }

  /**
   * A number that was worked out, or a house constant.
   *
   * @param calculation how
   * @param value what it came to
   */
  record Calculated(Calculation calculation, PossibleValues value, List<Symbol> restsOn)
      implements Premise {

    public Calculated {
      restsOn = List.copyOf(restsOn);
    }

    @Override
    public List<Symbol> names() {
      return List.of(calculation.symbol());
    }
  }

  /**
   * What a decision came to.
   *
   * @param result what it came to, and by which rows
   * @param names those of its outputs that were read
   */
  record Decided(DecisionResult result, List<Symbol> names, List<Symbol> restsOn)
      implements Premise {

    public Decided {
      names = List.copyOf(names);
      restsOn = List.copyOf(restsOn);
    }

    /** The rows that make the result, or may. */
    public List<Firing> rows() {
      return result.counting();
    }

    /** The row for 'no row matches', when that gives the result, or may. */
    public List<Row> defaultRows() {
      return result.mayBeByDefault() ? result.table().otherwise().stream().toList() : List.of();
    }

    /** What one of its outputs can be. */
    public PossibleValues value(Symbol output) {
      return result.outputs().getOrDefault(output.name(), PossibleValues.nothing(output.type()));
    }
  }

  /**
   * Which option comes first in a ranking; why it does is a question of its own.
   *
   * @param result the ranking
   */
  record Ranked(RankingResult result) implements Premise {

    @Override
    public List<Symbol> names() {
      return List.of(result.ranking().first());
    }

    @Override
    public List<Symbol> restsOn() {
      return List.of();
    }
  }
}
