package org.cotyla.testcases.published;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.stream.Stream;
import org.cotyla.testcases.house.Answer;
import org.cotyla.testcases.house.Known;
import org.cotyla.testcases.house.LeansOn;
import org.cotyla.testcases.house.OrdinaryCase;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("The causes of instability, in the order in which they are treated")
class InstabilityCauseTest {

  private static final OrdinaryCase DISLOCATES =
      OrdinaryCase.planned()
          .with(Map.of("reason for revision", "dislocation", "prior dislocations", 3));

  /** What is found, and the cause that is treated first. */
  record Example(String cause, Map<String, Object> found) {
    @Override
    public String toString() {
      return cause + ": " + found;
    }
  }

  static Stream<Example> causes() {
    return Stream.of(
        new Example("cup malposition", Map.of("cup position", "badly placed")),
        new Example("stem malposition", Map.of("stem position", "badly placed")),
        new Example("abductor insufficiency", Map.of("abductors", "weak")),
        new Example("impingement", Map.of("impingement", true)),
        new Example("wear", Map.of("liner wear", true)),
        new Example("unknown cause", Map.of()),
        new Example(
            "cup malposition", Map.of("cup position", "badly placed", "abductors", "absent")),
        new Example(
            "cup malposition",
            Map.of("cup position", "badly placed", "stem position", "badly placed")),
        new Example(
            "stem malposition", Map.of("stem position", "badly placed", "abductors", "absent")));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("causes")
  @DisplayName("Position comes first, then what can be taken away, then muscle; unknown comes last")
  @LeansOn(
      value = {"WERA-2012", "WERA-MOD-2026"},
      known = Known.FOUND)
  void order(Example example) {
    Answer answer = DISLOCATES.with(example.found()).answer();
    assertThat(answer.value("instability cause")).isEqualTo(example.cause());
  }

  @Test
  @DisplayName("A badly placed cup and failed abductors: the cup is revised first, both are said")
  @LeansOn(value = "WERA-MOD-2026", known = Known.FOUND)
  void bothAreSaid() {
    Answer answer =
        DISLOCATES.with(Map.of("cup position", "badly placed", "abductors", "absent")).answer();
    assertThat(answer.rows()).contains("IM-02", "IM-04").doesNotContain("IM-07");
  }

  @ParameterizedTest(name = "{0} not known")
  @ValueSource(
      strings = {"cup position", "stem position", "impingement", "liner wear", "abductors"})
  @DisplayName("The cause is unknown only when every other was looked for: never while one is open")
  @LeansOn(value = "WERA-MOD-2026", known = Known.DERIVED)
  void neverUnknownWhileOpen(String open) {
    Answer answer = DISLOCATES.without(open).answer();
    assertThat(answer.possible("instability cause").isCertain()).isFalse();
    assertThat(answer.missing()).contains(open);
  }

  @Test
  @DisplayName("A cause that can be taken away speaks against locking the hip")
  @LeansOn(value = "WERA-MOD-2026", known = Known.FOUND)
  void noLockForACause() {
    Answer unknown = DISLOCATES.answer();
    Answer badCup = DISLOCATES.with("cup position", "badly placed").answer();
    assertThat(badCup.bearingPoints("constrained liner"))
        .isLessThan(unknown.bearingPoints("constrained liner"));
  }

  @Test
  @DisplayName("A badly placed cup is never kept under a new bearing")
  @LeansOn(value = "WERA-2012", known = Known.FOUND)
  void badCupIsRevised() {
    OrdinaryCase fixed =
        DISLOCATES.with(
            Map.of(
                "cup fixation",
                "well fixed",
                "kept shell usable",
                true,
                "retained shell inner diameter",
                50));
    assertThat(fixed.answer().construct()).isEqualTo("new bearing in the retained cup");
    Answer badly = fixed.with("cup position", "badly placed").answer();
    assertThat(badly.constructIsRuledOut("new bearing in the retained cup")).isTrue();
  }
}
