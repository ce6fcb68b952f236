package org.cotyla.explain;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.cotyla.evaluate.DecisionResult;
import org.cotyla.evaluate.Firing;
import org.cotyla.evaluate.Standing;
import org.cotyla.explain.RowChange.Part;
import org.cotyla.expression.Symbol;
import org.cotyla.protocol.DecisionTable;
import org.cotyla.value.PossibleValues;

/**
 * A decision that comes to something else, or to the same by other rows.
 *
 * @param before what it came to in the one answer
 * @param after what it comes to in the other
 * @param outputs the outputs whose value differs; empty for a list, whose rows are its result
 * @param rows the rows whose part in the result differs
 */
public record DecisionChange(
    DecisionResult before, DecisionResult after, List<OutputChange> outputs, List<RowChange> rows) {

  /** An output and what it can be in either answer. */
  public record OutputChange(Symbol output, PossibleValues before, PossibleValues after) {}

  public DecisionChange {
    outputs = List.copyOf(outputs);
    rows = List.copyOf(rows);
  }

  public DecisionTable table() {
    return after.table();
  }

  /** Whether its rows are its result, so that entries are new or gone rather than a value. */
  public boolean isList() {
    return after.outputs().isEmpty();
  }

  /** Whether what it comes to differs, and not only the rows that lead to it. */
  public boolean changesResult() {
    return isList()
        ? !newEntries().isEmpty() || !goneEntries().isEmpty() || !openedEntries().isEmpty()
        : !outputs.isEmpty();
  }

  /**
   * The rows of a list whose entry is in the second answer for certain and was not in the first.
   */
  public List<RowChange> newEntries() {
    Set<List<PossibleValues>> known = certainEntries(before);
    return rows.stream().filter(row -> isCertainWithout(row.after(), known)).toList();
  }

  /**
   * The rows of a list whose entry was in the first answer for certain and is not in the second.
   */
  public List<RowChange> goneEntries() {
    Set<List<PossibleValues>> kept = new HashSet<>();
    after.counting().forEach(firing -> kept.add(firing.results()));
    return rows.stream().filter(row -> isCertainWithout(row.before(), kept)).toList();
  }

  /** The rows of a list that may count in the second answer and did not, or did for certain. */
  public List<RowChange> openedEntries() {
    return rows.stream().filter(row -> row.kind() == RowChange.Kind.OPENED).toList();
  }

  private static boolean isCertainWithout(Optional<Part> part, Set<List<PossibleValues>> others) {
    return part.filter(Part::isCertain)
        .filter(known -> known.results().isEmpty() || !others.contains(known.results()))
        .isPresent();
  }

  private static Set<List<PossibleValues>> certainEntries(DecisionResult result) {
    Set<List<PossibleValues>> entries = new HashSet<>();
    for (Firing firing : result.counting()) {
      if (firing.standing() == Standing.DECIDES) {
        entries.add(firing.results());
      }
    }
    return entries;
  }

  /** The difference between two results of one decision, if there is any. */
  static Optional<DecisionChange> between(DecisionResult before, DecisionResult after) {
    List<OutputChange> outputs = new ArrayList<>();
    for (DecisionTable.Output output : after.table().outputs()) {
      String name = output.symbol().name();
      PossibleValues was = before.outputs().get(name);
      PossibleValues is = after.outputs().get(name);
      if (was != null && is != null && !was.equals(is)) {
        outputs.add(new OutputChange(output.symbol(), was, is));
      }
    }
    List<RowChange> rows = RowChange.between(before, after);
    return outputs.isEmpty() && rows.isEmpty()
        ? Optional.empty()
        : Optional.of(new DecisionChange(before, after, outputs, rows));
  }
}
