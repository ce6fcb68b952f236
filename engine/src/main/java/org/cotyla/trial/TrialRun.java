package org.cotyla.trial;

import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.cotyla.evaluate.DecisionResult;
import org.cotyla.evaluate.Engine;
import org.cotyla.evaluate.Recommendation;
import org.cotyla.evaluate.Standing;
import org.cotyla.identity.ProtocolDigest;
import org.cotyla.issue.Issue;
import org.cotyla.issue.RejectedException;
import org.cotyla.protocol.Row;

/** Tries cases one after another and notes which rows they exercise. Not thread-safe. */
public final class TrialRun {

  private final Engine engine;
  private final List<Tried> tried = new ArrayList<>();
  private final Set<Row> exercised = Collections.newSetFromMap(new IdentityHashMap<>());

  public TrialRun(Engine engine) {
    this.engine = engine;
  }

  /** Runs a case and holds its answer against what it should be. */
  public void add(Trial trial) {
    try {
      Recommendation answer = engine.evaluate(trial.given());
      note(answer);
      List<Difference> differences = ClaimCheck.differences(answer, trial.claims());
      add(
          trial.suite(),
          trial.name(),
          trial.because(),
          differences.isEmpty() ? new Outcome.Passed() : new Outcome.Failed(differences));
    } catch (RejectedException refused) {
      add(trial.suite(), trial.name(), trial.because(), new Outcome.Refused(refused.issues()));
    }
  }

  /** Adds a case that could not even be read. */
  public void addUnreadable(String suite, String name, List<Issue> issues) {
    add(suite, name, "", new Outcome.Refused(issues));
  }

  private void add(String suite, String name, String because, Outcome outcome) {
    tried.add(new Tried(suite, name, because, outcome));
  }

  private void note(Recommendation answer) {
    answer.firings().stream()
        .filter(firing -> firing.standing() == Standing.DECIDES)
        .forEach(firing -> exercised.add(firing.row()));
    answer.decisions().stream()
        .filter(DecisionResult::byDefault)
        .flatMap(decision -> decision.table().otherwise().stream())
        .forEach(exercised::add);
  }

  public TrialReport report() {
    List<TrialReport.Unexercised> unexercised =
        engine.protocol().decisions().stream()
            .flatMap(
                decision ->
                    Stream.concat(decision.rows().stream(), decision.otherwise().stream())
                        .filter(row -> !exercised.contains(row))
                        .map(row -> new TrialReport.Unexercised(decision, row)))
            .toList();
    return new TrialReport(
        engine.protocol(), ProtocolDigest.of(engine.protocol()), tried, unexercised);
  }
}
