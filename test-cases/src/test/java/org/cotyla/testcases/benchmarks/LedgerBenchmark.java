package org.cotyla.testcases.benchmarks;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.cotyla.evaluate.Engine;
import org.cotyla.expression.FormulaLibrary;
import org.cotyla.finding.Case;
import org.cotyla.json.CaseJson;
import org.cotyla.ledger.Ledger;
import org.cotyla.ledger.LedgerAddress;
import org.cotyla.ledger.ProtocolFile;
import org.cotyla.ledger.Recorder;
import org.cotyla.ledger.SigningKey;
import org.cotyla.ledger.Verification;

/**
 * How many recommendations a second a ledger takes, and how many entries a second are verified.
 * Arguments: the address of a ledger that is not there yet, how many recommendations, how many
 * writers. Each recommendation is evaluated, kept whole and on disk before the next one begins.
 */
public final class LedgerBenchmark {

  private LedgerBenchmark() {}

  /** Runs it once and prints rates. */
  public static void main(String[] arguments) throws IOException {
    PrintStream out = System.out;
    LedgerAddress address = LedgerAddress.of(arguments[0]);
    int entries = Integer.parseInt(arguments[1]);
    int writers = Integer.parseInt(arguments[2]);
    Path home = Path.of(System.getProperty("cotyla.home"));
    byte[] workbook = Files.readAllBytes(home.resolve("rules/acetabular-revision.xlsx"));
    ProtocolFile file = ProtocolFile.read("house", workbook, FormulaLibrary.installed());
    Engine engine = Engine.of(file.protocol());
    Case given =
        CaseJson.read(
            Files.readAllBytes(home.resolve("test-cases/cases/loose-cup-up-and-out.json")));
    Ledger.found(
            address,
            Clock.systemUTC(),
            List.of(
                SigningKey.publicKey("one", SigningKey.make().publicPem()),
                SigningKey.publicKey("two", SigningKey.make().publicPem())))
        .close();
    run(address, file, engine, given, Math.max(1, entries / 10), 1);
    double appends = run(address, file, engine, given, entries, writers);
    out.printf("%d writers: %.0f recommendations a second appended%n", writers, appends);
    try (Ledger ledger = Ledger.open(address, Clock.systemUTC())) {
      for (boolean runAgain : new boolean[] {true, false}) {
        long start = System.nanoTime();
        Verification found =
            Verification.of(ledger, FormulaLibrary.installed(), Optional.empty(), runAgain);
        double seconds = (System.nanoTime() - start) / 1e9;
        if (!found.holds()) {
          throw new IllegalStateException(found.breaches().get(0).what());
        }
        out.printf(
            "verified%s: %.0f entries a second%n",
            runAgain ? "" : ", chain only", found.entries() / seconds);
      }
    }
  }

  private static double run(
      LedgerAddress address,
      ProtocolFile file,
      Engine engine,
      Case given,
      int entries,
      int writers) {
    long start = System.nanoTime();
    List<Thread> threads = new ArrayList<>();
    for (int writer = 0; writer < writers; writer++) {
      Thread thread =
          new Thread(
              () -> {
                try (Ledger ledger = Ledger.open(address, Clock.systemUTC())) {
                  Recorder recorder = new Recorder(ledger, file, engine);
                  IntStream.range(0, entries / writers)
                      .forEach(i -> recorder.recommend("R-" + i, given, LocalDate.now()));
                }
              });
      thread.start();
      threads.add(thread);
    }
    for (Thread thread : threads) {
      try {
        thread.join();
      } catch (InterruptedException stopped) {
        Thread.currentThread().interrupt();
      }
    }
    return (entries / writers) * writers / ((System.nanoTime() - start) / 1e9);
  }
}
