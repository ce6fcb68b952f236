package org.cotyla.compare;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.Function;
import java.util.function.IntConsumer;
import org.cotyla.compare.Impact.Group;
import org.cotyla.compare.Impact.SetAside;
import org.cotyla.evaluate.Engine;
import org.cotyla.evaluate.Recommendation;
import org.cotyla.finding.Case;
import org.cotyla.finding.Findings;
import org.cotyla.finite.Answer;
import org.cotyla.issue.Issue;
import org.cotyla.issue.RejectedException;

/**
 * Runs both protocols on past cases, some at a time and in the order of the library, so that a
 * library of any length needs little memory and always gives the same.
 */
public final class ImpactRun {

  private static final int BATCH = 32;
  private static final int MOST_EXAMPLES = 40;
  private static final String BOTH = "both";

  private record Outcome(PastCase past, List<Shift> shifts, List<SetAside> setAside) {}

  private final Engine before;
  private final Engine after;
  private final PairedProtocols protocols;
  private final Map<Shift, List<String>> groups = new LinkedHashMap<>();
  private final List<SetAside> setAside = new ArrayList<>();
  private final List<Answer.Found> examples = new ArrayList<>();
  private int cases;
  private int changed;

  private ImpactRun(Engine before, Engine after) {
    this.before = before;
    this.after = after;
    this.protocols = new PairedProtocols(this.before, this.after);
  }

  /**
   * Runs the cases.
   *
   * @param threads how many may be run at once
   * @param progress told how many cases are done, now and then
   */
  public static ImpactRun of(
      Engine before, Engine after, Iterator<PastCase> cases, int threads, IntConsumer progress) {
    ImpactRun run = new ImpactRun(before, after);
    run.run(cases, threads, progress);
    return run;
  }

  /** What the new protocol changes for them. */
  public Impact impact() {
    List<Group> sorted =
        groups.entrySet().stream()
            .map(entry -> new Group(entry.getKey(), entry.getValue()))
            .sorted((a, b) -> Integer.compare(b.references().size(), a.references().size()))
            .toList();
    return new Impact(cases, changed, sorted, setAside);
  }

  /** The first cases that change, with what both protocols decide. */
  public List<Answer.Found> examples() {
    return List.copyOf(examples);
  }

  private void run(Iterator<PastCase> library, int threads, IntConsumer progress) {
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
  }

  private Outcome outcome(PastCase past) {
    if (past.given().isEmpty()) {
      return refused(past, List.of(new SetAside(past.reference(), BOTH, past.faults())));
    }
    List<SetAside> refused = new ArrayList<>();
    boolean readAlike = protocols.readAlike();
    Optional<Findings> old = read(past, readAlike ? BOTH : "old", protocols::readByOld, refused);
    Optional<Findings> young =
        readAlike ? Optional.empty() : read(past, "new", protocols::readByNew, refused);
    if (old.isEmpty() || !refused.isEmpty()) {
      return refused(past, together(refused));
    }
    try (PairedCase pair = protocols.open(old.get(), young)) {
      return new Outcome(past, Shifts.of(pair), List.of());
    }
  }

  private static Optional<Findings> read(
      PastCase past, String by, Function<Case, Findings> reader, List<SetAside> refused) {
    try {
      return past.given().map(reader);
    } catch (RejectedException rejected) {
      refused.add(new SetAside(past.reference(), by, rejected.issues()));
      return Optional.empty();
    }
  }

  private static Outcome refused(PastCase past, List<SetAside> why) {
    return new Outcome(past, List.of(), why);
  }

  /** What both protocols say in the same words is said once. */
  private static List<SetAside> together(List<SetAside> refused) {
    boolean both =
        refused.size() == 2
            && texts(refused.get(0).faults()).equals(texts(refused.get(1).faults()));
    return both
        ? List.of(new SetAside(refused.get(0).reference(), BOTH, refused.get(0).faults()))
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
        keep(outcome.past());
      }
      for (Shift shift : outcome.shifts()) {
        groups.computeIfAbsent(shift, same -> new ArrayList<>()).add(outcome.past().reference());
      }
    }
  }

  private void keep(PastCase past) {
    if (examples.size() < MOST_EXAMPLES) {
      Case given = past.given().orElseThrow();
      Recommendation was = before.decide(given);
      examples.add(new Answer.Found(was.findings(), List.of(was, after.decide(given))));
    }
  }
}
