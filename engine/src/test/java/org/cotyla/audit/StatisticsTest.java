package org.cotyla.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.assertj.core.data.Offset;
import org.cotyla.audit.Survival.Followed;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Figures against published worked examples; all of them are remembered, hence from memory. */
class StatisticsTest {

  private static final Offset<Double> FOUR_DIGITS = within(0.00005);
  private static final Offset<Double> THREE_DIGITS = within(0.0006);

  /**
   * R. G. Newcombe, Two-sided confidence intervals for the single proportion, Statistics in
   * Medicine 17 (1998) 857-872, table I, method 3 (score, without continuity correction). The paper
   * itself was not at hand; the four intervals stand with that reference in the tests of several
   * independent public programs.
   */
  @ParameterizedTest(name = "{0} of {1}: {2} to {3}")
  @CsvSource({
    "81, 263, 0.2553, 0.3662",
    "15, 148, 0.0624, 0.1605",
    "0, 20, 0.0000, 0.1611",
    "1, 29, 0.0061, 0.1718"
  })
  @DisplayName("Wilson's interval is that of Newcombe's four examples")
  void wilson(long count, long of, double lower, double upper) {
    Proportion proportion = Proportion.of(count, of);
    assertThat(proportion.lower()).isCloseTo(lower, FOUR_DIGITS);
    assertThat(proportion.upper()).isCloseTo(upper, FOUR_DIGITS);
  }

  @Test
  @DisplayName("Nothing counted has no share, and an interval that says nothing")
  void nothingCounted() {
    Proportion nothing = Proportion.of(0, 0);
    assertThat(nothing.share()).isEmpty();
    assertThat(nothing.lower()).isZero();
    assertThat(nothing.upper()).isOne();
  }

  /**
   * NIST/SEMATECH e-Handbook of Statistical Methods, 6.3.3.2 Proportions control charts: 30 wafers
   * of 50 chips each. The common share of 0.2313 is quoted from it in print
   * (quesba.com/questions/application-p-chart-given-nist-sematech-e-handbook-statistical-methods-1745595);
   * the limits are from memory of the handbook and follow from its formula.
   */
  @Test
  @DisplayName("Control limits are those of the handbook's example of 30 wafers")
  void controlLimits() {
    int[] defects = {
      12, 15, 8, 10, 4, 7, 16, 9, 14, 10, 5, 6, 17, 12, 22, 8, 10, 5, 13, 11, 20, 18, 24, 15, 9, 12,
      7, 13, 9, 6
    };
    ControlChart chart =
        ControlChart.of(
            IntStream.range(0, defects.length)
                .mapToObj(i -> new ControlChart.Sample("" + (i + 1), defects[i], 50))
                .toList());
    assertThat(chart.centre()).isCloseTo(0.2313, FOUR_DIGITS);
    assertThat(chart.points().get(0).upper()).isCloseTo(0.4102, within(0.0002));
    assertThat(chart.points().get(0).lower()).isCloseTo(0.0524, within(0.0002));
    assertThat(chart.points().stream().filter(ControlChart.Point::isBeyond))
        .extracting(ControlChart.Point::name)
        .containsExactly("15", "23");
  }

  /**
   * 50 lots of 200 wafers, worked with another program at
   * rstudio-pubs-static.s3.amazonaws.com/1407303_7ebb081158c34b3a88f482fc0f8fac9c.html: a common
   * share of 0.0357, 15.01184 defects as the upper limit and none as the lower.
   */
  @Test
  @DisplayName("Control limits are those of a published example of 50 lots, cut off at nothing")
  void controlLimitsOfLots() {
    int[] defects = {
      8, 7, 11, 3, 6, 11, 4, 4, 5, 8, 8, 6, 7, 6, 10, 7, 9, 5, 6, 8, 8, 10, 4, 11, 4, 11, 6, 6, 9,
      5, 4, 7, 5, 7, 8, 5, 10, 9, 7, 9, 4, 9, 4, 7, 11, 8, 10, 8, 7, 5
    };
    ControlChart chart =
        ControlChart.of(
            IntStream.range(0, defects.length)
                .mapToObj(i -> new ControlChart.Sample("" + (i + 1), defects[i], 200))
                .toList());
    assertThat(chart.centre()).isCloseTo(0.0357, within(1e-12));
    assertThat(chart.points().get(0).upper() * 200).isCloseTo(15.01184, within(5e-6));
    assertThat(chart.points().get(0).lower()).isZero();
    assertThat(chart.points()).noneMatch(ControlChart.Point::isBeyond);
  }

  @Test
  @DisplayName("A smaller sample has wider limits, and few expected are told")
  void limitsWidenAsSamplesGetSmaller() {
    ControlChart chart =
        ControlChart.of(
            List.of(
                new ControlChart.Sample("a", 80, 100),
                new ControlChart.Sample("none", 0, 0),
                new ControlChart.Sample("b", 8, 10)));
    assertThat(chart.points()).extracting(ControlChart.Point::name).containsExactly("a", "b");
    assertThat(chart.points().get(0).lower()).isCloseTo(0.8 - 3 * 0.04, within(1e-9));
    assertThat(chart.points().get(1).lower()).isLessThan(chart.points().get(0).lower());
    assertThat(chart.points().get(1).upper()).isEqualTo(1);
    assertThat(chart.points()).extracting(ControlChart.Point::rough).containsExactly(false, true);
  }

  /**
   * E. J. Freireich et al., Blood 21 (1963) 699-716, weeks of remission on 6-mercaptopurine, as
   * worked in D. G. Kleinbaum and M. Klein, Survival Analysis; limits on the log-log scale. The
   * data are those at
   * rstudio-pubs-static.s3.amazonaws.com/1434825_b3600a2a460b48caadb66dbfb4891e2c.html and so is
   * the median of 23; the table of limits is from memory.
   */
  @Test
  @DisplayName("Kaplan-Meier is that of the 6-mercaptopurine remissions, with its limits")
  void kaplanMeier() {
    List<Followed> followed = new ArrayList<>();
    for (int event : new int[] {6, 6, 6, 7, 10, 13, 16, 22, 23}) {
      followed.add(new Followed(event, true));
    }
    for (int censored : new int[] {6, 9, 10, 11, 17, 19, 20, 25, 32, 32, 34, 35}) {
      followed.add(new Followed(censored, false));
    }
    Survival survival = Survival.of(followed);
    double[][] published = {
      {6, 21, 3, 0.857, 0.620, 0.952},
      {7, 17, 1, 0.807, 0.563, 0.923},
      {10, 15, 1, 0.753, 0.503, 0.889},
      {13, 12, 1, 0.690, 0.432, 0.849},
      {16, 11, 1, 0.627, 0.368, 0.805},
      {22, 7, 1, 0.538, 0.268, 0.747},
      {23, 6, 1, 0.448, 0.188, 0.680}
    };
    assertThat(survival.subjects()).isEqualTo(21);
    assertThat(survival.events()).isEqualTo(9);
    assertThat(survival.steps()).hasSameSizeAs(published);
    for (int i = 0; i < published.length; i++) {
      Survival.Step step = survival.steps().get(i);
      assertThat(step.days()).isEqualTo((long) published[i][0]);
      assertThat(step.atRisk()).isEqualTo((long) published[i][1]);
      assertThat(step.events()).isEqualTo((long) published[i][2]);
      assertThat(step.free()).isCloseTo(published[i][3], THREE_DIGITS);
      assertThat(step.lower()).isCloseTo(published[i][4], THREE_DIGITS);
      assertThat(step.upper()).isCloseTo(published[i][5], THREE_DIGITS);
    }
    assertThat(survival.steps().stream().filter(step -> step.free() <= 0.5).findFirst())
        .hasValueSatisfying(median -> assertThat(median.days()).isEqualTo(23));
    assertThat(survival.atRisk(6)).isEqualTo(21);
    assertThat(survival.atRisk(10)).isEqualTo(15);
    assertThat(survival.atRisk(36)).isZero();
  }

  /**
   * The same trial's 21 children on placebo, none censored, as listed with their limits at
   * data.princeton.edu/eco572/KaplanMeier.html (first two times).
   */
  @Test
  @DisplayName("Kaplan-Meier and its limits are those of the same trial's placebo group")
  void kaplanMeierOfPlacebo() {
    List<Followed> followed = new ArrayList<>();
    for (int event :
        new int[] {1, 1, 2, 2, 3, 4, 4, 5, 5, 8, 8, 8, 8, 11, 11, 12, 12, 15, 17, 22, 23}) {
      followed.add(new Followed(event, true));
    }
    Survival survival = Survival.of(followed);
    double[][] published = {{1, 21, 2, 0.9048, 0.6700, 0.9753}, {2, 19, 2, 0.8095, 0.5689, 0.9239}};
    for (int i = 0; i < published.length; i++) {
      Survival.Step step = survival.steps().get(i);
      assertThat(step.days()).isEqualTo((long) published[i][0]);
      assertThat(step.atRisk()).isEqualTo((long) published[i][1]);
      assertThat(step.events()).isEqualTo((long) published[i][2]);
      assertThat(step.free()).isCloseTo(published[i][3], FOUR_DIGITS);
      assertThat(step.lower()).isCloseTo(published[i][4], FOUR_DIGITS);
      assertThat(step.upper()).isCloseTo(published[i][5], FOUR_DIGITS);
    }
  }

  @Test
  @DisplayName("When nobody is left, no limits are made up")
  void nobodyLeft() {
    Survival survival = Survival.of(List.of(new Followed(3, true), new Followed(3, true)));
    assertThat(survival.steps()).containsExactly(new Survival.Step(3, 2, 2, 0, 0, 1));
    assertThat(Survival.of(List.of()).steps()).isEmpty();
  }
}
