package org.cotyla.compare;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.cotyla.compile.SampleDraft;
import org.cotyla.evaluate.Engine;
import org.cotyla.finite.Effort;
import org.cotyla.issue.CellRef;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("What was edited")
class EditsTest {

  private static List<String> edits(SampleDraft old, SampleDraft young) {
    return ProtocolComparison.of(
            Engine.of(old.protocol()),
            Engine.of(young.protocol()),
            new Effort(20_000, 60, 8),
            List::of)
        .edits()
        .stream()
        .map(
            edit ->
                edit.kind().word()
                    + ": "
                    + edit.words()
                    + edit.after()
                        .or(edit::before)
                        .map(CellRef::plain)
                        .map(at -> " " + at)
                        .orElse(""))
        .toList();
  }

  private static SampleDraft guarded(String when) {
    return new SampleDraft()
        .safeguard("SF-1", when, "-", "never come first", "brace", "Reason.", "S");
  }

  @Test
  @DisplayName("names a safeguard that demands less, at the cell that was changed")
  void weaker() {
    assertThat(edits(guarded("< 30"), guarded("< 20")))
        .containsExactly(
            "safeguard changed: SF-1: was `never come first: brace` when `width < 30`, is now"
                + " `never come first: brace` when `width < 20` Safeguards!B3");
  }

  @Test
  @DisplayName("names a safeguard that is gone, and one that is new")
  void goneAndNew() {
    SampleDraft none = new SampleDraft();
    assertThat(edits(guarded("< 30"), none))
        .singleElement()
        .asString()
        .contains("safeguard removed");
    assertThat(edits(none, guarded("< 30"))).singleElement().asString().contains("safeguard added");
  }

  @Test
  @DisplayName("names rows that speak of a value which only the new protocol takes")
  void rowOfANewValue() {
    SampleDraft young =
        new SampleDraft().set("Fields", 1, "allowed", "low, high, top").cell(0, 2, 2, "high, top");
    assertThat(edits(new SampleDraft(), young))
        .anyMatch(edit -> edit.startsWith("field changed: grade, allowed"))
        .anyMatch(
            edit ->
                edit.equals(
                    "row changed: Class, K-3, grade: was `high`, is now `high, top` Class!C10"));
  }
}
