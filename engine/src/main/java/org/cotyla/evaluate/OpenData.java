package org.cotyla.evaluate;

import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.cotyla.expression.Expression;
import org.cotyla.expression.Scope;
import org.cotyla.expression.Symbol;
import org.cotyla.protocol.Calculation;
import org.cotyla.protocol.DecisionTable;
import org.cotyla.protocol.Ranking;
import org.cotyla.protocol.Step;
import org.cotyla.value.Truth;

/**
 * Which given fields that are not fully known each uncertain result hangs on. A field that is not
 * named for a result cannot change it; one that is named may.
 */
final class OpenData {

  private final Scope values;
  private final Map<DecisionTable, DecisionResult> decisions;
  private final Map<Ranking, RankingResult> rankings;
  private final Map<Symbol, Step> givers = new HashMap<>();
  private final Map<Symbol, Set<Symbol>> known = new HashMap<>();

  OpenData(
      List<Step> steps,
      Scope values,
      Map<DecisionTable, DecisionResult> decisions,
      Map<Ranking, RankingResult> rankings) {
    this.values = values;
    this.decisions = decisions;
    this.rankings = rankings;
    steps.forEach(step -> step.gives().forEach(symbol -> givers.put(symbol, step)));
  }

  /** The open fields that a decision's result hangs on. */
  Set<Symbol> of(DecisionResult result) {
    Set<Symbol> open = new LinkedHashSet<>();
    for (Firing firing : result.counting()) {
      addOpenTests(firing, open);
      firing.row().results().forEach(cell -> addReferences(cell.expression(), open));
    }
    if (result.mayBeByDefault()) {
      result
          .table()
          .otherwise()
          .ifPresent(row -> row.results().forEach(cell -> addReferences(cell.expression(), open)));
    }
    return open;
  }

  /**
   * The open fields that the first place of a ranking hangs on. An option that cannot come first
   * never beats one that can, so only those that can matter.
   */
  Set<Symbol> of(RankingResult result) {
    Set<Symbol> open = new LinkedHashSet<>();
    if (result.firstIsCertain()) {
      return open;
    }
    result.options().stream()
        .filter(RankedOption::canBeFirst)
        .flatMap(option -> option.contributions().stream())
        .filter(contribution -> !contribution.isCertain())
        .forEach(contribution -> addOpenVote(contribution.firing(), open));
    return open;
  }

  /** The open fields that any option's points or availability hang on. */
  Set<Symbol> ofPoints(RankingResult result) {
    Set<Symbol> open = new LinkedHashSet<>();
    result.options().stream()
        .flatMap(option -> option.contributions().stream())
        .filter(contribution -> !contribution.isCertain())
        .forEach(contribution -> addOpenVote(contribution.firing(), open));
    return open;
  }

  /** Under a single-hit policy a vote hangs on the rows that go before it as well. */
  private void addOpenVote(Firing firing, Set<Symbol> open) {
    DecisionResult voter = decisions.get(firing.table());
    if (firing.table().hitPolicy().isList() || voter == null) {
      addOpenTests(firing, open);
    } else {
      open.addAll(of(voter));
    }
  }

  private void addOpenTests(Firing firing, Set<Symbol> open) {
    if (firing.certain()) {
      return;
    }
    for (int i = 0; i < firing.truths().size(); i++) {
      if (firing.truths().get(i) == Truth.OPEN) {
        addOpen(firing.table().inputs().get(i).symbol(), open);
        for (Symbol symbol : firing.row().tests().get(i).prepared().references()) {
          addOpen(symbol, open);
        }
      }
    }
  }

  private void addReferences(Expression expression, Set<Symbol> open) {
    expression.references().forEach(symbol -> addOpen(symbol, open));
  }

  private void addOpen(Symbol symbol, Set<Symbol> open) {
    if (!open.contains(symbol) && !values.valueOf(symbol).isCertain()) {
      open.addAll(of(symbol));
    }
  }

  private Set<Symbol> of(Symbol symbol) {
    Set<Symbol> before = known.get(symbol);
    if (before != null) {
      return before;
    }
    Set<Symbol> open = new LinkedHashSet<>();
    Step giver = givers.get(symbol);
    if (giver == null) {
      open.add(symbol);
    } else if (giver instanceof Calculation calculation) {
      addReferences(calculation.expression(), open);
    } else if (giver instanceof DecisionTable table && decisions.get(table) != null) {
      open.addAll(of(decisions.get(table)));
    } else if (giver instanceof Ranking ranking && rankings.get(ranking) != null) {
      open.addAll(of(rankings.get(ranking)));
    }
    known.put(symbol, open);
    return open;
  }
}
