package org.cotyla.testcases.published;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.stream.Stream;
import org.cotyla.testcases.house.Known;
import org.cotyla.testcases.house.LeansOn;
import org.cotyla.testcases.house.OrdinaryCase;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

@DisplayName("The European definition of infection of 2021, which stands beside the score")
class SecondDefinitionTest {

  /** What is found, and what the second definition calls it. */
  record Example(Map<String, Object> found, String expected) {}

  static Stream<Example> examples() {
    return Stream.of(
        new Example(Map.of("synovial white cells", 3200), "confirmed"),
        new Example(Map.of("synovial white cells", 2000, "crp", 15), "likely"),
        new Example(Map.of("synovial white cells", 1400, "crp", 8), "unlikely"),
        new Example(Map.of("synovial white cells", 3000, "crp", 15), "likely"),
        new Example(Map.of("synovial white cells", 1500, "crp", 10), "unlikely"),
        new Example(Map.of("synovial neutrophils", 81), "confirmed"),
        new Example(Map.of("synovial neutrophils", 80, "crp", 11), "likely"),
        new Example(Map.of("alpha defensin", "positive"), "confirmed"),
        new Example(Map.of("sinus tract", true), "confirmed"),
        new Example(Map.of("culture results", "two of one organism"), "confirmed"));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("examples")
  @DisplayName("Confirmed by any one proof, likely by a sign and a test together, else unlikely")
  @LeansOn(value = "MEMORY-EBJIS", known = Known.FROM_MEMORY)
  @LeansOn(value = "EBJIS-2021", known = Known.FOUND)
  void level(Example example) {
    assertThat(OrdinaryCase.planned().with(example.found()).answer().value("second definition"))
        .isEqualTo(example.expected());
  }
}
