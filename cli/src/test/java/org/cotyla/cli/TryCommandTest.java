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
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.DataFormatter;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.cotyla.json.TrialJson;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Document;

@DisplayName("cotyla try")
class TryCommandTest {

  private static final Path HOUSE = Run.HOME.resolve("rules/acetabular-revision.xlsx");

  @TempDir private Path folder;

  @Test
  @DisplayName("passes every case that ships, and every row is exercised by one")
  void shipped() {
    Run run = Run.of("try");

    assertThat(run.err()).isEmpty();
    assertThat(run.code()).isZero();
    assertThat(run.out())
        .startsWith("Decision support for licensed surgeons.")
        .contains(" cases passed")
        .contains("counts as certain in some case.");
  }

  @Test
  @DisplayName("finds the library beside the workbook, and that which ships for another draft")
  void libraries() throws IOException {
    Path draft = edited("Calculations", "migration line", 1, "25");

    assertThat(Run.of("try", HOUSE.toString()).out()).contains("in " + library());
    assertThat(Run.of("try", draft.toString()).out()).contains("in " + library());
    assertThat(Run.of("try", draft.toString(), "--no-library").out()).contains("; no library");
    Files.createDirectories(folder.resolve("cases"));
    assertThat(Run.of("try", draft.toString()).out()).contains("in " + folder.resolve("cases"));
  }

  private static String library() {
    return Run.HOME.resolve("test-cases/cases").normalize().toString();
  }

  @Test
  @DisplayName("says what was expected, what came and which row decided")
  void failed() throws IOException {
    Path draft = edited("Calculations", "migration line", 1, "25");
    Run run = Run.of("try", draft.toString(), "--no-library", "--width", "200");

    assertThat(run.code()).isEqualTo(Main.FAULTS);
    assertThat(run.out())
        .contains("x Cases: Just short of the migration line")
        .contains("* Cases!L5: defect class: expected 2B, got 3A; by DC-12 at Defect class!A19");
  }

  @Test
  @DisplayName("tells a case that cannot be read at its cell and runs the others")
  void refused() throws IOException {
    Path draft = edited("Cases", "Just short of the migration line", 1, "28 mg");
    Run run = Run.of("try", draft.toString(), "--no-library");

    assertThat(run.code()).isEqualTo(Main.FAULTS);
    assertThat(run.out())
        .contains("4 passed, 1 cannot be run")
        .contains("* C007 Cases!B5: the unit `mg` does not fit");
    assertThat(Run.of("check", draft.toString()).out())
        .contains("! C007 Cases!B5: the unit `mg` does not fit");
  }

  @Test
  @DisplayName("writes JSON as its schema says, the same each time")
  void json() throws IOException {
    Path draft = edited("Calculations", "migration line", 1, "25");
    Run run = Run.of("try", draft.toString(), "--no-library", "--format", "json");

    assertThat(schemaErrors(run.out())).isEmpty();
    assertThat(schemaErrors(run.out().replaceFirst("\"expected\"", "\"other\""))).isNotEmpty();
    assertThat(run.out())
        .contains("\"outcome\": \"failed\"", "\"expectedAt\": \"Cases!L5\"", "\"row\": \"DC-12\"");
    assertThat(Run.of("try", draft.toString(), "--no-library", "--format", "json").out())
        .isEqualTo(run.out());
  }

  private static java.util.List<com.networknt.schema.Error> schemaErrors(String json)
      throws IOException {
    try (InputStream in = TrialJson.class.getResourceAsStream("trial.schema.json")) {
      return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
          .getSchema(in)
          .validate(json, InputFormat.JSON);
    }
  }

  @Test
  @DisplayName("writes JUnit XML with a failure for each failed case, the same each time")
  void junit() throws Exception {
    Path draft = edited("Calculations", "migration line", 1, "25");
    Path first = folder.resolve("a.xml");
    Path second = folder.resolve("b.xml");
    Run.of("try", draft.toString(), "--no-library", "--junit", first.toString());
    Run.of("try", draft.toString(), "--no-library", "--junit", second.toString());

    Document xml = DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(first.toFile());
    assertThat(xml.getDocumentElement().getAttribute("tests")).isEqualTo("5");
    assertThat(xml.getDocumentElement().getAttribute("failures")).isEqualTo("2");
    assertThat(xml.getElementsByTagName("testcase").getLength()).isEqualTo(5);
    assertThat(xml.getElementsByTagName("failure").item(0).getTextContent())
        .contains("expected 2B, got 3A");
    assertThat(first).hasSameTextualContentAs(second);
  }

  @Test
  @DisplayName("reads a library of anybody's, also with damaged files in it")
  void ownLibrary() throws IOException {
    Path cases = Files.createDirectories(folder.resolve("mine/infection"));
    Files.writeString(cases.resolve("a.json"), "{\"findings\": {\"sinus tract\": true}}");
    Files.writeString(
        cases.resolve("a.expected.json"), "{\"expect\": {\"infection status\": \"infected\"}}");
    Files.writeString(cases.resolve("b.json"), "{\"findings\": {\"sinus tract\": 7}}");
    Files.writeString(cases.resolve("b.expected.json"), "{\"expect\": {\"rows\": [\"IN-01\"]}}");
    Files.writeString(cases.resolve("c.expected.json"), "{\"expect\": {\"rows\": [\"IN-01\"]}}");
    Files.writeString(cases.resolve("d.json"), "not JSON");
    Files.writeString(cases.resolve("d.expected.json"), "{\"expect\": {\"rows\": [\"IN-01\"]}}");
    Files.writeString(cases.resolve("e.expected.json"), "{");
    Run run = Run.of("try", "--library", folder.resolve("mine").toString(), "--width", "200");

    assertThat(run.code()).isEqualTo(Main.FAULTS);
    assertThat(run.out())
        .contains("6 passed, 4 cannot be run")
        .contains("C054 infection/c.json: there is an expectation but no case")
        .contains("C050 infection/e.expected.json: this is not JSON");
    assertThat(Run.of("try", "--library", folder.resolve("none").toString()).err())
        .contains("error: there is no folder ");
  }

  /** A copy of the house protocol in which the cell beside a name has another text. */
  private Path edited(String sheet, String name, int column, String text) throws IOException {
    Path copy = folder.resolve("draft.xlsx");
    try (InputStream in = Files.newInputStream(HOUSE);
        XSSFWorkbook workbook = new XSSFWorkbook(in);
        OutputStream out = Files.newOutputStream(copy)) {
      DataFormatter formatter = new DataFormatter();
      for (Row row : workbook.getSheet(sheet)) {
        if (formatter.formatCellValue(row.getCell(0)).equals(name)) {
          Cell cell = row.getCell(column, Row.MissingCellPolicy.CREATE_NULL_AS_BLANK);
          cell.setCellValue(text);
        }
      }
      workbook.write(out);
    }
    return copy;
  }
}
