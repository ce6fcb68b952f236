package org.cotyla.cli.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import org.cotyla.cli.AnkleAround;
import org.cotyla.cli.AnkleReview;
import org.cotyla.cli.Golden;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("The text on what lies around a case")
class AroundAnswersTest {

  private static final LocalDate TODAY = LocalDate.of(2026, 6, 1);

  @ParameterizedTest(name = "{0}")
  @MethodSource("org.cotyla.cli.AnkleCases#names")
  @DisplayName("says what the answer hangs on as it was read and found right")
  void whatMatters(String name) {
    Golden.matches("what-matters-" + name + ".txt", AnkleReview.withoutDigests(matters(name, 80)));
  }

  @ParameterizedTest(name = "{0}, {1}")
  @CsvSource({
    "complete, plaster cast, change-cast",
    "complete, elastic bandage, change-bandage",
    "complete, semi-rigid brace, change-reached",
    "incomplete, plaster cast, change-open",
    "ruled-out, grade=1, change-grade",
    "blank, elastic bandage, change-blank"
  })
  @DisplayName("says what would have to be true as it was read and found right")
  void smallestChange(String name, String wanted, String file) {
    Golden.matches(file + ".txt", AnkleReview.withoutDigests(change(name, wanted, 80)));
  }

  @ParameterizedTest(name = "{0} columns")
  @ValueSource(ints = {40, 60, 80, 120})
  @DisplayName("keeps to its width and starts with the caution")
  void width(int width) {
    for (String text :
        List.of(matters("incomplete", width), change("complete", "plaster cast", width))) {
      assertThat(text).startsWith("Invented for tests of this");
      assertThat(text.lines().filter(line -> !line.contains("sha256:")))
          .allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(width));
    }
  }

  private static String matters(String name, int width) {
    return new WhatMattersAnswer(width, Style.PLAIN)
        .write(
            AnkleAround.matters(name),
            AnkleAround.conditions(name),
            AnkleAround.margins(name),
            TODAY);
  }

  private static String change(String name, String wanted, int width) {
    return new SmallestChangeAnswer(width, Style.PLAIN)
        .write(AnkleAround.change(name, wanted), TODAY);
  }
}
