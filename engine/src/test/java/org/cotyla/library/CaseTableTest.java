package org.cotyla.library;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.cotyla.compare.PastCase;
import org.cotyla.compile.SampleDraft;
import org.cotyla.issue.Issue;
import org.cotyla.protocol.Protocol;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("A table of past cases")
class CaseTableTest {

  private static final Protocol PROTOCOL = new SampleDraft().protocol();

  /** Each case's name, then its findings or its faults. */
  private static List<String> cases(String csv) throws IOException {
    List<String> told = new ArrayList<>();
    byte[] bytes = csv.getBytes(StandardCharsets.UTF_8);
    try (CaseTable table =
        CaseTable.of("past.csv", new ByteArrayInputStream(bytes), List.of(PROTOCOL))) {
      table.cases().forEachRemaining(past -> told.add(plain(past)));
    }
    return told;
  }

  private static String plain(PastCase past) {
    String faults = String.join("; ", past.faults().stream().map(Issue::plain).toList());
    return past.reference()
        + ": "
        + past.given()
            .map(given -> given.findings().stream().map(f -> f.field() + " " + f.given()).toList())
            .map(Object::toString)
            .orElse(faults);
  }

  @Test
  @DisplayName("is read no further than a quotation that is broken, and the row is told")
  void brokenQuotation() throws IOException {
    List<String> told = cases("width,grade\n40,low\n50,\"low\"x,high\n60,high\n");
    assertThat(told).hasSize(2);
    assertThat(told.get(0)).startsWith("row 2: [width ").contains("40", "low");
    assertThat(told.get(1))
        .isEqualTo(
            "row 3: error C020 past.csv: row 3: a quotation mark ends before its cell does, or is"
                + " never closed\n"
                + "      help: end it right before a separator, and double it inside a cell; only the"
                + " rows before are used");
  }

  @Test
  @DisplayName("ends with a fault when a quotation is never closed")
  void openQuotation() throws IOException {
    List<String> told = cases("width,grade\n40,low\n50,\"low\n60,high\n");
    assertThat(told).hasSize(2);
    assertThat(told.get(1)).startsWith("row 3: error C020 past.csv: row 3: a quotation mark ");
  }

  @Test
  @DisplayName("counts its rows as a spreadsheet does: blank ones too, a cell of two lines once")
  void rowNumbers() throws IOException {
    List<String> told = cases("width,grade\n\n40,\"low\n\"\n\n50,low,9\n");
    assertThat(told).hasSize(2);
    assertThat(told.get(0)).startsWith("row 3: [width ");
    assertThat(told.get(1))
        .startsWith("row 5: error C051 past.csv: row 5: the row has 3 cells, but there are 2");
  }
}
