package org.cotyla.retrospective;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.cotyla.audit.AgainstRuleOut;
import org.cotyla.audit.AuditTotals;
import org.cotyla.evaluate.Engine;
import org.cotyla.identity.ProtocolDigest;
import org.cotyla.issue.Issues;
import org.cotyla.issue.Place;
import org.cotyla.issue.RejectedException;

/**
 * Judges a file of past cases on all processors. Rows are handed out in small lots, of which only a
 * few are under way, and their results are added up in the order of the file: memory does not grow
 * with the rows, and the answer does not hang on the number of processors.
 */
public final class RetrospectiveRun {

  private static final int LOT = 200;

  /**
   * How a run is done.
   *
   * @param setAside the file for rows that cannot be judged
   * @param state the file that keeps how far it has come
   * @param resume whether to go on from the state
   * @param every after how many rows the state is kept
   * @param threads how many processors are used
   * @param today the day after which no past case can be
   */
  public record Settings(
      Path setAside,
      Optional<Path> state,
      boolean resume,
      long every,
      int threads,
      LocalDate today) {}

  /** Told now and then how far a run has come. */
  public interface Progress {
    void at(long done, long size);
  }

  private final Engine engine;
  private final Optional<Engine> draft;
  private final ColumnMapping mapping;
  private final Settings settings;
  private final RowJudge judge;
  private final String inputs;

  public RetrospectiveRun(
      Engine engine, Optional<Engine> draft, ColumnMapping mapping, Settings settings) {
    this.engine = engine;
    this.draft = draft;
    this.mapping = mapping;
    this.settings = settings;
    this.judge = new RowJudge(engine, draft, mapping, settings.today());
    this.inputs =
        RowDigest.of(
            MappingFile.write(mapping)
                + ProtocolDigest.of(engine.protocol())
                + draft.map(other -> ProtocolDigest.of(other.protocol())).orElse(""));
  }

  /** A lot under way, with the digest of all rows up to its end. */
  private record Lot(Future<Tallied> result, String digest, long position) {}

  /**
   * Judges the rows.
   *
   * @throws RejectedException when the state does not fit the rows, the mapping or the protocols
   */
  public RetrospectiveReport run(CaseRows rows, Progress progress) throws IOException {
    RunState start = settings.resume() ? resumed() : fresh();
    RowDigest digest = new RowDigest();
    skip(rows, start, digest);
    ExecutorService workers = Executors.newFixedThreadPool(settings.threads());
    try (SetAsideFile setAside =
        settings.resume()
            ? SetAsideFile.resumed(settings.setAside(), start.setAsideBytes())
            : SetAsideFile.fresh(settings.setAside())) {
      Sum sum = new Sum(start, setAside);
      Deque<Lot> underWay = new ArrayDeque<>();
      List<RawRow> lot = lot(rows, digest);
      while (!lot.isEmpty() || !underWay.isEmpty()) {
        if (!lot.isEmpty() && underWay.size() < 2 * settings.threads()) {
          List<RawRow> handed = lot;
          Future<Tallied> result = workers.submit(() -> judge.judge(handed));
          underWay.add(new Lot(result, digest.soFar(), rows.position()));
          lot = lot(rows, digest);
        } else {
          Lot done = underWay.removeFirst();
          sum.add(result(done), done.digest());
          progress.at(done.position(), rows.size());
        }
      }
      sum.keep(digest.soFar());
      return report(sum, rows.blank());
    } finally {
      workers.shutdownNow();
    }
  }

  private static List<RawRow> lot(CaseRows rows, RowDigest digest) throws IOException {
    List<RawRow> lot = new ArrayList<>(LOT);
    while (lot.size() < LOT) {
      Optional<RawRow> row = rows.next();
      if (row.isEmpty()) {
        break;
      }
      digest.add(row.get());
      lot.add(row.get());
    }
    return lot;
  }

  private static Tallied result(Lot lot) {
    try {
      return lot.result().get();
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("the run was stopped", stopped);
    } catch (ExecutionException failed) {
      throw new IllegalStateException("a row could not be judged", failed.getCause());
    }
  }

  private RunState fresh() {
    return new RunState(
        inputs,
        RunCounts.NONE,
        "",
        0,
        new AuditTotals(),
        List.of(),
        draft.map(other -> new Tallied.Draft(new AuditTotals(), new DraftChanges())));
  }

  private RunState resumed() throws IOException {
    Path file = settings.state().orElseThrow();
    if (!Files.exists(file)) {
      // It was stopped before its first state: what it had set aside by then is written again.
      return fresh();
    }
    RunState state =
        StateFile.read(file)
            .orElseThrow(() -> refused("R010", "this is not the whole state of a run", ""));
    if (!state.inputs().equals(inputs)) {
      throw refused(
          "R011",
          "the state is of a run with another mapping or protocol",
          "start again without --resume, or give the same mapping and protocols");
    }
    return state;
  }

  private static void skip(CaseRows rows, RunState start, RowDigest digest) throws IOException {
    for (long i = 0; i < start.counts().read(); i++) {
      rows.next().ifPresent(digest::add);
    }
    if (start.counts().read() > 0 && !digest.soFar().equals(start.rows())) {
      throw refused(
          "R012",
          "the cases are not those that the state is of: a row before the place was changed",
          "start again without --resume");
    }
  }

  private static RejectedException refused(String code, String message, String help) {
    Issues issues = new Issues();
    issues.error(
        code,
        new Place.Whole("state file"),
        message,
        Optional.of(help).filter(text -> !text.isEmpty()));
    return new RejectedException(issues.list());
  }

  private RetrospectiveReport report(Sum sum, long blank) {
    return new RetrospectiveReport(
        engine.protocol(),
        mapping,
        sum.counts,
        blank,
        sum.totals,
        sum.againstRuleOuts,
        sum.draft.map(
            other ->
                new RetrospectiveReport.Comparison(
                    draft.orElseThrow().protocol(),
                    judge.unknownToDraft(),
                    other.totals(),
                    other.changes())));
  }

  /** What was judged so far; written down now and then. */
  private final class Sum {
    private final SetAsideFile setAside;
    private RunCounts counts;
    private AuditTotals totals;
    private final List<AgainstRuleOut> againstRuleOuts;
    private Optional<Tallied.Draft> draft;
    private long kept;

    Sum(RunState start, SetAsideFile setAside) {
      this.setAside = setAside;
      this.counts = start.counts();
      this.totals = start.totals();
      this.againstRuleOuts = new ArrayList<>(start.againstRuleOuts());
      this.draft = start.draft();
      this.kept = counts.read();
    }

    void add(Tallied part, String digest) throws IOException {
      setAside.write(part.setAside());
      counts = counts.plus(part);
      totals = totals.merge(part.totals());
      part.againstRuleOuts().stream()
          .limit(Math.max(0, AgainstRuleOut.MOST - againstRuleOuts.size()))
          .forEach(againstRuleOuts::add);
      if (draft.isPresent() && part.draft().isPresent()) {
        DraftChanges changes = draft.get().changes();
        changes.addAll(part.draft().get().changes());
        AuditTotals both = draft.get().totals().merge(part.draft().get().totals());
        draft = Optional.of(new Tallied.Draft(both, changes));
      }
      if (counts.read() - kept >= settings.every()) {
        keep(digest);
      }
    }

    void keep(String digest) throws IOException {
      if (settings.state().isPresent()) {
        RunState state =
            new RunState(inputs, counts, digest, setAside.force(), totals, againstRuleOuts, draft);
        StateFile.write(settings.state().get(), state);
        kept = counts.read();
      }
    }
  }
}
