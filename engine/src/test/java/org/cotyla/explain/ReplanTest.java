package org.cotyla.explain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.util.Map;
import org.cotyla.caseform.SeedlingProtocol;
import org.cotyla.evaluate.Engine;
import org.cotyla.finding.Case;
import org.cotyla.issue.RejectedException;
import org.cotyla.protocol.Field;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("A plan that is run again with later findings")
class ReplanTest {

  private static final Engine ENGINE = Engine.of(SeedlingProtocol.protocol());
  private static final Case PLAN =
      Case.of(Map.of("seed depth", 12, "soil", "loam", "watered", true)).titled("bed");

  @Test
  @DisplayName("is at the stage after the plan's when the later findings state none")
  void nextStage() {
    Replan replan = Replan.of(ENGINE, PLAN, Case.of(Map.of("root colour", "brown")));
    assertThat(replan.comparison().before().findings().stage()).isEqualTo("sowing");
    assertThat(replan.comparison().after().findings().stage()).isEqualTo("potting");
    assertThat(replan.comparison().decision("Vigour")).isPresent();
  }

  @Test
  @DisplayName("stays at the last stage when the plan is there already")
  void lastStage() {
    Replan replan =
        Replan.of(ENGINE, PLAN.atStage("potting"), Case.of(Map.of("root colour", "brown")));
    assertThat(replan.comparison().after().findings().stage()).isEqualTo("potting");
  }

  @Test
  @DisplayName("keeps the plan's findings, takes a restated one from the later, and says which")
  void restated() {
    Replan replan =
        Replan.of(
            ENGINE,
            PLAN,
            Case.of(Map.of("Seed depth", 40, "soil", "loam", "root colour", "white")));
    assertThat(replan.restated()).extracting(Field::name).containsExactly("seed depth", "soil");
    assertThat(replan.comparison().findings())
        .extracting(change -> change.field().name())
        .containsExactly("seed depth", "root colour");
    assertThat(
            replan.comparison().after().findings().datum("watered").orElseThrow().value().plain())
        .isEqualTo("yes");
  }

  @Test
  @DisplayName("is refused with the faults of both cases at once, each with its file")
  void faults() {
    Case plan = Case.of(Map.of("seed depth", 900)).in("plan.json");
    Case later = Case.of(Map.of("root colour", "green")).in("later.json");
    assertThat(refused(plan, later))
        .isEqualTo(
            """
            error C006 plan.json: case field `seed depth`: `900 mm` is outside what is allowed
                  help: allowed: [0..80] mm
            error C005 later.json: case field `root colour`: `green` is not a value of it
                  help: expected one of: white, brown""");
  }

  @Test
  @DisplayName("is refused when the later findings are of an earlier stage than the plan")
  void earlierStage() {
    Case later = Case.of(Map.of("soil", "clay")).atStage("sowing").in("later.json");
    assertThat(refused(PLAN.atStage("potting"), later))
        .isEqualTo(
            """
            error C041 later.json: case: the stage `sowing` is before the plan's, potting
                  help: the first case is the plan, the second what was found later""");
  }

  private static String refused(Case plan, Case later) {
    return catchThrowableOfType(RejectedException.class, () -> Replan.of(ENGINE, plan, later))
        .getMessage();
  }
}
