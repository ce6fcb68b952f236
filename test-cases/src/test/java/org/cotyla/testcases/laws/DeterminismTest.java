package org.cotyla.testcases.laws;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.TimeZone;
import org.cotyla.evaluate.Engine;
import org.cotyla.finding.Case;
import org.cotyla.json.RecommendationJson;
import org.cotyla.protocol.Protocol;
import org.cotyla.testcases.generated.RandomCases;
import org.cotyla.testcases.generated.RandomProtocol;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.parallel.Isolated;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@Isolated
class DeterminismTest {

  private static final int PROTOCOLS = 25;

  private static List<String> answers() {
    List<String> answers = new ArrayList<>();
    for (long seed = 0; seed < PROTOCOLS; seed++) {
      Protocol protocol = RandomProtocol.of(seed);
      Engine engine = Engine.of(protocol);
      Random random = new Random(seed);
      for (int open : List.of(0, 3, 6)) {
        Case given = RandomCases.of(protocol, random, open);
        answers.add(RecommendationJson.write(engine.evaluate(given)));
      }
    }
    return answers;
  }

  @Test
  @DisplayName("Fresh engines give the same bytes again, and the same engine does so twice")
  void again() {
    assertThat(answers()).isEqualTo(answers());
    Engine engine = Engine.of(RandomProtocol.of(3));
    Case given = RandomCases.of(engine.protocol(), new Random(1), 4);
    assertThat(RecommendationJson.write(engine.evaluate(given)))
        .isEqualTo(RecommendationJson.write(engine.evaluate(given)));
  }

  @ParameterizedTest(name = "{0}, {1}")
  @DisplayName("The machine's language and time zone change no byte")
  @CsvSource({"tr-TR, Pacific/Kiritimati", "de-DE, America/St_Johns", "ar-EG, Asia/Kathmandu"})
  void locales(String language, String zone) {
    List<String> here = answers();
    Locale locale = Locale.getDefault();
    TimeZone timeZone = TimeZone.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag(language));
      TimeZone.setDefault(TimeZone.getTimeZone(zone));
      assertThat(answers()).isEqualTo(here);
    } finally {
      Locale.setDefault(locale);
      TimeZone.setDefault(timeZone);
    }
  }
}
