package org.cotyla.testcases.published;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.stream.Stream;
import org.cotyla.evaluate.Engine;
import org.cotyla.testcases.house.Answer;
import org.cotyla.testcases.house.House;
import org.cotyla.testcases.house.Known;
import org.cotyla.testcases.house.LeansOn;
import org.cotyla.testcases.house.OrdinaryCase;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.TestInstance.Lifecycle;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

@DisplayName("The worked examples of the 2018 infection score, in both of its versions")
@TestInstance(Lifecycle.PER_CLASS)
class InfectionScoreTest {

  private static final OrdinaryCase PLAIN = OrdinaryCase.planned();
  private static final OrdinaryCase I_2 =
      PLAIN.with(
          Map.of(
              "crp", 14,
              "esr", 22,
              "synovial white cells", 2100,
              "synovial neutrophils", 62,
              "alpha defensin", "negative"));
  private static final OrdinaryCase I_2_IN_THEATRE =
      I_2.inTheatre()
          .with(Map.of("theatre cultures", "one positive", "histology", "negative"))
          .with("purulence", "none");

  private Engine consensus;

  /**
   * A worked example.
   *
   * @param name its number and what is found
   * @param findings the case
   * @param points all points as first published, and in the consensus variant
   * @param status the status as first published, and in the consensus variant
   */
  record Example(String name, OrdinaryCase findings, Both points, Both status) {
    @Override
    public String toString() {
      return name;
    }
  }

  /** What each of the two versions gives. */
  record Both(String first, String consensus) {}

  @BeforeAll
  void readCopy() {
    consensus = House.withConstant("infection score version", "2");
  }

  static Stream<Example> examples() {
    return Stream.of(
        new Example(
            "I-1: CRP 24, ESR 46, 5,200 cells, 84 % neutrophils",
            PLAIN.with(
                Map.of(
                    "crp", 24,
                    "esr", 46,
                    "synovial white cells", 5200,
                    "synovial neutrophils", 84)),
            new Both("8", "8"),
            new Both("infected", "infected")),
        new Example(
            "I-2 before the operation: CRP 14 alone is raised",
            I_2,
            new Both("2", "2"),
            new Both("inconclusive", "not infected")),
        new Example(
            "I-2 in theatre: one culture positive, histology negative",
            I_2_IN_THEATRE,
            new Both("4", "4"),
            new Both("inconclusive", "inconclusive")),
        new Example(
            "I-3: as I-2, but histology positive",
            I_2_IN_THEATRE.with("histology", "positive"),
            new Both("7", "7"),
            new Both("infected", "infected")),
        new Example(
            "I-4: CRP 14, 3,500 cells, alpha-defensin positive: the versions part",
            PLAIN.with(
                Map.of(
                    "crp", 14,
                    "esr", 20,
                    "synovial white cells", 3500,
                    "synovial neutrophils", 60,
                    "alpha defensin", "positive")),
            new Both("8", "5"),
            new Both("infected", "inconclusive")),
        new Example(
            "I-5: ESR 35, 75 % neutrophils: the versions part",
            PLAIN.with(Map.of("esr", 35, "synovial neutrophils", 75)),
            new Both("1", "3"),
            new Both("not infected", "inconclusive")),
        new Example(
            "I-6: a sinus, and every marker normal",
            PLAIN.with("sinus tract", true),
            new Both("0", "0"),
            new Both("infected", "infected")),
        new Example(
            "I-7: ESR 40 alone",
            PLAIN.with("esr", 40),
            new Both("1", "1"),
            new Both("not infected", "not infected")),
        new Example(
            "I-8: a dry tap, histology positive: the versions part",
            dryTap().inTheatre().with("histology", "positive"),
            new Both("3", "3"),
            new Both("not infected", "inconclusive")),
        new Example(
            "I-9: CRP 24 and D-dimer 1,200 count once",
            PLAIN.with(Map.of("crp", 24, "d dimer measured", true, "d dimer", 1200)),
            new Both("2", "2"),
            new Both("inconclusive", "not infected")));
  }

  private static OrdinaryCase dryTap() {
    return PLAIN
        .with("joint aspiration", "dry")
        .with("leukocyte esterase", "not done")
        .without("synovial white cells")
        .without("synovial neutrophils");
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("examples")
  @DisplayName("As first published")
  @LeansOn(value = "PARVIZI-2018", known = Known.FOUND)
  @LeansOn(value = "MEMORY-INFECTION-SCORE", known = Known.FROM_MEMORY)
  void firstVersion(Example example) {
    Answer answer = example.findings().answer();
    assertThat(answer.calculation("infection score")).isEqualTo(example.points().first());
    assertThat(answer.value("infection status")).isEqualTo(example.status().first());
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("examples")
  @DisplayName("In the consensus variant, which a lead chooses by one cell")
  @LeansOn(value = "ICM-2018", known = Known.FOUND)
  void consensusVariant(Example example) {
    Answer answer = example.findings().answer(consensus);
    assertThat(answer.calculation("infection score")).isEqualTo(example.points().consensus());
    assertThat(answer.value("infection status")).isEqualTo(example.status().consensus());
  }
}
