package org.cotyla.testcases.published;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.Map;
import org.cotyla.testcases.house.Answer;
import org.cotyla.testcases.house.Known;
import org.cotyla.testcases.house.LeansOn;
import org.cotyla.testcases.house.OrdinaryCase;
import org.cotyla.value.Interval;
import org.cotyla.value.Value;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("The hip-spine types, and the angles that they ask for")
class HipSpineTest {

  private static final Interval CLASSIC_INCLINATION = between(30, 50);
  private static final Interval CLASSIC_ANTEVERSION = between(5, 25);

  private static Interval between(int low, int high) {
    return new Interval(Value.of(low), true, Value.of(high), true);
  }

  private static Answer spine(BigDecimal incidence, BigDecimal lordosis, BigDecimal slopeChange) {
    return OrdinaryCase.planned()
        .with(
            Map.of(
                "spine films", true,
                "pelvic incidence", incidence,
                "lumbar lordosis", lordosis,
                "sacral slope change", slopeChange))
        .answer();
  }

  @ParameterizedTest(name = "incidence {0}, lordosis {1}, slope change {2}: {3}")
  @CsvSource({
    "55, 50, 18, 1A",
    "60, 52, 6, 1B",
    "58, 40, 15, 2A",
    "62, 38, 4, 2B",
    // Exactly 10 degrees of mismatch is balanced; exactly 10 of slope change is mobile.
    "60, 50, 18, 1A",
    "60, 49.9, 18, 2A",
    "60, 50, 10, 1A",
    "60, 50, 9.9, 1B",
    "60, 40, 10, 2A",
    "60, 40, 9.9, 2B"
  })
  @DisplayName("Flat back above 10 degrees of mismatch, stiff below 10 degrees of slope change")
  @LeansOn(value = "HIPSPINE-2021", known = Known.FOUND)
  void types(BigDecimal incidence, BigDecimal lordosis, BigDecimal change, String expected) {
    assertThat(spine(incidence, lordosis, change).value("hip spine type")).isEqualTo(expected);
  }

  @ParameterizedTest(name = "{0}: {4} / {5} to {6}, {7}")
  @CsvSource({
    "1A, 55, 50, 18, 40, 20, 25, lying pelvis",
    "1B, 60, 52, 6, 40, 30, 30, lying pelvis",
    "2A, 58, 40, 15, 40, 25, 30, standing pelvis",
    "2B, 62, 38, 4, 40, 30, 30, standing pelvis"
  })
  @DisplayName("Each type has its target, the flat backs in the standing plane")
  @LeansOn(value = "LUTHRINGER-2019", known = Known.FROM_MEMORY)
  void targets(
      String type,
      BigDecimal incidence,
      BigDecimal lordosis,
      BigDecimal change,
      String inclination,
      String from,
      String to,
      String plane) {
    Answer answer = spine(incidence, lordosis, change);
    assertThat(answer.value("hip spine type")).isEqualTo(type);
    assertThat(answer.value("target inclination")).isEqualTo(inclination);
    assertThat(answer.value("target anteversion from")).isEqualTo(from);
    assertThat(answer.value("target anteversion to")).isEqualTo(to);
    assertThat(answer.value("target plane")).isEqualTo(plane);
  }

  @Test
  @DisplayName("A flat and stiff spine leads to dual mobility")
  @LeansOn(value = "HIPSPINE-2021", known = Known.FOUND)
  void flatAndStiff() {
    Answer answer = spine(new BigDecimal("62"), new BigDecimal("38"), new BigDecimal("4"));
    assertThat(answer.bearing()).isEqualTo("dual mobility");
    Answer balanced = spine(new BigDecimal("55"), new BigDecimal("50"), new BigDecimal("18"));
    assertThat(balanced.bearing()).isNotEqualTo("dual mobility");
  }

  @Test
  @DisplayName(
      "Without side views nothing is read from the spine, and a dislocator is asked for them")
  @LeansOn(value = "HIPSPINE-2021", known = Known.FOUND)
  void withoutFilms() {
    Answer answer = OrdinaryCase.planned().with("reason for revision", "dislocation").answer();
    assertThat(answer.value("hip spine type")).isEqualTo("not assessed");
    assertThat(answer.rows()).contains("WU-12");
  }

  @Test
  @DisplayName("Without side views the target lies inside the classic zone, in its upper part")
  @LeansOn(
      value = {"LEWINNEK-1978", "ABDEL-2016"},
      known = Known.FOUND)
  void classicZone() {
    Answer answer = OrdinaryCase.planned().answer();
    assertThat(CLASSIC_INCLINATION.contains(one(answer, "target inclination"))).isTrue();
    Value from = one(answer, "target anteversion from");
    Value to = one(answer, "target anteversion to");
    assertThat(CLASSIC_ANTEVERSION.contains(from)).isTrue();
    assertThat(CLASSIC_ANTEVERSION.contains(to)).isTrue();
    assertThat(from).isGreaterThanOrEqualTo(Value.of(15));
  }

  private static Value one(Answer answer, String field) {
    return answer.possible(field).single().orElseThrow();
  }
}
