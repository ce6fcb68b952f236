package org.cotyla.evaluate;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

class RankingsTest {

  private static final Map<String, Object> WIDE = Map.of("width", 60, "firm", true, "grade", "low");

  private static RankingResult plan(SmallProtocol protocol, Map<String, ?> findings) {
    return protocol.on(findings).ranking("plan").orElseThrow();
  }

  private static List<String> lines(RankingResult result) {
    return result.options().stream()
        .map(
            option ->
                option.place()
                    + " "
                    + option.name()
                    + " "
                    + option.points().plain()
                    + " "
                    + option.availability().word())
        .toList();
  }

  @Test
  @DisplayName("Points for and against are added, and the most points come first")
  void sums() {
    RankingResult result =
        plan(
            SmallProtocol.votes(
                "C",
                "> 50|-|rest|favour|2",
                "-|yes|rest|oppose|0.5",
                "-|-|brace|favour|3",
                "< 9|-|rest|favour|9"),
            WIDE);
    assertThat(lines(result)).containsExactly("1 brace 3 available", "2 rest 1.5 available");
    assertThat(result.first().plain()).isEqualTo("brace");
    assertThat(result.firstIsCertain()).isTrue();
  }

  @Test
  @DisplayName(
      "Points are decimal: 0.1 and 0.2 are as many as 0.3, and the order of options decides")
  void ties() {
    RankingResult result =
        plan(
            SmallProtocol.votes(
                "C", "-|-|rest|favour|0.3", "-|-|brace|favour|0.1", "-|yes|brace|favour|0.2"),
            WIDE);
    assertThat(lines(result)).containsExactly("1 rest 0.3 available", "2 brace 0.3 available");
    assertThat(result.options().get(0).tiedWith()).containsExactly("brace");
    assertThat(result.first().plain()).isEqualTo("rest");
  }

  @Test
  @DisplayName("Points that differ beyond binary fractions are told apart")
  void fineDifferences() {
    RankingResult result =
        plan(
            SmallProtocol.votes(
                "C", "-|-|rest|favour|1", "-|-|brace|favour|1.00000000000000000001"),
            WIDE);
    assertThat(result.leader().orElseThrow().name()).isEqualTo("brace");
    assertThat(result.first().plain()).isEqualTo("brace");
  }

  @Test
  @DisplayName("Open rows give a range of points, and every option that can come first is named")
  void ranges() {
    RankingResult result =
        plan(
            SmallProtocol.votes(
                    "C",
                    "-|-|rest|favour|2",
                    "> 50|-|rest|oppose|1",
                    "> 60|-|brace|favour|4",
                    "-|-|wait|favour|0.5")
                .option("wait"),
            Map.of("firm", true));
    assertThat(lines(result))
        .containsExactly(
            "1 rest 2 (1 to 2) available", "2 wait 0.5 available", "3 brace 0 (0 to 4) available");
    assertThat(result.first().plain()).isEqualTo("brace, rest");
    assertThat(result.firstIsCertain()).isFalse();
  }

  private static RankingResult plan3(Map<String, ?> findings, String... rows) {
    return plan(SmallProtocol.votes("C", rows).option("wait"), findings);
  }

  @Test
  @DisplayName(
      "An option that is ruled out comes last whatever its points, with the row that did it")
  void ruledOut() {
    RankingResult result =
        plan3(WIDE, "-|-|rest|favour|9", "> 50|-|rest|rule out|-", "-|-|wait|favour|1");
    assertThat(lines(result))
        .containsExactly("1 wait 1 available", "2 brace 0 available", "3 rest 9 ruled out");
    assertThat(result.ruledOut().get(0).rulings())
        .extracting(ruling -> ruling.firing().row().id())
        .containsExactly("V-2");
    assertThat(result.option("rest").orElseThrow().canBeFirst()).isFalse();
  }

  @Test
  @DisplayName("An option that may be ruled out can be first, and so can the next")
  void mayBeRuledOut() {
    RankingResult result =
        plan3(
            Map.of("firm", true),
            "-|-|rest|favour|9",
            "> 50|-|rest|rule out|-",
            "-|-|wait|favour|1");
    assertThat(lines(result)).startsWith("1 rest 9 may be ruled out");
    assertThat(result.first().plain()).isEqualTo("rest, wait");
  }

  @Test
  @DisplayName("When all options are ruled out nothing is first")
  void allRuledOut() {
    RankingResult result =
        plan(SmallProtocol.votes("C", "-|-|rest|rule out|-", "-|-|brace|rule out|-"), WIDE);
    assertThat(result.leader()).isEmpty();
    assertThat(result.first().plain()).isEqualTo("nothing");
    assertThat(result.firstIsCertain()).isTrue();
    RankingResult open =
        plan(SmallProtocol.votes("C", "-|-|rest|rule out|-", "> 5|-|brace|rule out|-"), Map.of());
    assertThat(open.first().plain()).isEqualTo("brace or nothing");
  }

  @Test
  @DisplayName("Under a single-hit policy one row speaks, also when several agree")
  void singleHitVotes() {
    String[] rows = {"> 50|-|rest|favour|2", "-|yes|rest|favour|2", "-|-|rest|favour|2"};
    for (String policy : List.of("F", "A")) {
      assertThat(lines(plan(SmallProtocol.votes(policy, rows), WIDE)))
          .startsWith("1 rest 2 available");
    }
    assertThat(lines(plan(SmallProtocol.votes("C", rows), WIDE))).startsWith("1 rest 6 available");
  }

  @Test
  @DisplayName("A datum that no open vote for a possible first reads is said not to change it")
  void missingThatCannotChangeFirst() {
    Recommendation advice =
        SmallProtocol.votes(
                "C", "-|-|rest|favour|5", "> 50|-|brace|favour|4", "-|yes|rest|favour|1")
            .on(Map.of("grade", "low"));
    assertThat(advice.ranking("plan").orElseThrow().firstIsCertain()).isTrue();
    assertThat(advice.missing())
        .extracting(m -> m.datum().field().name())
        .contains("width", "firm");
    assertThat(advice.missing()).extracting(MissingDatum::mayChangeFirst).containsOnly(List.of());
    assertThat(advice.missing())
        .filteredOn(MissingDatum::mayMatter)
        .extracting(m -> m.datum().field().name() + " " + m.mayChangePoints())
        .containsExactlyInAnyOrder("width [plan]", "firm [plan]");
  }
}
