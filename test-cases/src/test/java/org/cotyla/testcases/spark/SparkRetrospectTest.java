package org.cotyla.testcases.spark;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import org.apache.spark.SparkConf;
import org.apache.spark.api.java.JavaSparkContext;
import org.cotyla.retrospective.CaseRows;
import org.cotyla.retrospective.ColumnMapping;
import org.cotyla.retrospective.PartTotals;
import org.cotyla.retrospective.RetrospectiveReport;
import org.cotyla.retrospective.RetrospectiveRun;
import org.cotyla.testcases.house.House;
import org.cotyla.testcases.retrospective.PastCasesCsv;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The audit of past cases in Apache Spark, in its local mode. */
class SparkRetrospectTest {

  private static final LocalDate TODAY = LocalDate.of(2026, 1, 1);
  private static final int ROWS = 600;

  @Test
  @DisplayName("Apache Spark comes to the same totals and faults as a run on one machine")
  void sameTotals(@TempDir Path folder) throws IOException {
    Path csv = folder.resolve("cases.csv");
    new PastCasesCsv(150).write(csv, ROWS, 50);
    RetrospectiveReport alone = alone(csv, folder.resolve("aside.csv"));
    Path workbook =
        Path.of(System.getProperty("cotyla.home", ".."), "rules", "acetabular-revision.xlsx");
    SparkConf conf =
        new SparkConf()
            .setAppName("retrospect")
            .setMaster("local[2]")
            .set("spark.ui.enabled", "false")
            .set("spark.driver.host", "127.0.0.1")
            .set("spark.driver.bindAddress", "127.0.0.1")
            .set("spark.local.dir", folder.resolve("spark").toString());
    PartTotals spread;
    try (JavaSparkContext spark = new JavaSparkContext(conf)) {
      spread =
          SparkRetrospect.run(
              spark, Files.readAllBytes(workbook), csv.toUri().toString(), 4, TODAY);
    }
    assertThat(spread.counts()).isEqualTo(alone.counts());
    assertThat(spread.counts().setAside()).isEqualTo(ROWS / 50);
    assertThat(spread.totals()).isEqualTo(alone.totals());
    assertThat(spread.setAside()).hasSize((int) alone.counts().reasons());
  }

  private static RetrospectiveReport alone(Path csv, Path aside) throws IOException {
    try (CaseRows rows = CaseRows.open(csv)) {
      ColumnMapping mapping =
          ColumnMapping.guess(rows.headings(), House.engine().protocol()).checked("cases.csv");
      RetrospectiveRun.Settings settings =
          new RetrospectiveRun.Settings(aside, Optional.empty(), false, 10_000, 2, TODAY);
      return new RetrospectiveRun(House.engine(), Optional.empty(), mapping, settings)
          .run(rows, (done, size) -> {});
    }
  }
}
