package org.cotyla.check;

import java.util.ArrayList;
import java.util.List;
import org.cotyla.evaluate.Engine;
import org.cotyla.evaluate.Recommendation;
import org.cotyla.finite.Answer;
import org.cotyla.finite.CaseSearch;
import org.cotyla.finite.Claim;
import org.cotyla.finite.Domain;
import org.cotyla.finite.Effort;
import org.cotyla.protocol.DecisionTable;
import org.cotyla.protocol.Demand;
import org.cotyla.protocol.Protocol;
import org.cotyla.protocol.Ranking;
import org.cotyla.protocol.Row;
import org.cotyla.protocol.Safeguard;
import org.cotyla.value.PossibleValues;
import org.cotyla.value.Truth;
import org.cotyla.value.Value;

/** Whether a safeguard holds in every complete case, or a smallest case that breaks it. */
final class SafeguardProof {

  private final Engine engine;
  private final Protocol protocol;
  private final Domain domain;
  private final Effort effort;

  SafeguardProof(Engine engine, Domain domain, Effort effort) {
    this.engine = engine;
    this.protocol = engine.protocol();
    this.domain = domain;
    this.effort = effort;
  }

  SafeguardVerdict of(Safeguard safeguard) {
    CaseSearch search = CaseSearch.of(engine, domain, effort);
    List<Claim> conditions = new ArrayList<>();
    for (Safeguard.Condition condition : safeguard.tests()) {
      conditions.add(new Claim.Holds(condition.input().symbol(), condition.test().prepared()));
    }
    List<Claim> breaking = new ArrayList<>(conditions);
    breaking.add(new Claim.Not(met(safeguard.demand())));
    Claim broken = new Claim.All(breaking);
    Answer answer = search.findEarliest(broken);
    if (answer instanceof Answer.Found found) {
      Recommendation example = search.smallest(found, broken).answers().get(0);
      return new SafeguardVerdict.Broken(safeguard, example);
    }
    if (answer instanceof Answer.Undecided undecided) {
      return new SafeguardVerdict.Undecided(safeguard, undecided.why());
    }
    return new SafeguardVerdict.Proven(safeguard, truth(search.find(new Claim.All(conditions))));
  }

  /** Whether there is such a case. */
  private static Truth truth(Answer answer) {
    return answer instanceof Answer.Found
        ? Truth.TRUE
        : answer instanceof Answer.Impossible ? Truth.FALSE : Truth.OPEN;
  }

  /** True of an answer that meets the demand. */
  private Claim met(Demand demand) {
    if (demand instanceof Demand.NeverFirst never) {
      return new Claim.Not(new Claim.First(ranking(never.ranking()), never.option()));
    } else if (demand instanceof Demand.RuledOut out) {
      return new Claim.RuledOut(ranking(out.ranking()), out.option());
    } else if (demand instanceof Demand.RowCounts row) {
      DecisionTable table = table(row.decision());
      return new Claim.Counts(table, row(table, row.row()));
    } else if (demand instanceof Demand.TextShown shown) {
      return shown(shown);
    } else if (demand instanceof Demand.Holds holds) {
      return new Claim.Holds(holds.name(), holds.test().prepared());
    }
    throw new IllegalStateException("no such demand");
  }

  private Claim shown(Demand.TextShown shown) {
    DecisionTable table = table(shown.decision());
    Value text = Value.of(shown.text());
    if (!table.hitPolicy().isList()) {
      return new Claim.Is(shown.output(), PossibleValues.of(text));
    }
    int column =
        table.outputs().stream().map(DecisionTable.Output::symbol).toList().indexOf(shown.output());
    List<Claim> rows = new ArrayList<>();
    java.util.stream.Stream.concat(table.rows().stream(), table.otherwise().stream())
        .filter(row -> row.results().get(column).expression().print().equals(text.literal()))
        .forEach(row -> rows.add(new Claim.Counts(table, row)));
    return new Claim.Any(rows);
  }

  private Ranking ranking(String name) {
    return protocol.ranking(name).orElseThrow();
  }

  private DecisionTable table(String name) {
    return protocol.decision(name).orElseThrow();
  }

  private static Row row(DecisionTable table, String id) {
    return java.util.stream.Stream.concat(table.rows().stream(), table.otherwise().stream())
        .filter(row -> row.id().equals(id))
        .findFirst()
        .orElseThrow();
  }
}
