package org.cotyla.finding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.cotyla.compile.SampleDraft;
import org.cotyla.finding.Datum.Knowledge;
import org.cotyla.issue.RejectedException;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("A case read against a protocol")
class FindingsReaderTest {

  private static final SampleDraft DRAFT =
      new SampleDraft()
          .add(
              "Fields",
              "depth",
              "given",
              "number",
              "mm",
              "[0..10], [20..30]",
              "-",
              "-",
              "-",
              "M",
              "S");

  private static Datum depth(Object stated) {
    Map<String, Object> findings = new LinkedHashMap<>();
    findings.put("depth", stated);
    Findings read = new FindingsReader(DRAFT.protocol()).read(Case.of(findings));
    return read.datum("depth").orElseThrow();
  }

  @Test
  @DisplayName("has its numbers in the field's unit, exactly")
  void converted() {
    Given centimetres = Given.of(new BigDecimal("2.5"), "cm");

    assertThat(depth(centimetres).value().plain()).isEqualTo("25");
    assertThat(depth("2.5 cm").value().plain()).isEqualTo("25");
  }

  @Test
  @DisplayName("leaves out of a range what the field does not allow")
  void rangeOverGap() {
    Given between = new Given.Range(new BigDecimal("5"), new BigDecimal("25"), Optional.empty());

    assertThat(depth(between).value().plain()).isEqualTo("[5..10], [20..25]");
    assertThat(depth(between).knowledge()).isEqualTo(Knowledge.PARTLY);
  }

  @Test
  @DisplayName("takes every allowed value as possible where nothing is stated")
  void missing() {
    Findings read = new FindingsReader(DRAFT.protocol()).read(Case.of(Map.of()));

    Datum depth = read.datum("depth").orElseThrow();
    assertThat(depth.knowledge()).isEqualTo(Knowledge.MISSING);
    assertThat(depth.value().plain()).isEqualTo("[0..10], [20..30]");
  }

  @Test
  @DisplayName("is refused with every fault at once")
  void allFaults() {
    Map<String, Object> findings = new LinkedHashMap<>();
    findings.put("depht", 5);
    findings.put("depth", Given.of(new BigDecimal("5"), "mg"));

    assertThatThrownBy(() -> new FindingsReader(DRAFT.protocol()).read(Case.of(findings)))
        .isInstanceOfSatisfying(
            RejectedException.class,
            rejected ->
                assertThat(rejected.issues())
                    .extracting(issue -> issue.code() + " " + issue.message())
                    .isEqualTo(
                        List.of(
                            "C001 this protocol has no such field",
                            "C007 the unit `mg` does not fit")));
  }
}
