package org.cotyla.testcases.gaps;

import java.util.List;
import java.util.function.Predicate;
import org.cotyla.expression.PreparedTest;
import org.cotyla.finite.Answer;
import org.cotyla.protocol.DecisionTable;
import org.cotyla.protocol.HitPolicy;
import org.cotyla.protocol.Row;
import org.cotyla.testcases.gaps.Disagreement.What;
import org.cotyla.value.PossibleValues;
import org.cotyla.value.ValueType;

/**
 * Why Drools' analysis of decision tables (10.1.0) and our check may part, each with a reason that
 * is read off the table or put to a search among all cases.
 */
enum KnownDifferences {
  /** Drools looks for neither gaps nor overlaps under any form of hit policy C. */
  COLLECTS(What.TABLE_SKIPPED) {
    @Override
    boolean isSo(Disagreement point) {
      return point.told().collects();
    }
  },

  /** Drools skips a table of which a cell names something; here such a cell is worked out. */
  CELL_NAMES_SOMETHING(What.TABLE_SKIPPED) {
    @Override
    boolean isSo(Disagreement point) {
      return point.told().skipped().contains("unary test containing")
          && anyTest(point.table(), test -> !test.references().isEmpty());
    }
  },

  /** Drools skips a table of which a cell speaks of null, which here is a value like others. */
  CELL_SPEAKS_OF_NOTHING(What.TABLE_SKIPPED) {
    @Override
    boolean isSo(Disagreement point) {
      return point.told().skipped().endsWith("containing: null")
          && point.table().rows().stream()
              .flatMap(row -> row.tests().stream())
              .anyMatch(cell -> cell.text().contains("null"));
    }
  },

  /** No case has these inputs; Drools looks at each table alone. */
  NO_CASE_COMES_HERE(What.GAP_ONLY_THEY_SEE, What.OVERLAP_ONLY_THEY_SEE) {
    @Override
    boolean isSo(Disagreement point) {
      return point.search().find(point.region().claim()) instanceof Answer.Impossible;
    }
  },

  /** An input may be nothing, which no domain of Drools' holds. */
  NOTHING_COMES_IN(What.GAP_ONLY_WE_SEE, What.OVERLAP_ONLY_WE_SEE) {
    @Override
    boolean isSo(Disagreement point) {
      return point.region().sides().values().stream().anyMatch(PossibleValues::isNothing);
    }
  },

  /** An input has a value that Drools steps over, see {@link BlindPoints}. */
  STEPPED_OVER(What.GAP_ONLY_WE_SEE, What.OVERLAP_ONLY_WE_SEE) {
    @Override
    boolean isSo(Disagreement point) {
      return point.region().sides().entrySet().stream()
          .anyMatch(side -> point.blind().of(side.getKey()).intersects(side.getValue().values()));
    }
  },

  /** Drools looks for no gaps where a column of text has no list of values. */
  TEXT_WITHOUT_LIST(What.GAP_ONLY_WE_SEE) {
    @Override
    boolean isSo(Disagreement point) {
      return point.told().gaps().isEmpty()
          && point.table().inputs().stream()
              .map(DecisionTable.Input::symbol)
              .anyMatch(input -> input.type() == ValueType.TEXT && !input.isChoice());
    }
  },

  /** The table votes, lists, or has a default row, so that it may well meet no row. */
  MAY_HAVE_NO_ROW(What.GAP_WITHOUT_REMARK) {
    @Override
    boolean isSo(Disagreement point) {
      DecisionTable table = point.table();
      return table.votes() || table.otherwise().isPresent() || table.hitPolicy().isList();
    }
  },

  /** The hit policy allows that rows meet, or allows it to rows that give the same. */
  MAY_MEET(What.OVERLAP_WITHOUT_REMARK) {
    @Override
    boolean isSo(Disagreement point) {
      HitPolicy policy = point.table().hitPolicy();
      return policy == HitPolicy.ANY ? giveTheSame(point.rows()) : policy != HitPolicy.UNIQUE;
    }
  };

  private final List<What> about;

  KnownDifferences(What... about) {
    this.about = List.of(about);
  }

  abstract boolean isSo(Disagreement point);

  boolean explains(Disagreement point) {
    return about.contains(point.what()) && isSo(point);
  }

  private static boolean giveTheSame(List<Row> rows) {
    return rows.stream().map(KnownDifferences::gives).distinct().count() == 1;
  }

  private static List<Object> gives(Row row) {
    return List.of(row.vote(), row.results().stream().map(Row.Result::expression).toList());
  }

  private static boolean anyTest(DecisionTable table, Predicate<PreparedTest> condition) {
    return table.rows().stream()
        .flatMap(row -> row.tests().stream())
        .anyMatch(cell -> condition.test(cell.prepared()));
  }
}
