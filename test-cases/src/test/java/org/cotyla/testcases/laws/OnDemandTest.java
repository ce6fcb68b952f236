package org.cotyla.testcases.laws;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import org.cotyla.compare.PastCase;
import org.cotyla.evaluate.AnswerScope;
import org.cotyla.evaluate.DecisionResult;
import org.cotyla.evaluate.Engine;
import org.cotyla.evaluate.Evaluation;
import org.cotyla.evaluate.Nearby;
import org.cotyla.evaluate.RankingResult;
import org.cotyla.evaluate.Recommendation;
import org.cotyla.expression.Symbol;
import org.cotyla.library.CaseFolder;
import org.cotyla.testcases.house.House;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("Working out a part of an answer to a case of the library")
class OnDemandTest {

  private static final int EVERY = 9;

  private final Engine engine = House.engine();

  private List<Recommendation> answers() throws IOException {
    List<Recommendation> answers = new ArrayList<>();
    Iterator<PastCase> cases = CaseFolder.of(House.cases()).cases();
    for (int i = 0; cases.hasNext(); i++) {
      PastCase one = cases.next();
      if (i % EVERY == 0) {
        answers.add(engine.decide(one.given().orElseThrow()));
      }
    }
    assertThat(answers).hasSizeGreaterThan(20);
    return answers;
  }

  @Test
  @DisplayName("gives what the whole answer gives, whichever decision is asked for first")
  void one() throws IOException {
    for (Recommendation answer : answers()) {
      for (DecisionResult decision : answer.decisions()) {
        try (Evaluation evaluation = engine.open(answer.findings())) {
          assertThat(evaluation.decision(decision.table())).isEqualTo(decision);
        }
      }
      for (RankingResult ranking : answer.rankings()) {
        try (Evaluation evaluation = engine.open(answer.findings())) {
          assertThat(evaluation.ranking(ranking.ranking())).isEqualTo(ranking);
        }
      }
    }
  }

  @Test
  @DisplayName("gives the same beside the answer to any other case")
  void nearby() throws IOException {
    List<Recommendation> answers = answers();
    for (int i = 1; i < answers.size(); i++) {
      Recommendation answer = answers.get(i);
      AnswerScope whole = AnswerScope.of(answer);
      Nearby nearby = Nearby.of(answers.get(i - 1));
      try (Evaluation evaluation = engine.open(answer.findings(), nearby)) {
        for (Symbol symbol : engine.protocol().vocabulary().symbols()) {
          assertThat(evaluation.valueOf(symbol)).as(symbol.name()).isEqualTo(whole.valueOf(symbol));
        }
        answer
            .decisions()
            .forEach(
                decision -> assertThat(evaluation.decision(decision.table())).isEqualTo(decision));
        answer
            .rankings()
            .forEach(
                ranking -> assertThat(evaluation.ranking(ranking.ranking())).isEqualTo(ranking));
      }
    }
  }
}
