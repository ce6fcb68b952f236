package org.cotyla.evaluate;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.cotyla.compile.SampleDraft;
import org.cotyla.finding.Case;

/** One decision over a width and a grade, with the rows that a test gives it. */
final class SmallProtocol {

  private final SampleDraft draft = new SampleDraft();
  private int rows;

  private SmallProtocol() {}

  /**
   * The decision gives a class (A before B before C) by the policy; rows are width, grade, class.
   */
  static SmallProtocol classes(String policy, String... rows) {
    SmallProtocol small = new SmallProtocol();
    small.draft.noRows(0).noRows(1).noRows(2).head(0, 1, policy);
    // The other two sheets are there, and say nothing that a test asks for.
    small.draft.row(1, "L-0", "-", "1").row(2, "V-0", "-", "-", "rest", "favour", "1");
    if (policy.matches("[ROC]")) {
      small.draft.when(1, 0, "grade").when(2, 0, "grade");
    }
    small.add(0, "K-", rows);
    return small;
  }

  /** The decision gives a number by the policy; rows are width, number. */
  static SmallProtocol numbers(String policy, String... rows) {
    SmallProtocol small = classes("F", "-|-|A");
    small.draft.noRows(1).when(1, 0, "width").head(1, 1, policy);
    small.rows = 0;
    small.add(1, "L-", rows);
    return small;
  }

  /** The rows vote for rest and brace; rows are width, firm, option, effect, points. */
  static SmallProtocol votes(String policy, String... rows) {
    SmallProtocol small = classes("F", "-|-|A");
    small.draft.noRows(2).when(2, 0, "width").head(2, 1, policy);
    small.rows = 0;
    small.add(2, "V-", rows);
    return small;
  }

  private void add(int decision, String prefix, String... cells) {
    for (String row : cells) {
      String id = row.startsWith("default|") ? "" : prefix + ++rows + "|";
      draft.row(decision, (id + row).split("\\|"));
    }
  }

  SmallProtocol option(String name) {
    draft.add("Options", "plan", name, "M", "-", "-", "S");
    return this;
  }

  SmallProtocol field(String name, String allowed) {
    draft.add("Fields", name, "given", "number", "mm", allowed, "-", "-", "-", "M", "S");
    return this;
  }

  Recommendation on(Map<String, ?> findings) {
    return Engine.of(draft.protocol()).evaluate(Case.of(findings).atStage("theatre"));
  }

  DecisionResult decision(String name, Map<String, ?> findings) {
    return on(findings).decision(name).orElseThrow();
  }

  /** Checks a class: its value, then each row that fired with its standing. */
  void assertClass(Map<String, ?> findings, String value, String... rows) {
    DecisionResult result = decision("Class", findings);
    assertThat(result.outputs().get("class").plain()).isEqualTo(value);
    assertThat(standings(result)).containsExactly(rows);
  }

  void assertNumber(Map<String, ?> findings, String value) {
    assertThat(decision("Load", findings).outputs().get("load").plain()).isEqualTo(value);
  }

  static List<String> standings(DecisionResult result) {
    return result.firings().stream()
        .map(firing -> firing.row().id() + " " + firing.standing().word())
        .toList();
  }
}
