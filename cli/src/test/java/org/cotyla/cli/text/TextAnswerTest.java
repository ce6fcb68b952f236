package org.cotyla.cli.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.TimeZone;
import java.util.stream.StreamSupport;
import org.cotyla.cli.AnkleAround;
import org.cotyla.cli.AnkleCases;
import org.cotyla.cli.Golden;
import org.cotyla.cli.TextProtocol;
import org.cotyla.evaluate.Engine;
import org.cotyla.evaluate.Recommendation;
import org.cotyla.explore.WhatMatters;
import org.cotyla.finding.Case;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("The answer as text")
class TextAnswerTest {

  private static final LocalDate TODAY = LocalDate.of(2026, 6, 1);

  @ParameterizedTest(name = "{0}")
  @MethodSource("cases")
  @DisplayName("says what it should on each case")
  void says(String name) {
    Golden.matches(name + ".txt", text(name));
  }

  @ParameterizedTest(name = "{0}")
  @ValueSource(strings = {"complete", "incomplete"})
  @DisplayName("shows every row that fired, with what it saw, when that is asked for")
  void traces(String name) {
    String traced =
        new TextAnswer(80, Style.PLAIN).write(AnkleCases.recommendation(name), TODAY, true);
    Golden.matches(name + "-trace.txt", traced);
  }

  @Test
  @DisplayName("says of each missing datum what it can change, where that was looked for")
  void matters() {
    WhatMatters matters = AnkleAround.matters("incomplete");
    String text =
        new TextAnswer(80, Style.PLAIN).write(matters.advice(), Optional.of(matters), TODAY, false);
    int start = text.indexOf("What is missing");
    String part = text.substring(start, text.indexOf("\n\n", start) + 1);
    Golden.matches("incomplete-matters.txt", part);
    assertThat(part).contains("can change").doesNotContain("may change");
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("cases")
  @DisplayName("keeps to its width, except where one word is longer")
  void keepsToItsWidth(String name) {
    for (int width : new int[] {40, 60, 80, 100}) {
      String text =
          new TextAnswer(width, Style.PLAIN).write(AnkleCases.recommendation(name), TODAY, true);
      assertThat(text.lines().filter(line -> Wrap.length(line) > width))
          .allSatisfy(line -> assertThat(line.strip()).doesNotContain(" "));
    }
  }

  @ParameterizedTest(name = "{0}, {1}")
  @CsvSource({"tr-TR, Asia/Kolkata", "de-DE, America/Adak", "ar-EG, UTC", "th-TH-u-nu-thai, UTC"})
  @DisplayName("is the same to the byte in every language and time zone")
  void isTheSameEverywhere(String language, String zone) {
    Locale locale = Locale.getDefault();
    TimeZone timeZone = TimeZone.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag(language));
      TimeZone.setDefault(TimeZone.getTimeZone(zone));
      cases().forEach(this::says);
    } finally {
      Locale.setDefault(locale);
      TimeZone.setDefault(timeZone);
    }
  }

  @Test
  @DisplayName("is in colour the same text, so that no colour says anything alone")
  void colourOnlyRepeats() {
    String coloured =
        new TextAnswer(80, Style.COLOURED)
            .write(AnkleCases.recommendation("ruled-out"), TODAY, false);
    assertThat(coloured).contains("\u001B[31mx\u001B[0m plaster cast");
    assertThat(coloured.replaceAll("\u001B\\[[0-9;]*m", "")).isEqualTo(text("ruled-out"));
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "draft, ! This protocol is a draft; it is not in force.",
    "superseded, ! This protocol is superseded by a newer version.",
    "withdrawn, ! This protocol is withdrawn; do not use it."
  })
  @DisplayName("warns of a protocol that is not in force")
  void warnsOfTheStatus(String status, String warning) {
    var protocol =
        TextProtocol.ankle(text -> text.replace("status | in force", "status | " + status));
    Recommendation advice = AnkleCases.recommendation(protocol, "complete");
    assertThat(text(advice, TODAY)).contains("\n" + warning + "\n");
  }

  @Test
  @DisplayName(
      "warns from the day after the review was due, and not before the protocol is in force")
  void warnsOfDates() {
    Recommendation advice = AnkleCases.recommendation("complete");
    String overdue = "! This protocol was due for review on 2027-01-01.";
    assertThat(text(advice, LocalDate.of(2027, 1, 1))).doesNotContain("!");
    assertThat(text(advice, LocalDate.of(2027, 1, 2))).contains(overdue);
    assertThat(text(advice, LocalDate.of(2025, 12, 31)))
        .contains("! This protocol is meant to be in force from 2026-01-01.");
  }

  @Test
  @DisplayName("cannot be steered by what a case's author wrote")
  void isSafe() {
    Case given = AnkleCases.named("complete").titled("a\u001B[2Jb\nc\u202Ed\u0007");
    Recommendation advice = Engine.of(TextProtocol.ankle()).evaluate(given);
    assertThat(text(advice, TODAY)).contains("\nCase      a?[2Jb c?d?\n");
  }

  @Test
  @DisplayName("names no option as first when all are ruled out")
  void allRuledOut() {
    var protocol =
        TextProtocol.ankle(
            text ->
                text
                    + """

                    == Support by order
                    decision | Support by order
                    hit policy | C
                    asks | What does the house allow?
                    ranks | support
                    id | when | then | then | then | because | source
                    | demand | option | effect | points | |
                    SO-1 | - | elastic bandage | rule out | - | None today. | HOUSE
                    SO-2 | - | semi-rigid brace | rule out | - | None today. | HOUSE
                    SO-3 | - | plaster cast | rule out | - | None today. | HOUSE
                    """);
    String text = text(AnkleCases.recommendation(protocol, "complete"), TODAY);
    assertThat(text)
        .contains("first support: every option is ruled out (certain)")
        .contains("x plaster cast: None today. [SO-3; HOUSE (house opinion)]");
  }

  static List<String> cases() {
    return StreamSupport.stream(AnkleCases.names().spliterator(), false).toList();
  }

  private static String text(String name) {
    return text(AnkleCases.recommendation(name), TODAY);
  }

  private static String text(Recommendation advice, LocalDate today) {
    return new TextAnswer(80, Style.PLAIN).write(advice, today, false);
  }
}
