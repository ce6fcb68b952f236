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
import java.util.function.Consumer;
import org.apache.poi.ss.usermodel.DataFormatter;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.cotyla.json.ComparisonJson;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayName("A lead compares an edited house protocol with the one in use")
class CompareCommandTest {

  private static final Path SHIPPED = Run.HOME.resolve("rules/acetabular-revision.xlsx");

  @TempDir private Path folder;

  @Test
  @DisplayName("the same workbook is the same in meaning, and no case changes")
  void same() throws IOException {
    Run run = compare(workbook -> {}, "--library", cases("hip centre migration\n29\n"));
    assertThat(run.code()).isZero();
    assertThat(flat(run)).contains("the same in meaning: proven", "none gets another headline");
  }

  @Test
  @DisplayName("a deleted row that the next one covers is proven to change nothing")
  void coveredRow() throws IOException {
    Run run =
        compare(
            workbook -> {
              Row row = row(workbook, "Defect class", "DC-11");
              workbook.getSheet("Defect class").removeRow(row);
            },
            "--fail-on-difference",
            "--library",
            cases("hip centre migration\n29\n"));
    assertThat(run.code()).isZero();
    assertThat(flat(run))
        .contains("row removed: Defect class, DC-11")
        .contains("The same in every case: proven");
  }

  @Test
  @DisplayName("a swapped outcome is told with its findings, an example, and the row of each case")
  void swappedOutcome() throws IOException {
    Run run =
        compare(
            workbook -> row(workbook, "Defect class", "DC-15").getCell(7).setCellValue("2B"),
            "--fail-on-difference",
            "--library",
            cases(
                "case;stage;kohler_line;hip centre migration;ischial lysis;mystery\n"
                    + "A-1;planning;broken;10;5;x\n"
                    + "A-2;planning;bent;10;5;x\n"
                    + "A-3;planning;intact;10;5;x\n"));
    assertThat(run.code()).isEqualTo(1);
    assertThat(flat(run))
        .contains(
            "hip centre migration at most 30 mm, and ischial lysis below 15 mm, and köhler line"
                + " broken: was 2C, is now 2B")
        .contains("Defect class: was 2C, is now 2B [by DC-15] 1 case: A-1")
        .contains("A-2: row 3: case field `kohler_line`: `bent` is not a value of it")
        .contains("the column `mystery` is not read");
    assertThat(run.out().lines().mapToInt(String::length).max().orElse(0)).isLessThanOrEqualTo(80);
  }

  @Test
  @DisplayName("as JSON is laid out as the schema says, and the same each time")
  void json() throws IOException {
    String[] options = {"--format", "json", "--library", cases("köhler line\nbroken\n")};
    Consumer<XSSFWorkbook> edit =
        workbook -> row(workbook, "Defect class", "DC-15").getCell(7).setCellValue("2B");
    Run run = compare(edit, options);
    try (InputStream in = ComparisonJson.class.getResourceAsStream("comparison.schema.json")) {
      assertThat(
              SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                  .getSchema(in)
                  .validate(run.out(), InputFormat.JSON))
          .isEmpty();
    }
    assertThat(compare(edit, options).out()).isEqualTo(run.out());
  }

  private Run compare(Consumer<XSSFWorkbook> edit, String... options) throws IOException {
    Path edited = folder.resolve("edited.xlsx");
    try (InputStream in = Files.newInputStream(SHIPPED);
        XSSFWorkbook workbook = new XSSFWorkbook(in);
        OutputStream out = Files.newOutputStream(edited)) {
      edit.accept(workbook);
      workbook.write(out);
    }
    String[] arguments = new String[options.length + 3];
    arguments[0] = "compare";
    arguments[1] = SHIPPED.toString();
    arguments[2] = edited.toString();
    System.arraycopy(options, 0, arguments, 3, options.length);
    return Run.of(arguments);
  }

  private String cases(String table) throws IOException {
    return Files.writeString(folder.resolve("past.csv"), table).toString();
  }

  private static String flat(Run run) {
    return run.out().replaceAll("\\s+", " ") + run.err();
  }

  private static Row row(XSSFWorkbook workbook, String sheet, String key) {
    DataFormatter shown = new DataFormatter();
    for (Row row : workbook.getSheet(sheet)) {
      if (shown.formatCellValue(row.getCell(0)).equals(key)) {
        return row;
      }
    }
    throw new IllegalArgumentException("no row `" + key + "` in " + sheet);
  }
}
