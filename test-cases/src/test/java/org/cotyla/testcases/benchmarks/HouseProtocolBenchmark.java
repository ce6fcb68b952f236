package org.cotyla.testcases.benchmarks;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.cotyla.evaluate.Engine;
import org.cotyla.evaluate.Recommendation;
import org.cotyla.finding.Case;
import org.cotyla.json.CaseJson;
import org.cotyla.testcases.house.House;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/** The shipped case through the house protocol, whole and with half of its findings left out. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class HouseProtocolBenchmark {

  @Param({"0", "0.5"})
  public double missing;

  private Engine engine;
  private Case given;

  @Setup
  public void setUp() throws IOException {
    engine = House.engine();
    Path file =
        Path.of(System.getProperty("cotyla.home", ".."))
            .resolve("test-cases/cases/loose-cup-up-and-out.json");
    Case whole = CaseJson.read(Files.readAllBytes(file));
    Random random = new Random(7);
    given =
        new Case(
            whole.title(),
            whole.stage(),
            whole.findings().stream().filter(f -> random.nextDouble() >= missing).toList());
  }

  @Benchmark
  public Recommendation evaluate() {
    return engine.evaluate(given);
  }
}
