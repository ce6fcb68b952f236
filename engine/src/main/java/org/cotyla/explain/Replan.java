package org.cotyla.explain;

import java.util.List;
import java.util.Optional;
import org.cotyla.evaluate.Engine;
import org.cotyla.evaluate.Recommendation;
import org.cotyla.finding.Case;
import org.cotyla.finding.Datum;
import org.cotyla.finding.Findings;
import org.cotyla.finding.FindingsReader;
import org.cotyla.issue.Issues;
import org.cotyla.issue.RejectedException;
import org.cotyla.name.NameIndex;
import org.cotyla.protocol.Field;

/**
 * A planned case run again with what was found at a later stage.
 *
 * @param comparison the plan against the answer of now
 * @param restated the fields that the plan states and the later findings state again, which
 *     replaces them; in the order of the protocol
 */
public record Replan(Comparison comparison, List<Field> restated) {

  public Replan {
    restated = List.copyOf(restated);
  }

  /**
   * Lays the later findings over the plan's and runs the protocol on both. When the later case
   * states no stage, it is the one after the plan's.
   *
   * @throws RejectedException listing every fault of both cases
   */
  public static Replan of(Engine engine, Case plan, Case later) {
    return new Run(engine).of(plan, later);
  }

  /** One comparison in the making. Used once. */
  private static final class Run {

    private final Engine engine;
    private final List<String> stages;
    private final FindingsReader reader;
    private final Issues issues = new Issues();

    Run(Engine engine) {
      this.engine = engine;
      this.stages = engine.protocol().about().stages();
      this.reader = new FindingsReader(engine.protocol());
    }

    Replan of(Case plan, Case later) {
      Optional<Findings> planned = read(plan);
      Case staged = staged(later, planned);
      Optional<Findings> found = read(staged);
      found.ifPresent(findings -> requireNotEarlier(findings, planned, staged));
      if (issues.hasErrors() || planned.isEmpty() || found.isEmpty()) {
        throw new RejectedException(issues.list());
      }
      Recommendation before = engine.evaluate(planned.get());
      Recommendation after = engine.evaluate(Overlay.of(plan, staged).result());
      return new Replan(Comparison.of(before, after), restated(planned.get(), found.get()));
    }

    private Optional<Findings> read(Case given) {
      try {
        return Optional.of(reader.read(given));
      } catch (RejectedException faulty) {
        issues.addAll(faulty.issues());
        return Optional.empty();
      }
    }

    /** A plan that cannot be read is taken to be at the first stage, so that more faults show. */
    private Case staged(Case later, Optional<Findings> planned) {
      if (later.stage().isPresent()) {
        return later;
      }
      int next = planned.map(this::stageOf).orElse(0) + 1;
      return later.atStage(stages.get(Math.min(next, stages.size() - 1)));
    }

    private void requireNotEarlier(Findings found, Optional<Findings> planned, Case later) {
      planned
          .filter(plan -> stageOf(found) < stageOf(plan))
          .ifPresent(
              plan ->
                  issues.error(
                      "C041",
                      later.stagePlace(),
                      "the stage `" + found.stage() + "` is before the plan's, " + plan.stage(),
                      "the first case is the plan, the second what was found later"));
    }

    private int stageOf(Findings findings) {
      return stages.indexOf(findings.stage());
    }

    private static List<Field> restated(Findings planned, Findings found) {
      NameIndex<Datum> plan = NameIndex.of(planned.data(), datum -> datum.field().name());
      return found.data().stream()
          .filter(FindingChange::isKnown)
          .map(Datum::field)
          .filter(field -> plan.find(field.name()).filter(FindingChange::isKnown).isPresent())
          .toList();
    }
  }
}
