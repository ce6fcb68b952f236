package org.cotyla.explain;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.cotyla.evaluate.Contribution;
import org.cotyla.evaluate.Engine;
import org.cotyla.evaluate.RankedOption;
import org.cotyla.evaluate.RankedOption.Availability;
import org.cotyla.evaluate.RankingResult;
import org.cotyla.evaluate.Recommendation;
import org.cotyla.expression.Symbol;
import org.cotyla.finding.Datum;
import org.cotyla.finding.Datum.Knowledge;
import org.cotyla.finding.Findings;
import org.cotyla.protocol.DecisionTable;
import org.cotyla.protocol.Effect;
import org.cotyla.protocol.Row;
import org.cotyla.protocol.Step;
import org.cotyla.value.PossibleValues;
import org.cotyla.value.ValueSet;

/**
 * Finds which single findings would lift the rows that rule an option out, by running the protocol
 * with each of them otherwise. Used once.
 */
final class Lifts {

  private final Engine engine;
  private final Recommendation advice;
  private final RankingResult ranking;
  private final RankedOption option;
  private final Set<Step> relevant;
  private final Map<Symbol, Step> givers = new HashMap<>();
  private final Map<Datum, List<Trial>> trials = new HashMap<>();
  private final Map<Datum, Boolean> whole = new HashMap<>();

  Lifts(Engine engine, Recommendation advice, RankingResult ranking, RankedOption option) {
    if (engine.protocol() != advice.protocol()) {
      throw new IllegalArgumentException("the answer was not given by this engine's protocol");
    }
    advice.protocol().steps().forEach(step -> step.gives().forEach(name -> givers.put(name, step)));
    this.engine = engine;
    this.advice = advice;
    this.ranking = ranking;
    this.option = option;
    this.relevant = relevant();
  }

  /**
   * The case with values of one part for one finding: the ids of the rows that then rule out, or
   * may.
   */
  private record Trial(FieldParts.Part part, Set<String> rulings) {}

  List<Ruling> rulings() {
    return Why.reasons(advice, option).stream()
        .filter(reason -> reason.effect() == Effect.RULE_OUT)
        .map(this::ruling)
        .toList();
  }

  private Ruling ruling(Reason reason) {
    List<Hinge> hinges = Hinge.of(advice, reason.contribution().firing());
    if (!reason.isCertain()) {
      return new Ruling(reason, hinges, List.of(), false);
    }
    List<Lift> lifts = new ArrayList<>();
    boolean all = true;
    Set<Symbol> upstream = upstream(reason);
    for (Datum datum : advice.findings().data()) {
      boolean stated =
          datum.knowledge() == Knowledge.RECORDED || datum.knowledge() == Knowledge.PARTLY;
      if (stated && upstream.contains(datum.field().symbol())) {
        lift(reason.row(), datum, lifts);
        all &= whole.getOrDefault(datum, false);
      }
    }
    return new Ruling(reason, hinges, lifts, all);
  }

  private void lift(Row row, Datum datum, List<Lift> lifts) {
    List<Trial> tried = trials.computeIfAbsent(datum, this::trials);
    boolean isWhole = whole.getOrDefault(datum, false);
    ValueSet freeing = ValueSet.none(datum.field().symbol().type());
    ValueSet others = freeing;
    for (Trial trial : tried) {
      ValueSet values = isWhole ? trial.part().values() : ValueSet.of(trial.part().sample());
      if (trial.rulings().isEmpty()) {
        freeing = freeing.union(values);
      } else if (!trial.rulings().contains(row.id())) {
        others = others.union(values);
      }
    }
    if (!freeing.isEmpty()) {
      lifts.add(new Lift(datum, freeing, isWhole, true));
    }
    if (!others.isEmpty()) {
      lifts.add(new Lift(datum, others, isWhole, false));
    }
  }

  private List<Trial> trials(Datum datum) {
    FieldParts parts = FieldParts.of(relevant, datum.field());
    whole.put(datum, parts.isWhole());
    return parts.parts().stream().map(part -> trial(datum, part)).toList();
  }

  private Trial trial(Datum datum, FieldParts.Part part) {
    Findings findings = advice.findings();
    List<Datum> data = new ArrayList<>();
    for (Datum one : findings.data()) {
      data.add(
          one == datum
              ? new Datum(one.field(), Knowledge.RECORDED, PossibleValues.of(part.sample()))
              : one);
    }
    Recommendation then =
        engine.decide(new Findings(findings.title(), findings.stage(), data, List.of()));
    Set<String> rulings = new HashSet<>();
    then.ranking(ranking.ranking().name())
        .flatMap(result -> result.option(option.name()))
        .filter(ranked -> ranked.availability() != Availability.AVAILABLE)
        .ifPresent(
            ranked ->
                ranked.rulings().stream()
                    .map(Contribution::firing)
                    .forEach(firing -> rulings.add(firing.row().id())));
    return new Trial(part, rulings);
  }

  /** Every name that the row can hang on, however far away. */
  private Set<Symbol> upstream(Reason reason) {
    DecisionTable table = reason.contribution().firing().table();
    // In a list each row hangs on its own tests alone.
    return upstream(table.hitPolicy().isList() ? read(table, reason.row()) : table.needs());
  }

  private Set<Symbol> upstream(Set<Symbol> names) {
    Set<Symbol> upstream = new HashSet<>();
    Deque<Symbol> next = new ArrayDeque<>(names);
    while (!next.isEmpty()) {
      Symbol symbol = next.pop();
      Step giver = givers.get(symbol);
      if (upstream.add(symbol) && giver != null) {
        next.addAll(giver.needs());
      }
    }
    return upstream;
  }

  /** All steps that can tell whether some row rules the option out. */
  private Set<Step> relevant() {
    Set<Step> relevant = new LinkedHashSet<>();
    Set<Symbol> names = new HashSet<>();
    for (DecisionTable voter : ranking.ranking().voters()) {
      boolean rules =
          voter.rows().stream()
              .flatMap(row -> row.vote().stream())
              .anyMatch(
                  vote -> vote.effect() == Effect.RULE_OUT && vote.option().equals(option.name()));
      if (rules) {
        relevant.add(voter);
        names.addAll(voter.needs());
      }
    }
    upstream(names).stream().map(givers::get).filter(Objects::nonNull).forEach(relevant::add);
    return relevant;
  }

  private static Set<Symbol> read(DecisionTable table, Row row) {
    Set<Symbol> names = new HashSet<>();
    for (int i = 0; i < row.tests().size(); i++) {
      if (!row.tests().get(i).prepared().isAnything()) {
        names.add(table.inputs().get(i).symbol());
        names.addAll(row.tests().get(i).prepared().references());
      }
    }
    return names;
  }
}
