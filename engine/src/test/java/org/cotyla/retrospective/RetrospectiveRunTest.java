package org.cotyla.retrospective;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.cotyla.audit.Dimension;
import org.cotyla.audit.Tally;
import org.cotyla.compile.SampleDraft;
import org.cotyla.evaluate.Engine;
import org.cotyla.issue.RejectedException;
import org.cotyla.retrospective.DraftChanges.Kind;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Past cases judged by a small protocol: class A favours rest, and a firm one bars a brace. */
class RetrospectiveRunTest {

  private static final Engine SAMPLE = Engine.of(new SampleDraft().protocol());
  private static final Engine STRICTER =
      Engine.of(new SampleDraft().set("Calculations", 0, "expression", "50").protocol());
  private static final LocalDate TODAY = LocalDate.of(2026, 6, 30);
  private static final String HEADINGS =
      "case reference,date,role,stage,width (cm),grade,firm,plan done,surgeon\n";

  @TempDir private Path folder;

  private Path csv(String rows) throws IOException {
    return Files.writeString(folder.resolve("cases.csv"), HEADINGS + rows);
  }

  private static RetrospectiveRun run(
      Path aside, Optional<Path> state, boolean resume, long every, int threads, Path cases)
      throws IOException {
    try (CaseRows rows = CaseRows.open(cases)) {
      ColumnMapping mapping =
          ColumnMapping.guess(rows.headings(), SAMPLE.protocol()).checked("cases");
      return new RetrospectiveRun(
          SAMPLE,
          Optional.of(STRICTER),
          mapping,
          new RetrospectiveRun.Settings(aside, state, resume, every, threads, TODAY));
    }
  }

  private static RetrospectiveReport whole(Path cases, Path aside, int threads) throws IOException {
    try (CaseRows rows = CaseRows.open(cases)) {
      return run(aside, Optional.empty(), false, 1000, threads, cases).run(rows, (d, s) -> {});
    }
  }

  private RetrospectiveReport report(String rows) throws IOException {
    return whole(csv(rows), folder.resolve("aside.csv"), 2);
  }

  @Test
  @DisplayName("What was done is the first, acceptable, ruled out or none of the options")
  void verdicts() throws IOException {
    RetrospectiveReport report =
        report(
            """
            R-1,2025-01-05,fellow,planning,4,low,,rest,Somebody
            R-2,2025-01-06,fellow,planning,4,low,,brace,Somebody
            R-3,2025-02-07,consultant,theatre,1,low,yes,brace,Somebody
            R-4,2025-02-08,consultant,planning,4,low,,not listed,Somebody
            """);
    assertThat(report.counts()).isEqualTo(new RunCounts(4, 4, 0, 0));
    assertThat(report.totals().all("plan")).isEqualTo(new Tally(1, 1, 1, 1, 0));
    assertThat(report.totals().by(Dimension.MONTH, "plan", ""))
        .containsEntry("2025-01", new Tally(1, 1, 0, 0, 0))
        .containsEntry("2025-02", new Tally(0, 0, 1, 1, 0));
    assertThat(report.totals().by(Dimension.ROLE, "plan", ""))
        .containsOnlyKeys("fellow", "consultant");
    assertThat(Files.exists(folder.resolve("aside.csv"))).isFalse();
  }

  @Test
  @DisplayName("Each faulty row is set aside with its number, column and reason; none is lost")
  void setAside() throws IOException {
    RetrospectiveReport report =
        report(
            """
            R-1,2025-01-05,fellow,planning,4,low,,rest,x

            R-2,05.01.2025,fellow,planning,4,low,,rest,x
            R-3,2025-01-05,fellow,planning,4,lwo,,rst,x
            R-4,2025-01-05,fellow,planning,400,low,,rest,x
            R-5,2025-01-05,fellow,planning,4,low,yes,rest,x
            R-6,2025-01-05,fellow,planning,4,low,,,x
            R-7,2025-01-05,fellow,planning
            R-8,2025-01-05,fellow,planning,4,low,,rest,"open
            R-9,2025-01-05,fellow,planning,4,low,,rest,"say ""x"" and
            go on"
            R-10,2099-01-05,Dr X. 7,planning,4,low,,rest,x
            R-11,2025-01-05,fellow,planning,4,low,,rest,"a"b
            R-12,2025-01-05,fellow,planning,4,low,,rest,"open
            """);
    List<String> lines = Files.readAllLines(folder.resolve("aside.csv"));
    assertThat(lines)
        .satisfiesExactly(
            one -> assertThat(one).isEqualTo("row,column,reason"),
            one -> assertThat(one).startsWith("4,date,").contains("2025-03-31"),
            one -> assertThat(one).startsWith("5,plan done,").contains("did you mean `rest`"),
            one -> assertThat(one).startsWith("5,grade,").contains("did you mean `low`"),
            one -> assertThat(one).startsWith("6,width (cm),").contains("4000 mm"),
            one -> assertThat(one).startsWith("7,firm,").contains("theatre"),
            one -> assertThat(one).startsWith("8,,nothing says what was done"),
            one -> assertThat(one).startsWith("9,,\"the row has 4 cells"),
            one -> assertThat(one).startsWith("10,,a quotation mark is not closed"),
            one -> assertThat(one).startsWith("12,date,").contains("yet to come"),
            one -> assertThat(one).startsWith("12,role,").doesNotContain("Dr X"),
            one -> assertThat(one).startsWith("13,,a quotation mark stands"),
            one -> assertThat(one).startsWith("14,,a quotation mark is not closed"));
    assertThat(report.counts()).isEqualTo(new RunCounts(12, 2, 10, 12));
    assertThat(report.blank()).isEqualTo(1);
    assertThat(report.totals().all("plan").judged()).isEqualTo(2);
  }

  @Test
  @DisplayName("A draft's other verdicts are counted, with their rows and first cases")
  void against() throws IOException {
    RetrospectiveReport report =
        report(
            """
            R-1,2025-01-05,fellow,theatre,4,low,yes,brace,x
            R-2,2025-01-05,fellow,theatre,6,low,yes,brace,x
            123456789,2025-01-05,fellow,theatre,4,low,yes,rest,x
            """);
    DraftChanges changes = report.comparison().orElseThrow().changes();
    assertThat(changes.count(Kind.COMPARED, "plan")).isEqualTo(3);
    assertThat(changes.values(Kind.VERDICT, "plan"))
        .containsExactly(java.util.Map.entry("acceptable -> ruled out", 1L));
    assertThat(changes.values(Kind.ROW, "plan"))
        .containsOnly(
            java.util.Map.entry("V-1 speaks no longer", 1L),
            java.util.Map.entry("V-2 speaks only in the draft", 1L));
    assertThat(changes.examples())
        .extracting(DraftChanges.Example::reference)
        .containsExactly("R-1");
    assertThat(report.comparison().orElseThrow().totals().all("plan"))
        .isEqualTo(new Tally(1, 1, 1, 0, 0));
  }

  /** Rows of all kinds, about one in ten of them faulty. */
  private static String drawn(int rows, long seed) {
    Random random = new Random(seed);
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < rows; i++) {
      text.append("R-").append(i).append(",2025-0").append(1 + random.nextInt(9)).append("-05,");
      text.append(random.nextBoolean() ? "fellow," : "consultant,");
      text.append("theatre,").append(random.nextInt(13)).append(',');
      text.append(random.nextInt(10) == 0 ? "wrong" : random.nextBoolean() ? "low" : "high");
      text.append(random.nextBoolean() ? ",yes," : ",,");
      text.append(random.nextBoolean() ? "rest" : "brace").append(",x\n");
    }
    return text.toString();
  }

  private static void same(RetrospectiveReport one, RetrospectiveReport other) {
    assertThat(one.counts()).isEqualTo(other.counts());
    assertThat(one.totals()).isEqualTo(other.totals());
    assertThat(one.comparison().orElseThrow().totals())
        .isEqualTo(other.comparison().orElseThrow().totals());
    assertThat(one.comparison().orElseThrow().changes())
        .isEqualTo(other.comparison().orElseThrow().changes());
  }

  @Test
  @DisplayName("One processor and many come to the same totals and the same rows set aside")
  void sameOnAnyMachine() throws IOException {
    Path cases = csv(drawn(3000, 1));
    RetrospectiveReport one = whole(cases, folder.resolve("one.csv"), 1);
    RetrospectiveReport many = whole(cases, folder.resolve("many.csv"), 4);
    same(one, many);
    assertThat(one.counts().read()).isEqualTo(3000);
    assertThat(one.counts().setAside()).isBetween(200L, 400L);
    assertThat(folder.resolve("one.csv")).hasSameTextualContentAs(folder.resolve("many.csv"));
  }

  @Test
  @DisplayName("A run broken off at random places goes on to what an unbroken run comes to")
  void resumed() throws IOException {
    Path cases = csv(drawn(4000, 2));
    RetrospectiveReport unbroken = whole(cases, folder.resolve("unbroken.csv"), 2);
    Random random = new Random(3);
    for (int round = 0; round < 8; round++) {
      Path aside = folder.resolve("aside-" + round + ".csv");
      Path state = folder.resolve("state-" + round);
      int breaks = 0;
      RetrospectiveReport report = null;
      while (report == null) {
        boolean resume = breaks > 0;
        int fuel = 1 + random.nextInt(9);
        try (CaseRows rows = CaseRows.open(cases)) {
          int[] left = {fuel};
          report =
              run(aside, Optional.of(state), resume, 1 + random.nextInt(500), 2, cases)
                  .run(
                      rows,
                      (done, size) -> {
                        if (--left[0] == 0) {
                          throw new BrokenOffException();
                        }
                      });
        } catch (BrokenOffException broken) {
          breaks++;
        }
      }
      assertThat(breaks).isPositive();
      same(report, unbroken);
      assertThat(aside).hasSameTextualContentAs(folder.resolve("unbroken.csv"));
    }
  }

  /** Stands for a process that is killed: nothing is tidied up after it. */
  private static final class BrokenOffException extends RuntimeException {
    private static final long serialVersionUID = 1L;
  }

  @Test
  @DisplayName("A state does not go on with other rows, and a damaged state is refused")
  void stateOfOtherRows() throws IOException {
    Path cases = csv(drawn(600, 4));
    Path state = folder.resolve("state");
    Path aside = folder.resolve("aside.csv");
    try (CaseRows rows = CaseRows.open(cases)) {
      run(aside, Optional.of(state), false, 100, 2, cases).run(rows, (d, s) -> {});
    }
    csv(drawn(600, 5));
    assertThatThrownBy(
            () -> {
              try (CaseRows rows = CaseRows.open(cases)) {
                run(aside, Optional.of(state), true, 100, 2, cases).run(rows, (d, s) -> {});
              }
            })
        .isInstanceOfSatisfying(
            RejectedException.class,
            refused -> assertThat(refused.issues().get(0).code()).isEqualTo("R012"));
    Files.writeString(state, Files.readString(state).replaceFirst("counts,600", "counts,601"));
    assertThatThrownBy(
            () -> {
              try (CaseRows rows = CaseRows.open(cases)) {
                run(aside, Optional.of(state), true, 100, 2, cases).run(rows, (d, s) -> {});
              }
            })
        .isInstanceOfSatisfying(
            RejectedException.class,
            refused -> assertThat(refused.issues().get(0).code()).isEqualTo("R010"));
  }

  @Test
  @DisplayName("A workbook comes to the same totals as the same rows in CSV")
  void workbook() throws IOException {
    String rows = drawn(300, 6);
    RetrospectiveReport ofCsv = whole(csv(rows), folder.resolve("csv.csv"), 2);
    Path xlsx = folder.resolve("cases.xlsx");
    try (XSSFWorkbook workbook = new XSSFWorkbook();
        OutputStream out = Files.newOutputStream(xlsx)) {
      var sheet = workbook.createSheet("cases");
      for (String line : (HEADINGS + rows).lines().toList()) {
        Row row = sheet.createRow(sheet.getPhysicalNumberOfRows());
        String[] cells = line.split(",", -1);
        for (int i = 0; i < cells.length; i++) {
          if (cells[i].matches("\\d+")) {
            row.createCell(i).setCellValue(Integer.parseInt(cells[i]));
          } else if (!cells[i].isEmpty()) {
            row.createCell(i).setCellValue(cells[i]);
          }
        }
      }
      workbook.write(out);
    }
    RetrospectiveReport ofWorkbook = whole(xlsx, folder.resolve("xlsx.csv"), 2);
    same(ofWorkbook, ofCsv);
    assertThat(folder.resolve("xlsx.csv")).hasSameTextualContentAs(folder.resolve("csv.csv"));
  }

  @Test
  @DisplayName("Parts judged anywhere merge to the totals of the whole")
  void parts() throws IOException {
    String rows = drawn(500, 7);
    RetrospectiveReport whole = whole(csv(rows), folder.resolve("aside.csv"), 2);
    List<String> lines = rows.lines().toList();
    PartJudge judge = PartJudge.of(SAMPLE, HEADINGS.strip(), TODAY);
    PartTotals sum = PartTotals.none();
    for (int start : new int[] {300, 0, 150}) {
      int end = start == 300 ? 500 : start == 0 ? 150 : 300;
      sum =
          sum.merge(
              judge.judge(
                  java.util.stream.IntStream.range(start, end)
                      .mapToObj(i -> new PartJudge.Line(i + 2, lines.get(i)))
                      .iterator()));
    }
    assertThat(sum.counts()).isEqualTo(whole.counts());
    assertThat(sum.totals()).isEqualTo(whole.totals());
    assertThat(sum.setAside())
        .isSortedAccordingTo(java.util.Comparator.comparingLong(SetAside::row));
  }
}
