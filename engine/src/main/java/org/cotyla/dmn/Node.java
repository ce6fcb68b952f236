package org.cotyla.dmn;

import java.util.List;
import java.util.Set;
import org.cotyla.expression.Symbol;
import org.cotyla.protocol.Calculation;
import org.cotyla.protocol.DecisionTable;
import org.cotyla.protocol.Field;
import org.cotyla.protocol.Ranking;

/** An element of the exported model's requirements graph. */
sealed interface Node {

  /** Unique in the file, and a name that XML allows. */
  String id();

  /** The name that FEEL reads. */
  String name();

  /** What people call it. */
  String label();

  /** The ids of the elements that it needs, in a stable order. */
  Set<String> needs();

  default boolean isInput() {
    return this instanceof Input || this instanceof Host;
  }

  /** A datum that a case states. */
  record Input(String id, String name, Field field) implements Node {
    @Override
    public String label() {
      return field.name();
    }

    @Override
    public Set<String> needs() {
      return Set.of();
    }
  }

  /** A value that the host works out. */
  record Host(String id, HostValue value) implements Node {
    @Override
    public String name() {
      return value.name();
    }

    @Override
    public String label() {
      return value.call().function().name();
    }

    @Override
    public Set<String> needs() {
      return Set.of();
    }
  }

  /** A derived number or a house constant. */
  record Reckoned(String id, String name, Calculation calculation, String text, Set<String> needs)
      implements Node {
    @Override
    public String label() {
      return calculation.name();
    }
  }

  /**
   * A decision table, or for an aggregate over several results one of them.
   *
   * @param outputs the results that it gives here
   */
  record Table(
      String id,
      String name,
      DecisionTable table,
      List<DecisionTable.Output> outputs,
      TableText text,
      Set<String> needs)
      implements Node {
    @Override
    public String label() {
      return table.name();
    }
  }

  /** One result of a table that gives several. */
  record Part(String id, String name, Symbol output, String tableName, Set<String> needs)
      implements Node {
    @Override
    public String label() {
      return output.name();
    }
  }

  /** The sums of a ranking and its order. */
  record Ranked(String id, String name, Ranking ranking, List<Voice> voices, Set<String> needs)
      implements Node {
    @Override
    public String label() {
      return "ranking of " + ranking.name();
    }
  }

  /**
   * A table that votes in a ranking.
   *
   * @param name its name in the model
   * @param isList whether it gives a list of votes, or one vote or nothing
   */
  record Voice(String name, boolean isList) {}

  /** The option that a ranking puts first. */
  record First(String id, String name, Ranking ranking, String rankingName, Set<String> needs)
      implements Node {
    @Override
    public String label() {
      return ranking.first().name();
    }
  }
}
