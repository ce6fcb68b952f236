package org.cotyla.cli.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.Optional;
import org.cotyla.cli.AnkleReview;
import org.cotyla.cli.Golden;
import org.cotyla.explain.Replan;
import org.cotyla.json.RecordedPlan.Origin;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("The text on a plan that was run again")
class ReplanAnswerTest {

  private static final LocalDate TODAY = LocalDate.of(2026, 6, 1);

  @ParameterizedTest(name = "{0}")
  @MethodSource("org.cotyla.cli.AnkleReview#names")
  @DisplayName("is as it was read and found right")
  void golden(String name) {
    String text = text(AnkleReview.replan(name), 80);
    Golden.matches("replan-" + name + ".txt", AnkleReview.withoutDigests(text));
  }

  @ParameterizedTest(name = "{0} columns")
  @ValueSource(ints = {40, 60, 80, 120})
  @DisplayName("keeps to its width and starts with the caution")
  void width(int width) {
    for (String name : AnkleReview.names()) {
      String text = text(AnkleReview.replan(name), width);
      assertThat(text).startsWith("Invented for tests of this");
      assertThat(text.lines().filter(line -> !line.contains("sha256:")))
          .allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(width));
    }
  }

  @Test
  @DisplayName("says plainly that the plan was made with another protocol, and not so otherwise")
  void otherProtocol() {
    Replan replan = AnkleReview.replan("same");
    String digest = replan.comparison().after().protocolDigest();
    assertThat(text(replan, new Origin("ankle-sprain", "2.1", digest)))
        .doesNotContain("another protocol");
    assertThat(text(replan, new Origin("ankle-sprain", "2.0", "sha256:0")))
        .contains("! The plan was made with another protocol: ankle-sprain 2.0.");
    assertThat(text(replan, new Origin("ankle-sprain", "2.1", "sha256:0")))
        .contains("a workbook of the same name and");
  }

  @Test
  @DisplayName("says that nothing changes when nothing does")
  void nothingChanges() {
    assertThat(text(AnkleReview.replan("same"), 80))
        .contains("Nothing changes: every decision and every ranking is as planned.")
        .contains("stated again as planned: swelling");
    assertThat(text(AnkleReview.replan("torn"), 80)).doesNotContain("Nothing changes");
  }

  private static String text(Replan replan, int width) {
    return new ReplanAnswer(width, Style.PLAIN).write(replan, Optional.empty(), TODAY);
  }

  private static String text(Replan replan, Origin origin) {
    return new ReplanAnswer(80, Style.PLAIN).write(replan, Optional.of(origin), TODAY);
  }
}
