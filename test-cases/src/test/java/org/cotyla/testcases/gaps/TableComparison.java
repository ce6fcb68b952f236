package org.cotyla.testcases.gaps;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.cotyla.check.Remark;
import org.cotyla.evaluate.AnswerScope;
import org.cotyla.expression.Symbol;
import org.cotyla.finite.Answer;
import org.cotyla.finite.CaseSearch;
import org.cotyla.finite.Claim;
import org.cotyla.finite.Region;
import org.cotyla.protocol.DecisionTable;
import org.cotyla.protocol.HitPolicy;
import org.cotyla.protocol.Protocol;
import org.cotyla.protocol.Row;
import org.cotyla.testcases.gaps.Disagreement.What;
import org.cotyla.testcases.gaps.DroolsAnalysis.Overlap;
import org.cotyla.testcases.gaps.DroolsAnalysis.Told;
import org.cotyla.value.PossibleValues;
import org.cotyla.value.ValueSet;

/**
 * One table's gaps and overlaps by both analyses, in both directions: each box of theirs is put to
 * our search, and our search is asked for a gap or an overlap outside all their boxes. Used once.
 */
final class TableComparison {

  private static final int SMALL = 5;

  private final Told told;
  private final DecisionTable table;
  private final CaseSearch search;
  private final BlindPoints blind;
  private final List<Remark> remarks;
  private final List<Disagreement> disagreements = new ArrayList<>();
  private int gaps;
  private int overlaps;
  private int undecided;

  TableComparison(Told told, Protocol protocol, CaseSearch search, List<Remark> remarks) {
    this.told = told;
    this.table = told.table();
    this.blind = new BlindPoints(protocol, table);
    this.search = search;
    this.remarks = remarks;
  }

  /**
   * What a comparison came to.
   *
   * @param gaps how many boxes without a row both see
   * @param overlaps how many pairs of rows both see meeting
   * @param undecided how many questions our search left open
   * @param disagreements where they part
   */
  record Result(int gaps, int overlaps, int undecided, List<Disagreement> disagreements) {}

  Result run() {
    if (told.isAnalysed()) {
      compareGaps();
      compareOverlaps();
    } else {
      part(What.TABLE_SKIPPED, List.of(), new Region(Map.of()));
    }
    return new Result(gaps, overlaps, undecided, disagreements);
  }

  private void part(What what, List<Row> rows, Region region) {
    disagreements.add(new Disagreement(what, told, rows, region, blind, search));
  }

  private void compareGaps() {
    Claim none = new Claim.NoRow(table);
    List<Claim> elsewhere = new ArrayList<>(List.of(none));
    for (Region gap : told.gaps()) {
      if (isCase(new Claim.All(List.of(none, gap.claim())))) {
        gaps++;
        if (!hasRemark("K101", table.name())) {
          part(What.GAP_WITHOUT_REMARK, List.of(), gap);
        }
      } else {
        part(What.GAP_ONLY_THEY_SEE, List.of(), gap);
      }
      elsewhere.add(new Claim.Not(gap.claim()));
    }
    leftOver(elsewhere, What.GAP_ONLY_WE_SEE, List.of());
  }

  /**
   * Under a hit policy that lets rows meet, a table of many rows has thousands of boxes in which
   * some do; there the rows are compared in small tables only.
   */
  private void compareOverlaps() {
    boolean mayMeet = table.hitPolicy() != HitPolicy.UNIQUE && table.hitPolicy() != HitPolicy.ANY;
    if (mayMeet && table.rows().size() > SMALL) {
      return;
    }
    Set<Set<Integer>> met = new LinkedHashSet<>();
    for (Overlap overlap : told.overlaps()) {
      List<Row> rows = overlap.rows().stream().map(table.rows()::get).toList();
      Set<Integer> different = new TreeSet<>(overlap.rows());
      if (different.size() == 1 || !isCase(all(rows, overlap.region()))) {
        part(What.OVERLAP_ONLY_THEY_SEE, rows, overlap.region());
      } else {
        met.addAll(pairs(different));
      }
    }
    pairs(IntStream.range(0, table.rows().size()).boxed().toList())
        .forEach(pair -> compare(List.copyOf(new TreeSet<>(pair)), met.contains(pair)));
  }

  private void compare(List<Integer> pair, boolean bothSeeIt) {
    List<Row> rows = pair.stream().map(table.rows()::get).toList();
    if (bothSeeIt) {
      overlaps++;
      if (!hasRemark("K111", rows.get(0).id(), rows.get(1).id())) {
        part(What.OVERLAP_WITHOUT_REMARK, rows, new Region(Map.of()));
      }
    }
    List<Claim> elsewhere = new ArrayList<>(List.of(all(rows, new Region(Map.of()))));
    told.overlaps().stream()
        .filter(overlap -> overlap.rows().containsAll(pair))
        .forEach(overlap -> elsewhere.add(new Claim.Not(overlap.region().claim())));
    leftOver(elsewhere, What.OVERLAP_ONLY_WE_SEE, rows);
  }

  /** In the region all the rows match. */
  private Claim all(List<Row> rows, Region region) {
    List<Claim> claims = new ArrayList<>(List.of(region.claim()));
    rows.forEach(row -> claims.add(new Claim.Matches(table, row)));
    return new Claim.All(claims);
  }

  private static Set<Set<Integer>> pairs(Collection<Integer> rows) {
    Set<Set<Integer>> pairs = new LinkedHashSet<>();
    for (int one : rows) {
      rows.stream().filter(other -> other > one).forEach(other -> pairs.add(Set.of(one, other)));
    }
    return pairs;
  }

  private boolean isCase(Claim claim) {
    return find(claim) instanceof Answer.Found;
  }

  private Answer find(Claim claim) {
    Answer answer = search.find(claim);
    undecided += answer instanceof Answer.Undecided ? 1 : 0;
    return answer;
  }

  /**
   * What we see outside all their boxes. First where every input has a value that they look at, so
   * that no reason for looking away can hide another; then with values that they step over, and
   * last with inputs that are nothing.
   */
  private void leftOver(List<Claim> elsewhere, What what, List<Row> rows) {
    List<Claim> stated = new ArrayList<>(elsewhere);
    List<Claim> looked = new ArrayList<>(elsewhere);
    for (DecisionTable.Input input : table.inputs()) {
      Symbol symbol = input.symbol();
      stated.add(new Claim.Is(symbol, PossibleValues.of(ValueSet.all(symbol.type()))));
      looked.add(new Claim.Is(symbol, PossibleValues.of(blind.of(symbol).complement())));
    }
    for (List<Claim> claims : List.of(looked, stated, elsewhere)) {
      if (find(new Claim.All(claims)) instanceof Answer.Found found) {
        part(what, rows, inputs(found));
      }
    }
  }

  private Region inputs(Answer.Found found) {
    AnswerScope scope = AnswerScope.of(found.answers().get(0));
    Map<Symbol, PossibleValues> sides = new LinkedHashMap<>();
    table.inputs().forEach(i -> sides.put(i.symbol(), scope.valueOf(i.symbol())));
    return new Region(sides);
  }

  private boolean hasRemark(String code, String... words) {
    return remarks.stream()
        .filter(remark -> remark.issue().code().equals(code))
        .anyMatch(
            remark ->
                List.of(words).stream()
                    .allMatch(
                        word ->
                            remark.about().equals(word)
                                || remark.issue().message().contains("`" + word + "`")));
  }
}
