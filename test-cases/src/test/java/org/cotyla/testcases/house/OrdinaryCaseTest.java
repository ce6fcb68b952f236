package org.cotyla.testcases.house;

import static org.assertj.core.api.Assertions.assertThat;

import org.cotyla.finding.Case;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("The ordinary case, from which the checks start")
class OrdinaryCaseTest {

  @Test
  @DisplayName("It states everything that may matter, at planning and in theatre")
  void isComplete() {
    assertThat(OrdinaryCase.planned().answer().missing()).isEmpty();
    assertThat(OrdinaryCase.planned().inTheatre().answer().missing()).isEmpty();
  }

  @Test
  @DisplayName("Nothing in it is out of the ordinary, and the protocol contradicts itself nowhere")
  void isOrdinary() {
    Answer answer = OrdinaryCase.planned().answer();
    assertThat(answer.recommendation().remarks()).isEmpty();
    assertThat(answer.recommendation().faults()).isEmpty();
    assertThat(answer.value("instability risk")).isEqualTo("low");
    assertThat(answer.value("infection status")).isEqualTo("not infected");
  }

  @Test
  @DisplayName("A copy with a finding changed leaves the first as it was")
  void isImmutable() {
    OrdinaryCase first = OrdinaryCase.planned();
    assertThat(first.with("age", 90).get("age")).isEqualTo(90);
    assertThat(first.get("age")).isEqualTo(68);
  }

  @Test
  @DisplayName("A constant is changed in a copy; the house protocol itself stays")
  void copies() {
    String before = House.engine().evaluate(caseOf()).protocolDigest();
    String copy = House.withConstant("early failure", "2").evaluate(caseOf()).protocolDigest();
    assertThat(copy).isNotEqualTo(before);
    assertThat(House.engine().evaluate(caseOf()).protocolDigest()).isEqualTo(before);
  }

  private static Case caseOf() {
    return Case.of(OrdinaryCase.planned().findings());
  }
}
