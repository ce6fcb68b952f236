package org.cotyla.explain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.List;
import java.util.Map;
import org.cotyla.caseform.SeedlingProtocol;
import org.cotyla.evaluate.Engine;
import org.cotyla.evaluate.RankedOption;
import org.cotyla.explain.FindingChange.Kind;
import org.cotyla.finding.Case;
import org.cotyla.finding.Given;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("A comparison of two answers")
class ComparisonTest {

  private static final Engine ENGINE = Engine.of(SeedlingProtocol.protocol());
  private static final Map<String, Object> SOUND =
      Map.of("seed depth", 12, "soil", "loam", "watered", true);

  @Test
  @DisplayName("says which findings differ: found, altered and withdrawn")
  void findings() {
    Comparison comparison =
        compare(
            Case.of(Map.of("seed depth", 12, "soil", "loam", "watered", true)),
            Case.of(Map.of("seed depth", 14, "watered", true, "seeds sown", 3)));
    assertThat(comparison.findings())
        .extracting(change -> change.field().name(), FindingChange::kind)
        .containsExactly(
            org.assertj.core.groups.Tuple.tuple("seed depth", Kind.ALTERED),
            org.assertj.core.groups.Tuple.tuple("soil", Kind.WITHDRAWN),
            org.assertj.core.groups.Tuple.tuple("seeds sown", Kind.FOUND));
  }

  @Test
  @DisplayName("does not count a field of a later stage that is merely not stated yet")
  void laterStageAlone() {
    Case plan = Case.of(SOUND);
    assertThat(compare(plan, plan.atStage("potting")).findings()).isEmpty();
  }

  @Test
  @DisplayName(
      "gives the decisions that come to something else, from what to what and by which rows")
  void decisions() {
    Comparison comparison = withRoots("brown");
    DecisionChange vigour = comparison.decision("Vigour").orElseThrow();
    assertThat(vigour.outputs()).hasSize(1);
    assertThat(vigour.outputs().get(0).before().plain()).isEqualTo("strong");
    assertThat(vigour.outputs().get(0).after().plain()).isEqualTo("weak");
    assertThat(rows(vigour.rows())).containsExactly("VI-1 added", "VI-4 removed");
    DecisionChange days = comparison.decision("Days under glass").orElseThrow();
    assertThat(days.outputs().get(0).after().plain()).isEqualTo("30");
    assertThat(rows(days.rows())).containsExactly("DA-2 added");
  }

  @Test
  @DisplayName(
      "gives a decision that comes to the same by other rows, and says that it is the same")
  void sameByOtherRows() {
    Comparison comparison =
        compare(Case.of(with("seed depth", 40)), Case.of(with("watered", false)));
    DecisionChange vigour = comparison.decision("Vigour").orElseThrow();
    assertThat(vigour.changesResult()).isFalse();
    assertThat(rows(vigour.rows())).containsExactly("VI-3 added", "VI-2 removed");
    assertThat(comparison.changesAnything()).isFalse();
  }

  @Test
  @DisplayName("gives who comes first before and after, what is newly ruled out and by which rows")
  void rankings() {
    RankingChange pot = withRoots("brown").ranking("pot").orElseThrow();
    assertThat(pot.changesLeader()).isTrue();
    assertThat(pot.before().leader().map(RankedOption::name)).contains("peat pot");
    assertThat(pot.after().leader().map(RankedOption::name)).contains("clay pot");
    assertThat(pot.newlyRuledOut()).extracting(OptionChange::name).containsExactly("open ground");
    assertThat(rows(pot.newlyRuledOut().get(0).rows())).containsExactly("PO-3 added");
    assertThat(rows(pot.option("peat pot").orElseThrow().rows()))
        .containsExactly("PO-4 added", "PO-1 removed");
  }

  @Test
  @DisplayName("turned round gives what is no longer ruled out")
  void turnedRound() {
    RankingChange pot =
        compare(Case.of(with("watered", false)), Case.of(SOUND)).ranking("pot").orElseThrow();
    assertThat(pot.newlyRuledOut()).isEmpty();
    assertThat(pot.noLongerRuledOut())
        .extracting(OptionChange::name)
        .containsExactly("open ground");
  }

  @Test
  @DisplayName(
      "gives the entries of a list that are new and gone; the same entry by another row is"
          + " neither")
  void lists() {
    DecisionChange advice = withRoots("brown").decision("Advice").orElseThrow();
    assertThat(rows(advice.newEntries())).containsExactly("AD-1 added");
    assertThat(rows(advice.goneEntries())).containsExactly("AD-2 removed");
    assertThat(rows(advice.rows()))
        .containsExactly("AD-1 added", "AD-3 added", "AD-2 removed", "AD-4 removed");
  }

  @Test
  @DisplayName("tells what has become open from what has become certain")
  void openAndSettled() {
    Case unsure =
        Case.of(with("watered", new Given.OneOf(List.of(Given.of(true), Given.of(false)))));
    DecisionChange opened = compare(Case.of(SOUND), unsure).decision("Vigour").orElseThrow();
    assertThat(rows(opened.rows())).containsExactly("VI-3 opened", "VI-4 opened");
    DecisionChange settled = compare(unsure, Case.of(SOUND)).decision("Vigour").orElseThrow();
    assertThat(rows(settled.rows())).containsExactly("VI-4 settled", "VI-3 excluded");
    assertThat(opened.openedEntries()).hasSize(2);
  }

  @Test
  @DisplayName("of an answer with itself is empty, but still has every ranking")
  void withItself() {
    Comparison comparison = compare(Case.of(SOUND), Case.of(SOUND));
    assertThat(comparison.changesAnything()).isFalse();
    assertThat(comparison.findings()).isEmpty();
    assertThat(comparison.decisions()).isEmpty();
    assertThat(comparison.rankings()).hasSize(1);
    assertThat(comparison.rankings().get(0).changesFirst()).isFalse();
  }

  @Test
  @DisplayName("holds between two engines of one protocol, and is refused between two protocols")
  void oneProtocol() {
    Engine same = Engine.of(SeedlingProtocol.protocol());
    assertThat(
            Comparison.of(ENGINE.evaluate(Case.of(SOUND)), same.evaluate(Case.of(SOUND)))
                .changesAnything())
        .isFalse();
    Engine other =
        Engine.of(SeedlingProtocol.changed(text -> text.replace("version | 1.2", "version | 2")));
    assertThatIllegalArgumentException()
        .isThrownBy(
            () -> Comparison.of(ENGINE.evaluate(Case.of(SOUND)), other.evaluate(Case.of(SOUND))));
  }

  private static Comparison withRoots(String colour) {
    return compare(Case.of(SOUND), Case.of(with("root colour", colour)).atStage("potting"));
  }

  private static Map<String, Object> with(String field, Object value) {
    Map<String, Object> findings = new java.util.HashMap<>(SOUND);
    findings.put(field, value);
    return findings;
  }

  private static Comparison compare(Case before, Case after) {
    return Comparison.of(ENGINE.evaluate(before), ENGINE.evaluate(after));
  }

  private static List<String> rows(List<RowChange> rows) {
    return rows.stream().map(row -> row.row().id() + " " + row.kind().word()).toList();
  }
}
