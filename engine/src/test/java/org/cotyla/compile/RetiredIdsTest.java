package org.cotyla.compile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import java.util.List;
import java.util.stream.Stream;
import org.cotyla.identity.ProtocolDigest;
import org.cotyla.issue.Issue;
import org.cotyla.protocol.Change;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

@DisplayName("Row ids that were taken out of use")
class RetiredIdsTest {

  private static SampleDraft retiring(String... cells) {
    SampleDraft draft =
        new SampleDraft().safeguard("SF-1", "-", "-", "never come first", "rest", "Reason.", "S");
    for (String ids : cells) {
      draft.add("Changes", "1.0.0", "2026-01-01", "lead", "A row went.", "No use.", ids);
    }
    return draft;
  }

  static Stream<Arguments> faulty() {
    String used =
        "give the row an id that was never used; records of old plans mean the row that is gone";
    return Stream.of(
        arguments("K-2", "error W250 Class!A9: row id `K-2` was retired at Changes!F2", used),
        arguments("Z-9, k 2", "error W250 Class!A9: row id `k 2` was retired at Changes!F2", used),
        arguments(
            "SF-1", "error W250 Safeguards!A3: row id `SF-1` was retired at Changes!F2", used),
        arguments(
            "Z-9,, Z-8",
            "error W252 Changes!F2: `Z-9,, Z-8` has a comma too many, or an id without a letter or"
                + " digit",
            "write the ids with a comma between them: DC-07, DC-12"),
        arguments(
            "Default",
            "error W252 Changes!F2: `Default` is no row's own id, so it cannot be retired",
            "a default row may be taken away and put back"));
  }

  @ParameterizedTest(name = "`{0}`")
  @MethodSource
  @DisplayName("One that a row has, and a list that cannot be read, are told at their cells")
  void faulty(String ids, String line, String help) {
    assertThat(retiring(ids).issues())
        .extracting(Issue::plain)
        .containsExactly(line + "\n      help: " + help);
  }

  @Test
  @DisplayName("One that is retired twice is told at the second cell, and the protocol stands")
  void twice() {
    assertThat(retiring("Z-9", "z9, Z-8").protocol().remarks())
        .extracting(Issue::plain)
        .containsExactly(
            "warning W251 Changes!F3: `z9` is already retired at Changes!F2\n"
                + "      help: name it once, at the change that took the row away");
  }

  @Test
  @DisplayName("Those that no row has are kept with the change that took them away")
  void kept() {
    assertThat(retiring("Z-9, Z-8", "-", "").protocol().changes())
        .extracting(Change::retiredIds)
        .containsExactly(List.of("Z-9", "Z-8"), List.of(), List.of());
  }

  @Test
  @DisplayName("They are no part of the digest: a protocol means the same with or without them")
  void notInTheDigest() {
    assertThat(ProtocolDigest.of(retiring("Z-9").protocol()))
        .isEqualTo(ProtocolDigest.of(retiring().protocol()));
  }
}
