package org.cotyla.finite;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.cotyla.compare.Written;
import org.cotyla.evaluate.Engine;
import org.cotyla.protocol.DecisionTable;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("Tests that compare two names")
class OrdersTest {

  private static final Effort EFFORT = new Effort(20_000, 60, 8);

  private static Written names() {
    return new Written()
        .given("depth", "number", "[0..100]")
        .given("width", "number", "[0..100]")
        .derived("shape", "choice", "deep, wide, even")
        .calculation("twice the depth", "2 * depth");
  }

  private static Answer both(Engine engine, int one, int other, boolean otherMatches) {
    DecisionTable table = engine.protocol().decisions().get(0);
    Claim second = new Claim.Matches(table, table.rows().get(other));
    return CaseSearch.of(engine, Domain.of(engine.protocol()), EFFORT)
        .find(
            new Claim.All(
                List.of(
                    new Claim.Matches(table, table.rows().get(one)),
                    otherMatches ? second : new Claim.Not(second))));
  }

  @Test
  @DisplayName("never hold both ways round, and one of three always does")
  void oneOfThree() {
    Engine engine =
        names()
            .decision(
                "Shape",
                "C",
                "width|depth",
                "shape",
                "S-1|> depth|-|wide",
                "S-2|< depth|-|deep",
                "S-3|[depth..depth]|-|even",
                "S-4|-|> width|deep",
                "S-5|<= depth|-|even")
            .engine();
    assertThat(both(engine, 0, 1, true)).isInstanceOf(Answer.Impossible.class);
    assertThat(both(engine, 0, 2, true)).isInstanceOf(Answer.Impossible.class);
    assertThat(both(engine, 1, 2, true)).isInstanceOf(Answer.Impossible.class);
    assertThat(both(engine, 1, 2, false)).isInstanceOf(Answer.Found.class);
    assertThat(both(engine, 2, 4, true)).isInstanceOf(Answer.Found.class);
  }

  @Test
  @DisplayName("say the same whichever of the two is asked")
  void eitherWay() {
    Engine engine =
        names()
            .decision(
                "Shape", "C", "width|depth", "shape", "S-1|< depth|-|deep", "S-2|-|> width|deep")
            .engine();
    assertThat(both(engine, 0, 1, true)).isInstanceOf(Answer.Found.class);
    assertThat(both(engine, 0, 1, false)).isInstanceOf(Answer.Impossible.class);
    assertThat(both(engine, 1, 0, false)).isInstanceOf(Answer.Impossible.class);
  }

  @Test
  @DisplayName("hold neither way where one of the names is nothing")
  void nothing() {
    Engine engine =
        new Written()
            .given("depth", "number", "[0..100]")
            .givenAt("theatre", "width", "number", "[0..100]")
            .derived("shape", "choice", "deep, wide, open")
            .decision(
                "Shape",
                "C",
                "width|depth",
                "shape",
                "S-1|> depth|-|wide",
                "S-2|<= depth|-|deep",
                "S-3|-|-|open")
            .engine();
    DecisionTable table = engine.protocol().decisions().get(0);
    Claim neither =
        new Claim.All(
            List.of(
                new Claim.Not(new Claim.Matches(table, table.rows().get(0))),
                new Claim.Not(new Claim.Matches(table, table.rows().get(1)))));
    Answer answer = CaseSearch.of(engine, Domain.of(engine.protocol()), EFFORT).find(neither);
    assertThat(answer).isInstanceOf(Answer.Found.class);
    assertThat(((Answer.Found) answer).findings().stage()).isNotEqualTo("theatre");
  }

  @Test
  @DisplayName("are one question for a formula as well")
  void formula() {
    Engine engine =
        names()
            .decision(
                "Shape",
                "C",
                "width|depth",
                "shape",
                "S-1|> 2 * depth + 1|-|wide",
                "S-2|(2 * depth..2 * depth + 1]|-|even")
            .engine();
    assertThat(both(engine, 0, 1, true)).isInstanceOf(Answer.Impossible.class);
    assertThat(both(engine, 1, 0, false)).isInstanceOf(Answer.Found.class);
  }
}
