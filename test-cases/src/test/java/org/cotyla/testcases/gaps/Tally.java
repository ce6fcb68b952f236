package org.cotyla.testcases.gaps;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.cotyla.check.ProtocolCheck;
import org.cotyla.check.Remark;
import org.cotyla.evaluate.Engine;
import org.cotyla.finite.CaseSearch;
import org.cotyla.finite.Domain;
import org.cotyla.finite.Effort;
import org.cotyla.protocol.DecisionTable;
import org.cotyla.testcases.gaps.DroolsAnalysis.Told;

/** What all comparisons came to. */
final class Tally {

  private int tables;
  private int analysed;
  private int gaps;
  private int overlaps;
  private int undecided;
  private final Set<KnownDifferences> met = EnumSet.noneOf(KnownDifferences.class);
  private final List<String> unexplained = new ArrayList<>();

  Tally add(Engine engine, List<Told> told) {
    List<DecisionTable> looked =
        told.stream().filter(Told::isAnalysed).map(Told::table).distinct().toList();
    List<Remark> remarks = ProtocolCheck.of(engine).tables(looked);
    Domain domain = Domain.of(engine.protocol());
    for (Told table : told) {
      tables++;
      analysed += table.isAnalysed() ? 1 : 0;
      CaseSearch search = CaseSearch.of(engine, domain, Effort.usual());
      add(new TableComparison(table, engine.protocol(), search, remarks).run());
    }
    return this;
  }

  private void add(TableComparison.Result result) {
    gaps += result.gaps();
    overlaps += result.overlaps();
    undecided += result.undecided();
    for (Disagreement point : result.disagreements()) {
      List<KnownDifferences> reasons =
          List.of(KnownDifferences.values()).stream().filter(k -> k.explains(point)).toList();
      met.addAll(reasons);
      if (reasons.isEmpty()) {
        unexplained.add(point.toString());
      }
    }
  }

  int tables() {
    return tables;
  }

  /** How many of them Drools looked at for gaps and overlaps. */
  int analysed() {
    return analysed;
  }

  int gaps() {
    return gaps;
  }

  int overlaps() {
    return overlaps;
  }

  int undecided() {
    return undecided;
  }

  Set<KnownDifferences> met() {
    return met;
  }

  List<String> unexplained() {
    return unexplained;
  }
}
