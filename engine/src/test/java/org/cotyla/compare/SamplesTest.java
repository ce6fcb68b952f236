package org.cotyla.compare;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.cotyla.evaluate.Engine;
import org.cotyla.evaluate.Recommendation;
import org.cotyla.finding.Case;
import org.cotyla.finding.Datum;
import org.cotyla.finite.Answer;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("Cases that are drawn around a difference")
class SamplesTest {

  @ParameterizedTest(name = "{0} {1}")
  @CsvSource(
      delimiter = ';',
      value = {
        "number; (0..1)",
        "number; [0..10], [20..30]",
        "number; not(0)",
        "text; not(\"other\")",
        "date; > date(\"2027-01-01\")"
      })
  @DisplayName("state only what a field allows")
  void allowed(String type, String allowed) {
    Engine engine = new Written().given("width", type, allowed).engine();
    Samples samples = new Samples(Side.of(0, engine, Map.of()), Side.of(1, engine, Map.of()));
    Recommendation open = engine.evaluate(Case.of(Map.of()).atStage("planning"));
    for (int i = 0; i < 12; i++) {
      samples.add(new Answer.Found(open.findings(), List.of(open, open)));
    }
    assertThat(samples.cases()).hasSizeGreaterThan(40);
    for (Answer.Found found : samples.cases()) {
      for (Datum datum : found.findings().data()) {
        assertThat(datum.field().allowed().contains(datum.value().single().orElseThrow()))
            .as("%s", datum.value())
            .isTrue();
      }
    }
  }
}
