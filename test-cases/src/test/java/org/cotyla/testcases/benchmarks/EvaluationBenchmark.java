package org.cotyla.testcases.benchmarks;

import java.util.List;
import java.util.concurrent.TimeUnit;
import org.cotyla.evaluate.Engine;
import org.cotyla.evaluate.Recommendation;
import org.cotyla.finding.Case;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/** One case through a warm engine, from the case as given to the recommendation, against rows. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class EvaluationBenchmark {

  @Param({"100", "300", "1000", "3000", "10000"})
  public int rows;

  @Param({"0", "0.5"})
  public double missing;

  private Engine engine;
  private List<Case> cases;
  private int next;

  @Setup
  public void setUp() {
    engine = Engine.of(GeneratedProtocol.compiled(GeneratedProtocol.draft(rows)));
    cases = GeneratedProtocol.cases(256, missing);
  }

  @Benchmark
  public Recommendation evaluate() {
    next = (next + 1) & 255;
    return engine.evaluate(cases.get(next));
  }
}
