package org.cotyla.finite;

import static org.assertj.core.api.Assertions.assertThat;

import org.cotyla.compare.Written;
import org.cotyla.evaluate.Engine;
import org.cotyla.protocol.DecisionTable;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("The earliest case of which a claim is true")
class EarliestStageTest {

  @ParameterizedTest(name = "{0}")
  @ValueSource(strings = {"planning", "preparation", "theatre"})
  @DisplayName("is at the first stage at which it can be, of three")
  void earliest(String stage) {
    Engine engine =
        new Written()
            .givenAt(stage, "width", "number", "[0..60]")
            .givenAt("theatre", "depth", "number", "[0..60]")
            .derived("grade", "choice", "low, high")
            .decision("Grades", "F", "width|depth", "grade", "G-1|> 30|> 30|low", "G-2|> 30|-|high")
            .engine();
    DecisionTable grades = engine.protocol().decisions().get(0);
    CaseSearch search =
        CaseSearch.of(engine, Domain.of(engine.protocol()), new Effort(20_000, 150, 12));
    Answer answer = search.findEarliest(new Claim.Matches(grades, grades.rows().get(1)));
    assertThat(answer).isInstanceOf(Answer.Found.class);
    assertThat(((Answer.Found) answer).findings().stage()).isEqualTo(stage);
  }
}
