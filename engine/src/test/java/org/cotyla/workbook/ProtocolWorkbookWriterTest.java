package org.cotyla.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.cotyla.compile.SampleDraft;
import org.cotyla.draft.DecisionDraft;
import org.cotyla.draft.ProtocolDraft;
import org.cotyla.issue.Issues;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("A protocol that is written as a workbook")
class ProtocolWorkbookWriterTest {

  private static List<DecisionDraft> readBack(ProtocolDraft draft) {
    Issues issues = new Issues();
    Grid grid = GridReader.read("written.xlsx", ProtocolWorkbookWriter.write(draft));
    List<DecisionDraft> decisions = DraftReader.read(grid, issues).orElseThrow().decisions();
    assertThat(issues.list()).isEmpty();
    return decisions;
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "Protocol",
        "fields",
        "Options",
        "Calculations",
        "Sources",
        "Changes",
        "Safeguards",
        "Cases",
        "Accepted",
        "Pictures",
        "Reasons",
        "Out-comes",
        "_Cases_"
      })
  @DisplayName("keeps a decision that bears the name of a sheet of the format")
  void reserved(String name) {
    assertThat(readBack(new SampleDraft().head(0, 0, name).draft()))
        .extracting(decision -> decision.name().text())
        .containsExactlyInAnyOrder(name, "Load", "Votes");
  }

  @Test
  @DisplayName("keeps two decisions whose names differ in what a tab cannot show")
  void alike() {
    assertThat(readBack(new SampleDraft().head(0, 0, "Load?").draft()))
        .extracting(decision -> decision.name().text())
        .containsExactly("Load?", "Load", "Votes");
  }
}
