package org.cotyla.testcases.benchmarks;

import java.util.concurrent.TimeUnit;
import org.cotyla.draft.ProtocolDraft;
import org.cotyla.evaluate.Engine;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/** From a draft to an engine that is ready, against rows. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class EngineBuildingBenchmark {

  @Param({"100", "300", "1000", "3000", "10000"})
  public int rows;

  private ProtocolDraft draft;

  @Setup
  public void setUp() {
    draft = GeneratedProtocol.draft(rows);
  }

  @Benchmark
  public Engine build() {
    return Engine.of(GeneratedProtocol.compiled(draft));
  }
}
