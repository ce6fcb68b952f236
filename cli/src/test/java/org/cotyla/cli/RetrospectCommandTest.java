package org.cotyla.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.cotyla.audit.AuditReport;
import org.cotyla.json.RetrospectJson;
import org.cotyla.retrospective.RetrospectiveReport;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayName("cotyla retrospect")
class RetrospectCommandTest {

  private static final Path SHIPPED = Run.HOME.resolve("rules/acetabular-revision.xlsx");
  private static final String HEADINGS =
      "case,date,role,migration (cm),migration direction,ischial lysis,köhler line,surgeon,"
          + "construct done,bearing done\n";
  private static final String ROWS =
      """
      R-1,2025-01-05,consultant,2.5,superolateral,3,intact,Somebody,hemispherical cup,dual mobility
      R-2,2025-02-06,fellow,2.5,superolateral,3,intact,Somebody,oblong cup,large head
      R-3,2025-02-07,consultant,3.4,superomedial,16,broken,Somebody,cup-cage,constrained liner
      R-4,2025-02-07,consultant,3.4,superomedial,16,borken,Somebody,cup-cage,dual mobility
      R-5,07.02.2025,consultant,3.4,superomedial,16,intact,Somebody,cup-cage,dual mobility
      """;

  @TempDir private Path folder;
  private Path cases = Path.of("");

  @BeforeEach
  void write() throws IOException {
    cases = Files.writeString(folder.resolve("cases.csv"), HEADINGS + ROWS);
  }

  private Run retrospect(String... options) throws IOException {
    List<String> all = new ArrayList<>(List.of("retrospect", cases.toString()));
    all.addAll(List.of(options));
    Files.deleteIfExists(folder.resolve("cases.set-aside.csv"));
    return Run.of(all.toArray(String[]::new));
  }

  /** The house protocol with another line between low and high migration. */
  private String draft() throws IOException {
    Path file = folder.resolve("draft.xlsx");
    try (InputStream in = Files.newInputStream(SHIPPED);
        XSSFWorkbook workbook = new XSSFWorkbook(in);
        OutputStream out = Files.newOutputStream(file)) {
      for (var row : workbook.getSheet("Calculations")) {
        if (row.getCell(0).toString().equals("migration line")) {
          row.getCell(1).setCellValue(20);
        }
      }
      workbook.write(out);
    }
    return file.toString();
  }

  private static void fits(String schema, String json) throws IOException {
    try (InputStream in = RetrospectJson.class.getResourceAsStream(schema)) {
      assertThat(
              SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                  .getSchema(in)
                  .validate(json, InputFormat.JSON))
          .isEmpty();
    }
  }

  @Test
  @DisplayName("sets faulty rows aside with their reason, counts every row and says so in its code")
  void setAside() throws IOException {
    Run run = retrospect();
    assertThat(run.code()).as(run.err()).isEqualTo(1);
    assertThat(run.out()).contains("5 rows read = 3 judged + 2 set aside").contains("surgeon: ");
    assertThat(run.out().lines()).allSatisfy(line -> assertThat(line).hasSizeLessThan(81));
    assertThat(Files.readString(folder.resolve("cases.set-aside.csv")))
        .contains("`borken` is not a value of it")
        .contains("broken")
        .contains("07.02.2025");
    String aside = folder.resolve("cases.set-aside.csv").toString();
    Golden.matches(
        "retrospect.txt",
        run.out().replace(aside, "<set aside>").replaceAll("\\n +<set aside>", " <set aside>"));
  }

  @Test
  @DisplayName(
      "as JSON is laid out as its schema says, with the figures of an audit, each time the same")
  void json() throws IOException {
    Run run = retrospect("--format", "json", "--against", draft());
    fits("retrospect.schema.json", run.out());
    int from = run.out().indexOf("\"audit\": {") + "\"audit\": ".length();
    int to = run.out().indexOf("\n  }", from) + "\n  }".length();
    fits("audit.schema.json", run.out().substring(from, to));
    assertThat(retrospect("--format", "json", "--against", draft()).out()).isEqualTo(run.out());
  }

  @Test
  @DisplayName(
      "empties no file that is not its own, also where it is to go on and there is no state")
  void resumesOverNothingElse() throws IOException {
    String state = folder.resolve("state").toString();
    Run run = retrospect("--resume", "--state", state, "--set-aside", cases.toString());
    assertThat(run.code()).isEqualTo(1);
    assertThat(run.err())
        .startsWith(
            "error R012 cases.csv: it is there already, and not a file of rows set aside\n"
                + "      help: name another file for rows set aside\n");
    assertThat(cases).hasContent(HEADINGS + ROWS);
    assertThat(retrospect("--state", state, "--set-aside", state).err())
        .startsWith("error: --state and --set-aside name the same file\n");
  }

  @Test
  @DisplayName("writes one page, a workbook and CSV by the file's name, and replaces none")
  void forms() throws IOException {
    for (String form : List.of("html", "xlsx", "csv")) {
      String file = folder.resolve("report." + form).toString();
      assertThat(retrospect("-o", file, "--against", draft()).code()).isEqualTo(1);
      assertThat(retrospect("-o", file).code()).as("not replaced").isEqualTo(2);
      assertThat(folder.resolve("cases.set-aside.csv"))
          .as("refused before any work")
          .doesNotExist();
    }
    assertThat(Files.readString(folder.resolve("report.html")))
        .contains("<svg", "side by side", "Decisions against a rule-out")
        .contains(AuditReport.NO_VERDICT)
        .doesNotContain("<script")
        .doesNotContain("src=");
    assertThat(Files.readString(folder.resolve("report.csv")))
        .contains("Side by side,whole decision,,all,this: judged,3\r\n")
        .contains("Concordance,construct,,,judged,3\r\n");
    try (InputStream in = Files.newInputStream(folder.resolve("report.xlsx"));
        XSSFWorkbook workbook = new XSSFWorkbook(in)) {
      assertThat(workbook.getSheet("Side by side").getLastRowNum()).isGreaterThan(10);
      assertThat(workbook.getSheet("Judged otherwise")).isNotNull();
      assertThat(workbook.getSheet("Against a rule-out").getRow(1).getCell(1)).hasToString("row 3");
    }
    assertThat(retrospect("--format", "xlsx").code()).isEqualTo(2);
  }

  @Test
  @DisplayName("says when both workbooks hold the same protocol")
  void same() throws IOException {
    assertThat(retrospect("--against", SHIPPED.toString()).out().replaceAll("\\s+", " "))
        .contains(RetrospectiveReport.THE_SAME);
    assertThat(retrospect("--against", draft()).out().replaceAll("\\s+", " "))
        .doesNotContain(RetrospectiveReport.THE_SAME)
        .contains("Side by side");
  }

  @Test
  @DisplayName("shows what a column is taken for, and takes a correction from a file")
  void mapping() throws IOException {
    Run shown = retrospect("--show-mapping");
    assertThat(shown.code()).isZero();
    assertThat(shown.out().replaceAll("\\s+", " "))
        .contains("migration (cm) = field: hip centre migration, in cm")
        .contains("construct done = done: construct");
    Path file = folder.resolve("mapping.csv");
    assertThat(retrospect("--write-mapping", file.toString()).code()).isZero();
    String guessed = Files.readString(file);
    assertThat(guessed).contains("bearing done");
    Files.writeString(file, guessed.replaceFirst("done: bearing", "-"));
    assertThat(retrospect("--mapping", file.toString()).out())
        .contains("* bearing done: ")
        .doesNotContain("By bearing chosen");
  }

  @Test
  @DisplayName("goes on after its process was killed, to what an unbroken run comes to")
  void killed() throws IOException, InterruptedException {
    Files.writeString(cases, HEADINGS + String.join("", Collections.nCopies(300, ROWS)));
    Path state = folder.resolve("state");
    Path aside = folder.resolve("aside.csv");
    String[] arguments = {
      "retrospect",
      cases.toString(),
      "--format",
      "json",
      "--state",
      state.toString(),
      "--state-every",
      "200",
      "--set-aside",
      aside.toString()
    };
    List<String> command =
        new ArrayList<>(
            List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Dcotyla.home=" + Run.HOME,
                "-XX:TieredStopAtLevel=1",
                "-cp",
                System.getProperty("java.class.path"),
                Main.class.getName()));
    command.addAll(List.of(arguments));
    Process process =
        new ProcessBuilder(command)
            .redirectErrorStream(true)
            .redirectOutput(folder.resolve("out").toFile())
            .start();
    while (process.isAlive() && !Files.exists(state)) {
      Thread.sleep(5);
    }
    process.destroyForcibly().waitFor();
    assertThat(Files.readString(state)).as("stopped before its end").doesNotContain("counts,1500");
    List<String> resumed = new ArrayList<>(List.of(arguments));
    resumed.add("--resume");
    Run run = Run.of(resumed.toArray(String[]::new));
    Run unbroken = retrospect("--format", "json");
    assertThat(run.out()).isEqualTo(unbroken.out()).contains("\"read\": 1500");
    assertThat(aside).hasSameTextualContentAs(folder.resolve("cases.set-aside.csv"));
  }
}
