package org.cotyla.cli.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.cotyla.cli.AnkleCases;
import org.cotyla.cli.AnkleReview;
import org.cotyla.cli.Golden;
import org.cotyla.cli.TextProtocol;
import org.cotyla.evaluate.Engine;
import org.cotyla.evaluate.Recommendation;
import org.cotyla.explain.AskedOption;
import org.cotyla.explain.Supposition;
import org.cotyla.explain.WhatIf;
import org.cotyla.explain.Why;
import org.cotyla.explain.WhyNot;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("The texts that explain an answer")
class ExplanationAnswersTest {

  private static final LocalDate TODAY = LocalDate.of(2026, 6, 1);
  private static final Engine ANKLE = Engine.of(TextProtocol.ankle());

  @ParameterizedTest(name = "why on {0}")
  @CsvSource({"complete,semi-rigid brace", "incomplete,plaster cast", "ruled-out,plaster cast"})
  @DisplayName("on why an option has its place are as they were read and found right")
  void why(String name, String option) {
    golden("why-" + name, why(name, option, 80));
  }

  @ParameterizedTest(name = "why-not on {0}")
  @CsvSource({"complete,plaster cast", "ruled-out,plaster cast", "tie,plaster cast"})
  @DisplayName("on why an option does not come first are as they were read and found right")
  void whyNot(String name, String option) {
    golden("why-not-" + name, whyNot(name, option, 80));
  }

  @Test
  @DisplayName("on findings supposed otherwise are as they were read and found right")
  void whatIf() {
    golden("what-if-mild", whatIf(80, "swelling", "mild"));
    golden("what-if-unknown", whatIf(80, "able to walk", ""));
    golden("what-if-same", whatIf(80, "swelling", "severe"));
  }

  @ParameterizedTest(name = "{0} columns")
  @ValueSource(ints = {40, 60, 80, 120})
  @DisplayName("keep to their width and start with the caution")
  void width(int width) {
    List<String> texts =
        List.of(
            why("incomplete", "plaster cast", width),
            whyNot("ruled-out", "plaster cast", width),
            whatIf(width, "swelling", "mild"));
    for (String text : texts) {
      assertThat(text).startsWith("Invented for tests of this");
      assertThat(text.lines().filter(line -> !line.contains("sha256:")))
          .allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(width));
    }
  }

  private static String why(String name, String option, int width) {
    Recommendation advice = ANKLE.evaluate(AnkleCases.named(name));
    return new WhyAnswer(width, Style.PLAIN).write(Why.of(advice, option), Optional.empty(), TODAY);
  }

  private static String whyNot(String name, String option, int width) {
    Recommendation advice = ANKLE.evaluate(AnkleCases.named(name));
    AskedOption asked = AskedOption.find(ANKLE.protocol(), option);
    WhyNot whyNot = WhyNot.of(ANKLE, advice, asked, Optional.empty());
    return new WhyNotAnswer(width, Style.PLAIN).write(whyNot, TODAY);
  }

  private static String whatIf(int width, String field, String value) {
    WhatIf whatIf =
        WhatIf.of(ANKLE, AnkleCases.named("complete"), List.of(Supposition.written(field, value)));
    return new WhatIfAnswer(width, Style.PLAIN).write(whatIf, TODAY);
  }

  private static void golden(String name, String text) {
    Golden.matches(name + ".txt", AnkleReview.withoutDigests(text));
  }
}
