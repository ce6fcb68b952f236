package org.cotyla.testcases.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import org.cotyla.testcases.house.Answer;
import org.cotyla.testcases.house.Known;
import org.cotyla.testcases.house.LeansOn;
import org.cotyla.testcases.house.OrdinaryCase;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("Host-bone contact from sectors on the clock face")
class ClockSectorTest {

  private static Answer sectors(String side, int from, int to, int inner, int cap) {
    return OrdinaryCase.planned()
        .with(
            Map.of(
                "side", side,
                "contact found by", "sectors",
                "defect clock from", from,
                "defect clock to", to,
                "defect inner angle", inner,
                "medial cap angle", cap))
        .answer();
  }

  @ParameterizedTest(name = "{0}: {1} to {2}, from {3} degrees, floor {4}: {5} % on bone")
  @CsvSource({
    "S-1, 10, 2, 0, 0, 66.67",
    "S-2, 9, 5, 0, 0, 33.33",
    "S-3, 10, 2, 45, 0, 76.43",
    "S-4, 9, 5, 45, 0, 52.86",
    "S-5 with 30, 10, 2, 90, 30, 86.60",
    "S-5 with 45, 10, 2, 90, 45, 70.71",
    "S-5 with 60, 10, 2, 90, 60, 50.00",
    "S-6, 10, 2, 0, 30, 57.74",
    "S-7, 9, 5, 30, 30, 28.87"
  })
  @DisplayName("A hemisphere less the missing sector and the missing floor")
  @LeansOn(value = "PLAIN-GEOMETRY", known = Known.DERIVED)
  void share(String name, int from, int to, int inner, int cap, double expected) {
    Answer answer = sectors("right", from, to, inner, cap);
    assertThat(Double.parseDouble(answer.value("contact from sectors")))
        .as(name)
        .isCloseTo(expected, within(0.06));
  }

  @ParameterizedTest(name = "{0} hip, {1} to {2}: {3} %")
  @CsvSource({
    "right, 9, 5, 33.3",
    "left, 9, 5, 66.7",
    "left, 3, 7, 33.3",
    "left, 2, 10, 66.7",
    "right, 2, 10, 33.3"
  })
  @DisplayName("The sense is clockwise on a right hip and its mirror image on a left one")
  @LeansOn(value = "PLAIN-GEOMETRY", known = Known.DERIVED)
  void mirrored(String side, int from, int to, String expected) {
    assertThat(sectors(side, from, to, 0, 0).value("contact from sectors")).isEqualTo(expected);
  }
}
