package org.cotyla.ledger;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Deque;
import java.util.List;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.Consumer;
import org.cotyla.expression.FormulaFunction;
import org.cotyla.ledger.Breach.How;

/**
 * Runs recommendations again on several processors. Few are under way at a time, and what they come
 * to is told in the order in which they were handed in. Used by one thread.
 */
final class Replays implements AutoCloseable {

  private static final int UNDER_WAY_EACH = 16;

  /** A recommendation that is being run again. */
  private record UnderWay(long sequence, Future<List<String>> faults) {}

  private final List<LedgerReading> readings = new ArrayList<>();
  private final BlockingQueue<Replay> idle;
  private final ExecutorService workers;
  private final Deque<UnderWay> underWay = new ArrayDeque<>();
  private final int most;

  /** Each processor has a reading of its own, since neither that nor a replay can be shared. */
  Replays(Ledger ledger, Collection<FormulaFunction> functions, int processors) {
    idle = new ArrayBlockingQueue<>(processors);
    workers = Executors.newFixedThreadPool(processors);
    most = processors * UNDER_WAY_EACH;
    for (int i = 0; i < processors; i++) {
      LedgerReading reading = ledger.reader();
      readings.add(reading);
      idle.add(new Replay(reading, functions));
    }
  }

  /** Hands in a recommendation; faults of earlier ones may be told meanwhile. */
  void run(long sequence, Content.Recommendation recorded, Consumer<Breach> faults) {
    underWay.add(new UnderWay(sequence, workers.submit(() -> faults(recorded))));
    if (underWay.size() > most) {
      tell(faults);
    }
  }

  private List<String> faults(Content.Recommendation recorded) throws InterruptedException {
    Replay replay = idle.take();
    try {
      List<String> found = new ArrayList<>();
      replay.run(recorded, found::add);
      return found;
    } finally {
      idle.add(replay);
    }
  }

  /** Waits for all that are under way. */
  void finish(Consumer<Breach> faults) {
    while (!underWay.isEmpty()) {
      tell(faults);
    }
  }

  private void tell(Consumer<Breach> faults) {
    UnderWay first = underWay.removeFirst();
    try {
      first
          .faults()
          .get()
          .forEach(fault -> faults.accept(new Breach(first.sequence(), How.ALTERED, fault)));
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("the check was stopped", stopped);
    } catch (ExecutionException failed) {
      if (failed.getCause() instanceof RuntimeException known) {
        throw known;
      }
      throw new IllegalStateException("a recommendation could not be run again", failed.getCause());
    }
  }

  @Override
  public void close() {
    workers.shutdownNow();
    readings.forEach(LedgerReading::close);
  }
}
