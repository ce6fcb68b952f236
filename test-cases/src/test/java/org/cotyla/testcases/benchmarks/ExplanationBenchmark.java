package org.cotyla.testcases.benchmarks;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.cotyla.evaluate.Engine;
import org.cotyla.evaluate.Recommendation;
import org.cotyla.explain.Supposition;
import org.cotyla.explain.WhatIf;
import org.cotyla.explain.Why;
import org.cotyla.explain.WhyNot;
import org.cotyla.finding.Case;
import org.cotyla.json.CaseJson;
import org.cotyla.testcases.house.House;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/** The shipped case explained, from the case as given: why, why not, and what if. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class ExplanationBenchmark {

  private Engine engine;
  private Case given;

  @Setup
  public void setUp() throws IOException {
    engine = House.engine();
    Path file =
        Path.of(System.getProperty("cotyla.home", ".."))
            .resolve("test-cases/cases/loose-cup-up-and-out.json");
    given = CaseJson.read(Files.readAllBytes(file));
  }

  @Benchmark
  public Why why() {
    return Why.of(engine.evaluate(given), "cup with porous metal augments");
  }

  @Benchmark
  public WhyNot whyNotRuledOut() {
    Recommendation advice = engine.evaluate(given);
    return WhyNot.of(engine, advice, "hemispherical cup");
  }

  @Benchmark
  public WhatIf whatIf() {
    return WhatIf.of(engine, given, List.of(Supposition.written("hip centre migration", "1.2 cm")));
  }
}
