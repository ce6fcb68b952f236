package org.cotyla.compare;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.Consumer;
import java.util.function.IntConsumer;
import org.cotyla.compare.Impact.Group;
import org.cotyla.compare.Impact.SetAside;
import org.cotyla.evaluate.Engine;
import org.cotyla.evaluate.Recommendation;
import org.cotyla.finite.Answer;
import org.cotyla.issue.Issue;
import org.cotyla.issue.RejectedException;

/**
 * Runs both protocols on past cases, some at a time and in the order of the library, so that a
 * library of any length needs little memory and always gives the same.
 */
public final class ImpactRun {

  private static final int BATCH = 32;

  private record Outcome(
      String reference,
      List<Shift> shifts,
      List<SetAside> setAside,
      List<Recommendation> answers) {}

  private final Engine before;
  private final Engine after;
  private final Pairs pairs;
  private final Map<Shift, List<String>> groups = new LinkedHashMap<>();
  private final List<SetAside> setAside = new ArrayList<>();
  private final Consumer<Answer.Found> seen;
  private int cases;
  private int changed;

  private ImpactRun(Engine before, Engine after, Consumer<Answer.Found> seen) {
    this.seen = seen;
    this.before = before.remembering();
    this.after = after.remembering();
    this.pairs = new Pairs(before.protocol(), after.protocol());
  }

  /**
   * Runs the cases.
   *
   * @param threads how many may be run at once
   * @param progress told how many cases are done, now and then
   * @param seen given each case that changes, in order, with what both protocols decide
   */
  public static Impact of(
      Engine before,
      Engine after,
      Iterator<PastCase> cases,
      int threads,
      IntConsumer progress,
      Consumer<Answer.Found> seen) {
    return new ImpactRun(before, after, seen).run(cases, threads, progress);
  }

  private Impact run(Iterator<PastCase> library, int threads, IntConsumer progress) {
    ExecutorService workers = Executors.newFixedThreadPool(threads);
    try {
      Deque<Future<List<Outcome>>> waiting = new ArrayDeque<>();
      int done = 0;
      while (library.hasNext() || !waiting.isEmpty()) {
        while (library.hasNext() && waiting.size() < threads * 2) {
          List<PastCase> batch = new ArrayList<>();
          while (library.hasNext() && batch.size() < BATCH) {
            batch.add(library.next());
          }
          waiting.add(workers.submit(() -> batch.stream().map(this::outcome).toList()));
        }
        List<Outcome> outcomes = waiting.remove().get();
        outcomes.forEach(this::count);
        done += outcomes.size();
        progress.accept(done);
      }
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("the run over past cases was stopped", stopped);
    } catch (ExecutionException failed) {
      throw new IllegalStateException(failed.getCause());
    } finally {
      workers.shutdownNow();
    }
    List<Group> sorted =
        groups.entrySet().stream()
            .map(entry -> new Group(entry.getKey(), entry.getValue()))
            .sorted((a, b) -> Integer.compare(b.references().size(), a.references().size()))
            .toList();
    return new Impact(cases, changed, sorted, setAside);
  }

  private Outcome outcome(PastCase past) {
    if (past.given().isEmpty()) {
      return new Outcome(
          past.reference(),
          List.of(),
          List.of(new SetAside(past.reference(), "both", past.faults())),
          List.of());
    }
    List<SetAside> refused = new ArrayList<>();
    List<Recommendation> answers = new ArrayList<>();
    for (Engine engine : List.of(before, after)) {
      try {
        answers.add(engine.decide(past.given().get()));
      } catch (RejectedException rejected) {
        String by = engine == before ? "old" : "new";
        refused.add(new SetAside(past.reference(), by, rejected.issues()));
      }
    }
    if (!refused.isEmpty()) {
      return new Outcome(past.reference(), List.of(), together(refused), List.of());
    }
    List<Shift> shifts = Shifts.between(answers.get(0), answers.get(1), pairs);
    return new Outcome(past.reference(), shifts, List.of(), shifts.isEmpty() ? List.of() : answers);
  }

  /** What both protocols say in the same words is said once. */
  private static List<SetAside> together(List<SetAside> refused) {
    boolean both =
        refused.size() == 2
            && texts(refused.get(0).faults()).equals(texts(refused.get(1).faults()));
    return both
        ? List.of(new SetAside(refused.get(0).reference(), "both", refused.get(0).faults()))
        : refused;
  }

  private static List<String> texts(List<Issue> faults) {
    return faults.stream().map(issue -> issue.place().plain() + issue.message()).toList();
  }

  private void count(Outcome outcome) {
    setAside.addAll(outcome.setAside());
    if (outcome.setAside().isEmpty()) {
      cases++;
      if (!outcome.shifts().isEmpty()) {
        changed++;
        List<Recommendation> answers = outcome.answers();
        seen.accept(new Answer.Found(answers.get(0).findings(), answers));
      }
      outcome
          .shifts()
          .forEach(
              shift ->
                  groups
                      .computeIfAbsent(shift, same -> new ArrayList<>())
                      .add(outcome.reference()));
    }
  }
}
