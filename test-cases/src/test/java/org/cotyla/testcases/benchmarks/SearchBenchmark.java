package org.cotyla.testcases.benchmarks;

import java.util.List;
import java.util.concurrent.TimeUnit;
import org.cotyla.evaluate.Engine;
import org.cotyla.finite.Answer;
import org.cotyla.finite.CaseSearch;
import org.cotyla.finite.Claim;
import org.cotyla.finite.Domain;
import org.cotyla.finite.Effort;
import org.cotyla.protocol.DecisionTable;
import org.cotyla.protocol.Row;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/** A search among all cases of one large table: whether no row may match, and which rows count. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class SearchBenchmark {

  @Param({"100", "500", "2000"})
  public int rows;

  @Param({"C", "F"})
  public String hitPolicy;

  private Engine engine;

  @Setup
  public void setUp() {
    engine = Engine.of(GeneratedProtocol.compiled(GeneratedProtocol.draft(rows, hitPolicy)));
  }

  @Benchmark
  public List<Class<?>> everyRow() {
    CaseSearch search = CaseSearch.of(engine, Domain.of(engine.protocol()), Effort.usual());
    DecisionTable table = engine.protocol().decisions().get(0);
    List<Class<?>> answers = new java.util.ArrayList<>();
    answers.add(search.find(new Claim.NoRow(table)).getClass());
    for (Row row : table.rows()) {
      Answer answer = search.find(new Claim.Counts(table, row));
      answers.add(answer.getClass());
    }
    return answers;
  }
}
