package org.cotyla.compare;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.cotyla.compare.ProtocolComparison.Meaning;
import org.cotyla.evaluate.Engine;
import org.cotyla.evaluate.Recommendation;
import org.cotyla.finding.Case;
import org.cotyla.finite.Answer;
import org.cotyla.finite.Effort;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("A ranking in two protocols")
class RankingVerdictTest {

  private static final String WIDE = "A-1|> 30|brace|favour|2";
  private static final String FIRM = "B-1|> 50|rest|favour|1";

  @Test
  @DisplayName("differs where a sheet that voted in it now votes in another")
  void votesElsewhere() {
    Written old = plan().options("aid", "sling", "stick").votes("Size", "plan", "width", WIDE);
    Written young = plan().options("aid", "sling", "stick");
    young.votes("Size", "aid", "width", "A-1|> 30|stick|favour|2");
    for (Written one : List.of(old, young)) {
      one.votes("Firmness", "plan", "width", FIRM);
      one.votes("Aid", "aid", "width", "D-1|> 50|sling|favour|1");
    }
    ProtocolComparison comparison = old.against(young);
    assertThat(comparison.rankings()).hasSize(2);
    assertThat(comparison.rankings())
        .allSatisfy(ranking -> assertThat(ranking.first()).isEqualTo(Verdict.DIFFERS));
    assertThat(comparison.meaning()).isEqualTo(Meaning.DIFFERENT);
  }

  @Test
  @DisplayName("differs where a sheet of that name gives a result now, and votes no more")
  void votesNoMore() {
    Written old = plan().votes("Size", "plan", "width", WIDE).votes("Firm", "plan", "width", FIRM);
    Written young =
        plan()
            .derived("size", "choice", "small, large")
            .decision("Size", "F", "width", "size", "A-1|> 30|large")
            .votes("Firm", "plan", "width", FIRM);
    RankingComparison plan = plan(old.against(young));
    assertThat(plan.first()).isEqualTo(Verdict.DIFFERS);
  }

  @Test
  @DisplayName("is proven the same where a row went to another sheet that votes in it")
  void rowMoved() {
    Written old =
        plan().votes("Size", "plan", "width", WIDE, FIRM).votes("Low", "plan", "width", low());
    Written young =
        plan().votes("Size", "plan", "width", WIDE).votes("Low", "plan", "width", low(), FIRM);
    RankingComparison plan = plan(old.against(young));
    assertThat(plan.first()).isEqualTo(Verdict.PROVEN_SAME);
    assertThat(plan.verdict()).isEqualTo(Verdict.PROVEN_SAME);
  }

  @Test
  @DisplayName("is proven the same where a sheet that votes in it was split in two")
  void split() {
    Written old = plan().votes("Size", "plan", "width", WIDE, FIRM);
    Written young =
        plan().votes("Size", "plan", "width", WIDE).votes("Firm", "plan", "width", FIRM);
    RankingComparison plan = plan(old.against(young));
    assertThat(plan.first()).isEqualTo(Verdict.PROVEN_SAME);
    assertThat(plan.verdict()).isEqualTo(Verdict.PROVEN_SAME);
  }

  @Test
  @DisplayName("has other points though the same option always comes first")
  void pointsOnly() {
    Written old = plan().votes("Size", "plan", "width", "A-0|-|rest|favour|5", WIDE);
    Written young =
        plan().votes("Size", "plan", "width", "A-0|-|rest|favour|5", "A-1|> 30|brace|favour|3");
    RankingComparison plan = plan(old.against(young));
    assertThat(plan.first()).isEqualTo(Verdict.PROVEN_SAME);
    assertThat(plan.verdict()).isEqualTo(Verdict.DIFFERS);
  }

  @Test
  @DisplayName("rules out otherwise though the points and the first option are the same")
  void ruledOutOnly() {
    Written old = plan().votes("Size", "plan", "width", "A-1|-|rest|favour|5");
    Written young =
        plan().votes("Size", "plan", "width", "A-1|-|rest|favour|5", "A-2|> 30|brace|rule out|-");
    RankingComparison plan = plan(old.against(young));
    assertThat(plan.first()).isEqualTo(Verdict.PROVEN_SAME);
    assertThat(plan.verdict()).isEqualTo(Verdict.DIFFERS);
  }

  @Test
  @DisplayName("shows no past case in which the first place hangs on what is missing")
  void openCase() {
    Engine old = plan().votes("Size", "plan", "width", WIDE, "A-2|-|rest|favour|1").engine();
    Engine young =
        plan()
            .votes("Size", "plan", "width", WIDE, "A-2|-|rest|favour|1", "A-3|-|brace|favour|2")
            .engine();
    Case open = Case.of(Map.of()).atStage("planning");
    List<Recommendation> answers = List.of(old.evaluate(open), young.evaluate(open));
    Answer.Found known = new Answer.Found(answers.get(0).findings(), answers);
    RankingSearch search =
        new RankingSearch(
            old.protocol().rankings().get(0), young.protocol().rankings().get(0), List.of());
    assertThat(answers.get(0).rankings().get(0).firstIsCertain()).isFalse();
    assertThat(search.seenIn(List.of(known))).isEmpty();
  }

  @Test
  @DisplayName("differs by the order of its options alone, for those who ask of edits only too")
  void orderOfOptions() {
    Engine old =
        sheets().options("plan", "rest", "brace").votes("Size", "plan", "width", WIDE).engine();
    Engine young =
        sheets().options("plan", "brace", "rest").votes("Size", "plan", "width", WIDE).engine();
    ProtocolComparison edits =
        ProtocolComparison.ofEdits(old, young, new Effort(20_000, 150, 12), List.of());
    assertThat(edits.meaning()).isEqualTo(Meaning.DIFFERENT);
  }

  private static String low() {
    return "C-1|< 10|rest|favour|1";
  }

  private static Written sheets() {
    return new Written().given("width", "number", "[0..60]");
  }

  private static Written plan() {
    return sheets().options("plan", "rest", "brace");
  }

  private static RankingComparison plan(ProtocolComparison comparison) {
    return comparison.rankings().get(0);
  }
}
