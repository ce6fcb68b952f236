package org.cotyla.explore;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.cotyla.evaluate.Engine;
import org.cotyla.evaluate.Recommendation;
import org.cotyla.finding.Datum;
import org.cotyla.finite.Answer;
import org.cotyla.finite.CaseSearch;
import org.cotyla.finite.Claim;
import org.cotyla.finite.Domain;
import org.cotyla.finite.Effort;
import org.cotyla.value.PossibleValues;
import org.cotyla.value.ValueSet;

/**
 * Which open data matter only for some values of each other. Immutable.
 *
 * @param conditions for the weightiest part that a datum can change, the data that can change most
 *     first
 * @param complete whether all were looked for, and each within the limits of the search; otherwise
 *     there may be more, and narrower ones
 */
public record Conditions(List<Condition> conditions, boolean complete) {

  private static final int QUESTIONS_AT_MOST = 80;
  private static final int CLASSES_AT_MOST = 8;
  private static final Effort EFFORT = new Effort(20_000, 200, 24);

  public Conditions {
    conditions = List.copyOf(conditions);
  }

  /** The conditions of one datum. */
  public List<Condition> of(Datum datum) {
    return conditions.stream().filter(one -> one.datum().equals(datum.field())).toList();
  }

  /** The conditions of first options and of decisions of the first page, up to a bound. */
  public static Conditions of(Engine engine, WhatMatters matters) {
    return of(engine, matters, EFFORT);
  }

  static Conditions of(Engine engine, WhatMatters matters, Effort effort) {
    Run run = new Run(engine, matters, effort);
    matters.data().forEach(run::add);
    return new Conditions(run.conditions, run.complete);
  }

  /** One search. Used once. */
  private static final class Run {

    private final Engine engine;
    private final Recommendation advice;
    private final WhatMatters matters;
    private final FieldClasses classes;
    private final Effort effort;
    private final List<Condition> conditions = new ArrayList<>();
    private int questions;
    private boolean complete = true;

    Run(Engine engine, WhatMatters matters, Effort effort) {
      this.engine = engine;
      this.effort = effort;
      this.advice = matters.advice();
      this.matters = matters;
      this.classes = new FieldClasses(engine.protocol());
    }

    void add(Influence influence) {
      Optional<Reach> first =
          influence.changes().stream().filter(reach -> reach.facet().isHeadline()).findFirst();
      if (first.isEmpty() || first.get().byItself()) {
        return;
      }
      Facet facet = first.get().facet();
      FacetResults results = FacetResults.of(advice, facet);
      if (!results.formulas().isEmpty()) {
        complete = false;
        return;
      }
      Domain domain = Domain.of(engine.protocol(), advice.findings());
      CaseSearch pairs = CaseSearch.pair(engine, domain, Set.of(influence.datum().field()), effort);
      Claim differ = InfluenceSearch.differ(results.results());
      for (Influence other : matters.data()) {
        boolean both =
            other.reach(facet).filter(reach -> reach.verdict() != Reach.Verdict.CANNOT).isPresent();
        if (both && other != influence) {
          condition(facet, influence.datum(), other.datum(), pairs, differ);
        }
      }
    }

    private void condition(Facet facet, Datum datum, Datum other, CaseSearch pairs, Claim differ) {
      List<ValueSet> pieces = classes.of(other.field(), other.value().values());
      if (pieces.size() > CLASSES_AT_MOST || questions + pieces.size() > QUESTIONS_AT_MOST) {
        complete = false;
        return;
      }
      ValueSet when = ValueSet.none(other.field().symbol().type());
      for (ValueSet piece : pieces) {
        questions++;
        Claim there = new Claim.Is(other.field().symbol(), PossibleValues.of(piece));
        Answer answer = pairs.find(new Claim.All(List.of(differ, there)));
        complete &= !(answer instanceof Answer.Undecided);
        when = answer instanceof Answer.Impossible ? when : when.union(piece);
      }
      if (!when.isEmpty() && !when.equals(other.value().values())) {
        conditions.add(new Condition(facet, datum.field(), other.field(), when));
      }
    }
  }
}
