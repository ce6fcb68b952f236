package org.cotyla.check;

import static org.assertj.core.api.Assertions.assertThat;

import org.cotyla.compile.SampleDraft;
import org.cotyla.evaluate.Engine;
import org.cotyla.evaluate.Recommendation;
import org.cotyla.finite.Domain;
import org.cotyla.finite.Effort;
import org.cotyla.value.Truth;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

class SafeguardProofTest {

  private static SafeguardVerdict verdict(SampleDraft draft) {
    CheckReport report = CheckedSample.of(draft).report();
    assertThat(report.safeguards()).hasSize(1);
    return report.safeguards().get(0);
  }

  @Test
  @DisplayName("A safeguard that every case keeps is proven")
  void proven() {
    SampleDraft draft = new SampleDraft();
    draft.safeguard("S-1", "> 30", "A", "hold", "first plan: rest", "Reason.", "S");
    assertThat(verdict(draft))
        .isInstanceOfSatisfying(
            SafeguardVerdict.Proven.class,
            proven -> assertThat(proven.applies()).isEqualTo(Truth.TRUE));
  }

  @Test
  @DisplayName("A safeguard that can be broken comes with a smallest case that breaks it")
  void broken() {
    SampleDraft draft = new SampleDraft();
    draft.safeguard("S-1", "> 30", "-", "never come first", "rest", "Reason.", "S");
    SafeguardVerdict.Broken broken = (SafeguardVerdict.Broken) verdict(draft);
    Recommendation example = broken.example();
    assertThat(CheckedSample.findings(example)).isEqualTo("width 75");
    assertThat(example.ranking("plan").orElseThrow().leader().orElseThrow().name())
        .isEqualTo("rest");
    CheckedSample.of(draft)
        .says(
            "error K201 Safeguards!A3: safeguard `S-1` can be broken: a case meets its conditions"
                + " but not `never come first: rest`");
  }

  @Test
  @DisplayName("A safeguard whose conditions no case meets guards nothing, and that is said")
  void vacuous() {
    SampleDraft draft = new SampleDraft();
    draft.safeguard("S-1", "> 30", "B", "never come first", "brace", "Reason.", "S");
    CheckedSample.of(draft)
        .says(
            "warning K203 Safeguards!A3: no case meets the conditions of safeguard `S-1`, so it"
                + " guards nothing");
  }

  @Test
  @DisplayName("A rule-out, a row and a value can be demanded")
  void demands() {
    SampleDraft ruledOut = new SampleDraft().safeguardsWhen("class", "firm");
    ruledOut.safeguard("S-1", "B", "yes", "be ruled out", "brace", "Reason.", "S");
    assertThat(verdict(ruledOut)).isInstanceOf(SafeguardVerdict.Proven.class);
    SampleDraft row = new SampleDraft();
    row.safeguard("S-1", "> 30", "-", "be shown", "V-1", "Reason.", "S");
    assertThat(verdict(row)).isInstanceOf(SafeguardVerdict.Broken.class);
    SampleDraft value = new SampleDraft();
    value.safeguard("S-1", "<= 30", "-", "hold", "class: B", "Reason.", "S");
    assertThat(verdict(value)).isInstanceOf(SafeguardVerdict.Proven.class);
  }

  @Test
  @DisplayName("What cannot be settled within the limit is undecided, and never proven")
  void undecided() {
    SampleDraft draft = new SampleDraft().safeguardsWhen("twice");
    draft.safeguard("S-1", "> 100", "hold", "class: not(B)", "Reason.", "S");
    Engine engine = Engine.of(draft.protocol());
    SafeguardVerdict verdict =
        new SafeguardProof(engine, Domain.of(engine.protocol()), new Effort(10, 0, 1))
            .of(engine.protocol().checks().safeguards().get(0));
    assertThat(verdict).isInstanceOf(SafeguardVerdict.Undecided.class);
    assertThat(verdict(draft)).isInstanceOf(SafeguardVerdict.Proven.class);
  }

  @Test
  @DisplayName("That a safeguard holds says nothing when no case is known to meet its conditions")
  void perhapsVacuous() {
    SampleDraft draft = new SampleDraft().safeguardsWhen("class", "product");
    draft.add("Calculations", "product", "width * width - 61 * width", "1", "M", "S");
    draft.safeguard("S-1", "-", "= -900", "hold", "twice: >= 0", "Reason.", "S");
    Engine engine = Engine.of(draft.protocol());
    CheckReport report =
        ProtocolCheck.of(engine, new Effort(10, 3, 1)).run(CheckedSample.TODAY, Progress.untold());
    assertThat(report.safeguards())
        .singleElement()
        .isInstanceOfSatisfying(
            SafeguardVerdict.Proven.class,
            proven -> assertThat(proven.applies()).isEqualTo(Truth.OPEN));
    assertThat(report.remarks().stream().map(remark -> remark.issue().plain()))
        .contains(
            "warning K204 Safeguards!A3: whether any case meets the conditions of safeguard `S-1`"
                + " is undecided, so it may guard nothing");
  }
}
