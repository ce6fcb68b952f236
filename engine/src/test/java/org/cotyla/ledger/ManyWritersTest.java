package org.cotyla.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.lang.ProcessBuilder.Redirect;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

@DisplayName("A ledger with many writers")
class ManyWritersTest {

  private static final int WRITERS = 8;
  private static final int EACH = 25;
  private static final int KILLS = 12;
  private static final String WITHOUT_END = String.valueOf(Integer.MAX_VALUE);

  @ParameterizedTest
  @EnumSource(Database.class)
  @DisplayName("takes entries from eight threads at once without losing or forking one")
  void takesThreads(Database database) throws Exception {
    try (SampleLedger sample = SampleLedger.in(database)) {
      ExecutorService pool = Executors.newFixedThreadPool(WRITERS);
      try {
        List<Callable<List<Long>>> work = new ArrayList<>();
        for (int writer = 0; writer < WRITERS; writer++) {
          String reference = "W-" + writer;
          boolean ownConnection = writer % 2 == 0;
          work.add(() -> append(sample, reference, ownConnection));
        }
        List<Long> acknowledged = new ArrayList<>();
        for (Future<List<Long>> done : pool.invokeAll(work)) {
          acknowledged.addAll(done.get());
        }
        assertThat(acknowledged)
            .containsExactlyInAnyOrderElementsOf(
                LongStream.rangeClosed(2, 1 + WRITERS * EACH).boxed().toList());
        assertWhole(sample.ledger(), 1 + WRITERS * EACH);
      } finally {
        pool.shutdownNow();
      }
    }
  }

  private static List<Long> append(SampleLedger sample, String reference, boolean ownConnection) {
    List<Long> written = new ArrayList<>();
    Ledger own =
        ownConnection ? Ledger.open(sample.address(), SampleLedger.CLOCK) : sample.ledger();
    for (int i = 0; i < EACH; i++) {
      written.add(
          own.write(writing -> writing.append(SampleLedger.decision(reference))).sequence());
    }
    if (ownConnection) {
      own.close();
    }
    return written;
  }

  @ParameterizedTest
  @EnumSource(Database.class)
  @DisplayName("takes entries from eight programs at once without losing or forking one")
  void takesPrograms(Database database) throws Exception {
    try (SampleLedger sample = SampleLedger.in(database)) {
      List<Process> programs = new ArrayList<>();
      for (int writer = 0; writer < WRITERS; writer++) {
        programs.add(start(sample, "P-" + writer, String.valueOf(EACH), Redirect.PIPE));
      }
      List<Long> acknowledged = new ArrayList<>();
      for (Process program : programs) {
        acknowledged.addAll(whatItSaid(program.getInputStream()));
        assertThat(program.waitFor()).isZero();
      }
      assertThat(acknowledged)
          .containsExactlyInAnyOrderElementsOf(
              LongStream.rangeClosed(2, 1 + WRITERS * EACH).boxed().toList());
      assertWhole(sample.ledger(), 1 + WRITERS * EACH);
    }
  }

  @ParameterizedTest
  @EnumSource(Database.class)
  @DisplayName("loses nothing that was acknowledged when writers are killed at any moment")
  void survivesKilling(Database database, @TempDir Path folder) throws Exception {
    // The seed is of no matter: when a process dies depends on the machine as well.
    Random random = new Random(20261215);
    try (SampleLedger sample = SampleLedger.in(database)) {
      List<Long> acknowledged = new ArrayList<>();
      for (int round = 0; round < KILLS; round++) {
        Path said = folder.resolve("said-" + round);
        Process program = start(sample, "K-" + round, WITHOUT_END, Redirect.to(said.toFile()));
        while (Files.size(said) == 0 && program.isAlive()) {
          program.waitFor(5, TimeUnit.MILLISECONDS);
        }
        program.waitFor(random.nextInt(150_000), TimeUnit.MICROSECONDS);
        program.destroyForcibly().waitFor();
        acknowledged.addAll(wholeLines(Files.readString(said)));
      }
      try (Stream<Entry> entries = sample.ledger().entries()) {
        assertThat(entries.map(Entry::sequence)).containsAll(acknowledged);
      }
      assertThat(acknowledged).hasSizeGreaterThan(KILLS);
      assertWhole(sample.ledger(), -1);
      long next = sample.ledger().write(w -> w.append(SampleLedger.decision("A-1"))).sequence();
      assertThat(next).isGreaterThan(acknowledged.get(acknowledged.size() - 1));
    }
  }

  private static Process start(SampleLedger sample, String reference, String count, Redirect output)
      throws IOException {
    return new ProcessBuilder(
            Path.of(System.getProperty("java.home"), "bin", "java").toString(),
            "-XX:TieredStopAtLevel=1",
            "-XX:+UseSerialGC",
            "-cp",
            System.getProperty("java.class.path"),
            AppendingProgram.class.getName(),
            sample.address().url(),
            reference,
            count)
        .redirectError(Redirect.INHERIT)
        .redirectOutput(output)
        .start();
  }

  private static List<Long> whatItSaid(InputStream out) throws IOException {
    return new String(out.readAllBytes(), StandardCharsets.UTF_8)
        .lines()
        .map(Long::valueOf)
        .toList();
  }

  /** The last line may have been cut off. */
  private static List<Long> wholeLines(String said) {
    return said.substring(0, said.lastIndexOf('\n') + 1).lines().map(Long::valueOf).toList();
  }

  private static void assertWhole(Ledger ledger, long entries) {
    List<Breach> breaches = new ArrayList<>();
    ChainCheck check = new ChainCheck(ledger);
    try (Stream<StoredEntry> rows = ledger.stored()) {
      rows.forEach(row -> check.next(row, breaches::add));
    }
    assertThat(breaches).isEmpty();
    if (entries >= 0) {
      assertThat(check.lastSequence()).isEqualTo(entries);
    }
  }
}
