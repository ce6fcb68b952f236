package org.cotyla.retrospective;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.cotyla.compile.SampleDraft;
import org.cotyla.issue.RejectedException;
import org.cotyla.protocol.Protocol;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** What the columns of past cases are taken for. */
class ColumnMappingTest {

  private static final Protocol SAMPLE =
      new SampleDraft()
          .add(
              "Fields",
              "gap width left",
              "given",
              "number",
              "mm",
              "[0..9]",
              "-",
              "planning",
              "-",
              "M",
              "S")
          .protocol();

  private static List<String> meanings(String... headings) {
    return ColumnMapping.guess(List.of(headings), SAMPLE).columns().stream()
        .map(column -> column.meaning().word() + column.unit().map(u -> " in " + u).orElse(""))
        .toList();
  }

  @Test
  @DisplayName("Fields are found by loose names, with the unit that stands behind them")
  void byName() {
    assertThat(meanings("Width", "WIDTH (cm)", "grade", "width [mm]"))
        .containsExactly(
            "field: width", "field: width in cm", "field: grade", "field: width in mm");
  }

  @Test
  @DisplayName("Part of a name is enough where only one field has it")
  void byPart() {
    assertThat(meanings("gap (cm)", "left gap", "gap (kg)"))
        .containsExactly("field: gap width left in cm", "field: gap width left", "-");
  }

  @Test
  @DisplayName("What was done is found by the ranking's name, and what is no finding by its word")
  void doneAndOthers() {
    assertThat(
            meanings("plan", "Plan done", "plan_chosen", "Date", "role", "Case reference", "stage"))
        .containsExactly(
            "done: plan", "done: plan", "done: plan", "date", "role", "reference", "stage");
  }

  @Test
  @DisplayName(
      "What means nothing, what the protocol decides and what has a foreign unit is ignored")
  void ignored() {
    assertThat(meanings("surgeon", "hospital number", "class", "width (kg)")).containsOnly("-");
  }

  @Test
  @DisplayName("A mapping that is written, corrected and read again means what it says")
  void corrected() {
    List<String> headings = List.of("breadth", "grade", "plan");
    String written = MappingFile.write(ColumnMapping.guess(headings, SAMPLE));
    assertThat(written).contains("breadth,-,,");
    String corrected = written.replace("breadth,-,,", "breadth,field: width,cm,");
    ColumnMapping read = MappingFile.read("m.csv", corrected, headings, SAMPLE);
    assertThat(read.columns().get(0).meaning().word()).isEqualTo("field: width");
    assertThat(read.columns().get(0).unit()).contains("cm");
    assertThat(read.columns().get(2).meaning().word()).isEqualTo("done: plan");
  }

  @Test
  @DisplayName("Every fault of a mapping file is said with its line and the nearest word")
  void faultyFile() {
    String file = "column,means,unit\nbredth,width\ngrade,field: wdth\nplan,done: plan,mm\n";
    assertThatThrownBy(
            () -> MappingFile.read("m.csv", file, List.of("breadth", "grade", "plan"), SAMPLE))
        .isInstanceOfSatisfying(
            RejectedException.class,
            refused ->
                assertThat(refused.issues())
                    .extracting(issue -> issue.place().plain() + " " + issue.help().orElse(""))
                    .satisfiesExactly(
                        one -> assertThat(one).contains("line 2", "breadth"),
                        one -> assertThat(one).contains("line 3", "width"),
                        one -> assertThat(one).contains("line 4", "UCUM")));
  }

  @Test
  @DisplayName("Two columns that say one thing, and none that says what was done, are refused")
  void unusable() {
    ColumnMapping mapping = ColumnMapping.guess(List.of("width", "width (cm)"), SAMPLE);
    assertThatThrownBy(() -> mapping.checked("cases.csv"))
        .isInstanceOfSatisfying(
            RejectedException.class,
            refused ->
                assertThat(refused.issues())
                    .extracting(issue -> issue.code())
                    .containsExactly("R003", "R004"));
  }
}
