package org.cotyla.privacy;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.cotyla.issue.Issue;
import org.cotyla.issue.Issues;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("What may be written into a ledger")
class WordingTest {

  @ParameterizedTest
  @ValueSource(strings = {"R-2026-0042", "HIP-0001", "a", "7"})
  @DisplayName("takes a house's own number of a case")
  void takesReferences(String reference) {
    assertThat(reference(reference)).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"", "-R", "R 1", "R/1", "é1", "../x", "a-very-long-reference-of-a-case-here"})
  @DisplayName("refuses a reference of other characters or too many")
  void refusesCharacters(String reference) {
    assertThat(reference(reference)).extracting(Issue::code).containsExactly("L010");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"9434765919", "12-03-1950", "R-1950-03-12", "943-476-5919", "R-12-mar-1950"})
  @DisplayName("refuses a reference that may be a date or the number of a person")
  void refusesPersons(String reference) {
    assertThat(reference(reference)).extracting(Issue::code).containsExactly("L011");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "The cup was 58 mm, with a 36 mm head and 3 screws of 25, 30 and 35 mm.",
        "CRP rose to 100-200 mg/l.",
        "In 2026 the device was not to be had.",
        "It may 12 times fail.",
        "Found in theatre; see entry 10-12."
      })
  @DisplayName("takes a sentence with the numbers of an operation")
  void takesSentences(String text) {
    assertThat(text(text)).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "Patient 9434765919.",
        "Patient 943 476 5919.",
        "Patient 943-476-5919.",
        "Patient 943\u00a0476\u00a05919.",
        "Patient \u0661\u0662\u0663\u0664\u0665\u0666\u0667.",
        "Born 12.3.1950.",
        "Born 1950-03-12.",
        "Born 12 March 1950.",
        "Born on March 12th, 1950.",
        "Born 12-Mar-50."
      })
  @DisplayName("refuses a sentence that holds a date or a long number, however it is grouped")
  void refusesNumbers(String text) {
    assertThat(text(text)).extracting(Issue::code).containsExactly("L014");
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "   ", "a\u0007b"})
  @DisplayName("refuses what is no sentence")
  void refusesNoSentence(String text) {
    assertThat(text(text)).extracting(Issue::code).containsExactly("L013");
  }

  @ParameterizedTest
  @ValueSource(strings = {"consultant", "quality lead", "co-surgeon"})
  @DisplayName("takes a role")
  void takesRoles(String role) {
    assertThat(role(role)).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "x", "consultant 2", "a@b.example"})
  @DisplayName("refuses what is no role")
  void refusesRoles(String role) {
    assertThat(role(role)).extracting(Issue::code).containsExactly("L012");
  }

  private static List<Issue> reference(String reference) {
    Issues issues = new Issues();
    Wording.reference(reference, issues);
    return issues.list();
  }

  private static List<Issue> text(String text) {
    Issues issues = new Issues();
    Wording.text("because", text, issues);
    return issues.list();
  }

  private static List<Issue> role(String role) {
    Issues issues = new Issues();
    Wording.role(role, issues);
    return issues.list();
  }
}
