package org.cotyla.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayName("The commands export-dmn and import-dmn")
class DmnCommandsTest {

  @TempDir private Path folder;

  @Test
  @DisplayName("take the house protocol out and bring it back without a fault")
  void outAndBack() {
    Path model = folder.resolve("house.dmn");
    Path workbook = folder.resolve("back.xlsx");
    Run out = Run.of("export-dmn", "--output", model.toString());
    assertThat(out.err()).isEmpty();
    assertThat(out.code()).isZero();
    assertThat(out.out()).startsWith("written: house.dmn, with ");
    Run back = Run.of("import-dmn", model.toString(), "--output", workbook.toString());
    assertThat(back.code()).isZero();
    assertThat(back.out()).startsWith("written: back.xlsx, with ").contains("0 errors");
    assertThat(workbook).isRegularFile();
  }

  @Test
  @DisplayName("write the model to standard output when the file is called -")
  void standardOutput() {
    Run run = Run.of("export-dmn", "--output", "-");
    assertThat(run.code()).isZero();
    assertThat(run.out()).startsWith("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<definitions");
  }

  @Test
  @DisplayName("write a workbook that is not sound yet, and list by cell what it lacks")
  void foreignModel() throws IOException {
    Path model = folder.resolve("small.dmn");
    Files.writeString(
        model,
        "<definitions xmlns=\"https://www.omg.org/spec/DMN/20191111/MODEL/\" name=\"Small\">"
            + "<inputData name=\"age\"><variable name=\"age\" typeRef=\"number\"/></inputData>"
            + "<decision name=\"risk\"><variable name=\"risk\" typeRef=\"string\"/><decisionTable>"
            + "<input><inputExpression><text>age</text></inputExpression></input>"
            + "<output typeRef=\"string\"/><rule><inputEntry><text>&gt; 70</text></inputEntry>"
            + "<outputEntry><text>\"raised\"</text></outputEntry></rule>"
            + "</decisionTable></decision></definitions>");
    Path workbook = folder.resolve("small.xlsx");
    Run run = Run.of("import-dmn", model.toString(), "--output", workbook.toString());
    assertThat(run.code()).isEqualTo(1);
    assertThat(workbook).isRegularFile();
    assertThat(run.err()).contains("error W123 risk!D6: row `T1-1` has no because");
    assertThat(run.out()).startsWith("written: small.xlsx, with 1 decision table");
  }

  @Test
  @DisplayName("refuse to write over a file, and a file that is no model")
  void refusals() throws IOException {
    Path there = Files.writeString(folder.resolve("there.dmn"), "text");
    assertThat(Run.of("export-dmn", "--output", there.toString()).code()).isEqualTo(2);
    Run run =
        Run.of("import-dmn", there.toString(), "--output", folder.resolve("x.xlsx").toString());
    assertThat(run.code()).isEqualTo(1);
    assertThat(run.err()).contains("D001").contains("nothing was done");
  }
}
