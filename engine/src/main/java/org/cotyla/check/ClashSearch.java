package org.cotyla.check;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.cotyla.evaluate.AnswerScope;
import org.cotyla.evaluate.DecisionResult;
import org.cotyla.evaluate.Firing;
import org.cotyla.evaluate.Recommendation;
import org.cotyla.expression.Symbol;
import org.cotyla.finite.Answer;
import org.cotyla.finite.CaseSearch;
import org.cotyla.finite.Claim;
import org.cotyla.protocol.DecisionTable;
import org.cotyla.protocol.HitPolicy;
import org.cotyla.protocol.Row;

/**
 * Looks for a smallest case in which two rows clash: under U one that both match, under A one in
 * which they also give different results. Two formulas that are written differently may give the
 * same in every case, which no search over classes can show; so after a few cases in which they
 * agree it is undecided.
 */
final class ClashSearch {

  private static final int CASES_TRIED = 8;

  private final DecisionTable table;
  private final CaseSearch search;

  ClashSearch(DecisionTable table, CaseSearch search) {
    this.table = table;
    this.search = search;
  }

  Answer of(Row a, Row b) {
    Claim both = new Claim.All(List.of(new Claim.Matches(table, a), new Claim.Matches(table, b)));
    if (table.hitPolicy() == HitPolicy.ANY) {
      return differing(a, b, both);
    }
    Answer answer = search.findEarliest(both);
    return answer instanceof Answer.Found found ? search.smallest(found, both) : answer;
  }

  private Answer differing(Row a, Row b, Claim both) {
    List<Claim> claims = new ArrayList<>(List.of(both));
    for (int i = 0; i < CASES_TRIED; i++) {
      Answer answer = search.findEarliest(new Claim.All(claims));
      if (!(answer instanceof Answer.Found found)) {
        return answer;
      }
      Recommendation example = found.answers().get(0);
      Claim read = new Claim.All(whatIsRead(a, b, example));
      if (differ(a, b, example)) {
        return search.smallest(found, new Claim.All(List.of(both, read)));
      }
      claims.add(new Claim.Not(read));
    }
    return new Answer.Undecided("they agree in the " + CASES_TRIED + " cases that were tried");
  }

  /** That what the rows' results are worked out from is as in the example. */
  private static List<Claim> whatIsRead(Row a, Row b, Recommendation example) {
    Set<Symbol> names = new LinkedHashSet<>();
    for (Row row : List.of(a, b)) {
      row.results().forEach(result -> names.addAll(result.expression().references()));
    }
    AnswerScope values = AnswerScope.of(example);
    return names.stream().<Claim>map(name -> new Claim.Is(name, values.valueOf(name))).toList();
  }

  private boolean differ(Row a, Row b, Recommendation example) {
    return firing(a, example).differsFrom(firing(b, example));
  }

  private Firing firing(Row row, Recommendation example) {
    DecisionResult result = example.decision(table.name()).orElseThrow();
    return result.firings().stream()
        .filter(firing -> firing.row() == row)
        .findFirst()
        .orElseThrow();
  }
}
