package org.cotyla.compare;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.cotyla.compare.CanonicalTable.CanonicalRow;
import org.cotyla.evaluate.Evaluation;
import org.cotyla.expression.PreparedTest;
import org.cotyla.expression.Symbol;
import org.cotyla.name.Names;
import org.cotyla.protocol.DecisionTable;
import org.cotyla.protocol.Row;
import org.cotyla.value.Truth;

/**
 * The rows in which two versions of a decision differ, when they differ in nothing else. Where none
 * of these rows has a say in a case the two come to the same, and need not be worked out.
 * Immutable.
 */
final class ChangedRows {

  /** A test of one row and the name that it is put to. */
  private record Asked(Symbol input, PreparedTest test) {

    Truth truth(Evaluation evaluation) {
      return test.truth(evaluation.valueOf(input), evaluation);
    }

    void lend(Consumer<Symbol> lender) {
      lender.accept(input);
      test.references().forEach(lender);
    }
  }

  /** A test that was written otherwise; one that is not there always holds. */
  private record Retested(Optional<Asked> was, Optional<Asked> is) {}

  /**
   * A row that one of the two has, or that both have and write otherwise.
   *
   * @param retested the tests in which the two differ, when they differ in nothing else
   * @param was all tests of the old row, if there is one
   * @param is all tests of the new row, if there is one
   */
  private record Changed(
      Optional<List<Retested>> retested, Optional<List<Asked>> was, Optional<List<Asked>> is) {}

  private final List<Changed> rows = new ArrayList<>();

  /**
   * Whether it is enough that a test is as open in both. A list is what may match; of other results
   * it counts as well whether the rows that may match leave anything over.
   */
  private final boolean mayBeOpen;

  private ChangedRows(boolean mayBeOpen) {
    this.mayBeOpen = mayBeOpen;
  }

  /** The rows, or nothing when the two differ in more than rows. */
  static Optional<ChangedRows> between(DecisionTable was, DecisionTable is, Side old, Side young) {
    CanonicalTable before = CanonicalTable.of(was, old);
    CanonicalTable after = CanonicalTable.of(is, young);
    boolean onlyRows =
        before.policy().equals(after.policy())
            && before.outputs().equals(after.outputs())
            && before.otherwise().equals(after.otherwise())
            && commonIds(was, is).equals(commonIds(is, was));
    if (!onlyRows) {
      return Optional.empty();
    }
    boolean isList = is.hitPolicy().isList() && is.otherwise().isEmpty();
    ChangedRows changed = new ChangedRows(isList);
    Map<String, Row> gone = new LinkedHashMap<>();
    was.rows().forEach(row -> gone.put(row.id(), row));
    for (Row row : is.rows()) {
      Row earlier = gone.remove(row.id());
      if (earlier == null) {
        changed.rows.add(
            new Changed(Optional.empty(), Optional.empty(), Optional.of(asked(is, row))));
        continue;
      }
      CanonicalRow then = CanonicalTable.row(was, earlier, old);
      CanonicalRow now = CanonicalTable.row(is, row, young);
      if (!then.equals(now)) {
        changed.rows.add(changed(then, asked(was, earlier), now, asked(is, row)));
      }
    }
    for (Row row : gone.values()) {
      changed.rows.add(
          new Changed(Optional.empty(), Optional.of(asked(was, row)), Optional.empty()));
    }
    return Optional.of(changed);
  }

  private static Changed changed(
      CanonicalRow then, List<Asked> was, CanonicalRow now, List<Asked> is) {
    Map<String, Asked> named = byName(was);
    Map<String, Asked> namedNow = byName(is);
    // Where two columns have one name it is not said which test is which.
    boolean told = named.size() == was.size() && namedNow.size() == is.size();
    Optional<List<Retested>> retested =
        told && then.results().equals(now.results())
            ? Optional.of(
                other(then, now).stream()
                    .map(
                        name ->
                            new Retested(
                                Optional.ofNullable(named.get(name)),
                                Optional.ofNullable(namedNow.get(name))))
                    .toList())
            : Optional.empty();
    return new Changed(retested, Optional.of(was), Optional.of(is));
  }

  private static List<String> commonIds(DecisionTable table, DecisionTable other) {
    Set<String> known = other.rows().stream().map(Row::id).collect(Collectors.toSet());
    return table.rows().stream().map(Row::id).filter(known::contains).toList();
  }

  /** Those that can tell most cheaply first: fields stand before what is worked out. */
  private static List<Asked> asked(DecisionTable table, Row row) {
    List<Asked> asked = new ArrayList<>();
    for (int i = 0; i < row.tests().size(); i++) {
      PreparedTest test = row.tests().get(i).prepared();
      if (!test.isAnything()) {
        asked.add(new Asked(table.inputs().get(i).symbol(), test));
      }
    }
    asked.sort(Comparator.comparingInt(one -> one.input().index()));
    return asked;
  }

  private static Map<String, Asked> byName(List<Asked> asked) {
    Map<String, Asked> named = new HashMap<>();
    asked.forEach(one -> named.put(Names.key(one.input().name()), one));
    return named;
  }

  /** The names of whose tests the two rows have another. */
  private static Set<String> other(CanonicalRow then, CanonicalRow now) {
    Set<String> names = new TreeSet<>(then.tests().keySet());
    names.addAll(now.tests().keySet());
    names.removeIf(name -> Objects.equals(then.tests().get(name), now.tests().get(name)));
    return names;
  }

  /**
   * Whether the two come to the same in a case, since each of these rows matches in both or in
   * neither of them; false where that is not certain.
   *
   * @param lender told each name that is about to be read of the new protocol
   */
  boolean comeToTheSame(Evaluation old, Evaluation young, Consumer<Symbol> lender) {
    return rows.stream()
        .allMatch(
            row ->
                row.retested().filter(tests -> areAlike(tests, old, young, lender)).isPresent()
                    || (isOut(row.was(), asked -> asked.truth(old))
                        && isOut(row.is(), asked -> truth(asked, young, lender))));
  }

  private boolean areAlike(
      List<Retested> tests, Evaluation old, Evaluation young, Consumer<Symbol> lender) {
    for (Retested test : tests) {
      Truth was = test.was().map(asked -> asked.truth(old)).orElse(Truth.TRUE);
      Truth is = test.is().map(asked -> truth(asked, young, lender)).orElse(Truth.TRUE);
      if (was != is || (was == Truth.OPEN && !mayBeOpen)) {
        return false;
      }
    }
    return true;
  }

  /** Whether the row is not there, or does not match. */
  private static boolean isOut(Optional<List<Asked>> row, Function<Asked, Truth> truth) {
    return row.stream()
        .allMatch(tests -> tests.stream().anyMatch(asked -> truth.apply(asked) == Truth.FALSE));
  }

  private static Truth truth(Asked asked, Evaluation young, Consumer<Symbol> lender) {
    asked.lend(lender);
    return asked.truth(young);
  }
}
