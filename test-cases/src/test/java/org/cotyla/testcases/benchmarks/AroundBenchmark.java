package org.cotyla.testcases.benchmarks;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.cotyla.evaluate.Engine;
import org.cotyla.evaluate.Recommendation;
import org.cotyla.explore.Goal;
import org.cotyla.explore.Margins;
import org.cotyla.explore.SmallestChange;
import org.cotyla.explore.WhatMatters;
import org.cotyla.finding.Case;
import org.cotyla.json.CaseJson;
import org.cotyla.protocol.Ranking;
import org.cotyla.testcases.house.House;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/** What lies around the shipped case: missing data, margins and smallest changes. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class AroundBenchmark {

  /** How many stated findings are left out; eight of the shipped case are missing already. */
  @Param({"0", "7", "15"})
  public int leftOut;

  private Engine engine;
  private Recommendation advice;

  @Setup
  public void setUp() throws IOException {
    engine = House.engine();
    Path file =
        Path.of(System.getProperty("cotyla.home", ".."))
            .resolve("test-cases/cases/loose-cup-up-and-out.json");
    Case whole = CaseJson.read(Files.readAllBytes(file));
    List<Case.Finding> findings = new ArrayList<>(whole.findings());
    Collections.shuffle(findings, new Random(7));
    advice =
        engine.evaluate(
            new Case(whole.title(), whole.stage(), findings.subList(leftOut, findings.size())));
  }

  @Benchmark
  public WhatMatters whatMatters() {
    return WhatMatters.of(engine, advice);
  }

  @Benchmark
  public Margins margins() {
    return Margins.of(engine, advice);
  }

  /** For every option of the first ranking, up to two findings. */
  @Benchmark
  public List<SmallestChange> smallestChangeOfEachOption() {
    Ranking ranking = engine.protocol().rankings().get(0);
    return ranking.options().stream()
        .map(option -> new Goal.First(ranking, option.name()))
        .map(goal -> SmallestChange.of(engine, advice, goal, 2))
        .toList();
  }
}
