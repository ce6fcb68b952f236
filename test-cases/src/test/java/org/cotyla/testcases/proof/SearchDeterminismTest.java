package org.cotyla.testcases.proof;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.TimeZone;
import org.cotyla.evaluate.Engine;
import org.cotyla.finite.Answer;
import org.cotyla.finite.CaseSearch;
import org.cotyla.finite.Claim;
import org.cotyla.finite.Domain;
import org.cotyla.finite.Effort;
import org.cotyla.protocol.Protocol;
import org.cotyla.testcases.generated.RandomProtocol;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.parallel.Isolated;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@Isolated
class SearchDeterminismTest {

  private static final int PROTOCOLS = 12;
  private static final int CLAIMS = 8;

  /** What is asked, how the search ended, and the case that was found with its smallest form. */
  private static List<String> answers() {
    List<String> answers = new ArrayList<>();
    for (long seed = 0; seed < PROTOCOLS; seed++) {
      Protocol protocol = RandomProtocol.of(seed);
      CaseSearch search =
          CaseSearch.of(Engine.of(protocol), Domain.of(protocol), new Effort(20_000, 40, 24));
      RandomClaims claims = new RandomClaims(new Random(seed), List.of(protocol));
      for (int i = 0; i < CLAIMS; i++) {
        Claim claim = claims.next(2);
        Answer answer = search.find(claim);
        answers.add(Trial.claim(claim) + ": " + text(answer));
        if (answer instanceof Answer.Found found) {
          answers.add(text(search.smallest(found, claim)));
        }
      }
    }
    return answers;
  }

  private static String text(Answer answer) {
    return answer instanceof Answer.Found found
        ? found.findings().stage()
            + found.findings().data().stream()
                .map(datum -> datum.field().name() + " = " + datum.value().plain())
                .toList()
        : answer.toString();
  }

  @Test
  @DisplayName("A search that is made again finds the same cases and proves the same")
  void again() {
    assertThat(answers()).isEqualTo(answers());
  }

  @ParameterizedTest(name = "{0}, {1}")
  @DisplayName("The machine's language and time zone change no case and no proof")
  @CsvSource({"tr-TR, Pacific/Kiritimati", "ar-EG, Asia/Kathmandu"})
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
