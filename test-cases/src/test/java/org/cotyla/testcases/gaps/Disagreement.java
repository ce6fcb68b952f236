package org.cotyla.testcases.gaps;

import java.util.List;
import org.cotyla.finite.CaseSearch;
import org.cotyla.finite.Region;
import org.cotyla.protocol.DecisionTable;
import org.cotyla.protocol.Row;
import org.cotyla.testcases.gaps.DroolsAnalysis.Told;

/**
 * A point in which Drools' analysis and ours part.
 *
 * @param what what one of them sees and the other does not
 * @param told Drools' words on the table
 * @param rows the rows that meet; empty for a gap, or when the whole table was skipped
 * @param region where
 * @param blind single values of the table's inputs that they step over
 * @param search a search among all cases, which explanations are held against
 */
record Disagreement(
    What what, Told told, List<Row> rows, Region region, BlindPoints blind, CaseSearch search) {

  /** Who sees what. */
  enum What {
    TABLE_SKIPPED,
    GAP_ONLY_THEY_SEE,
    GAP_ONLY_WE_SEE,
    OVERLAP_ONLY_THEY_SEE,
    OVERLAP_ONLY_WE_SEE,
    /** Both see it, and our check has no remark on it. */
    GAP_WITHOUT_REMARK,
    OVERLAP_WITHOUT_REMARK
  }

  DecisionTable table() {
    return told.table();
  }

  @Override
  public String toString() {
    return what
        + " in "
        + table().name()
        + " "
        + table().hitPolicy()
        + ", rows "
        + rows.stream().map(Row::id).toList()
        + ", "
        + region.sides().values()
        + (told.isAnalysed() ? "" : ": " + told.skipped());
  }
}
