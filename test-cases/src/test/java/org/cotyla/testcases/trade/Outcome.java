package org.cotyla.testcases.trade;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.cotyla.evaluate.RankedOption;
import org.cotyla.testcases.house.Answer;
import org.cotyla.testcases.house.OrdinaryCase;

/**
 * A case and the part of its answer that rules of thumb speak of; the whole answer of thousands of
 * cases would not fit into memory.
 *
 * @param findings the case
 * @param construct the leading construct
 * @param bearing the leading bearing
 * @param ruledOut the constructs that are ruled out
 * @param rows the rows that count, by their ids
 * @param values what the named decisions came to
 */
record Outcome(
    OrdinaryCase findings,
    String construct,
    String bearing,
    Set<String> ruledOut,
    Set<String> rows,
    Map<String, String> values) {

  private static final List<String> NAMED =
      List.of(
          "defect class",
          "rim support",
          "discontinuity",
          "discontinuity type",
          "bone biology",
          "working host contact",
          "working abductors",
          "infection status",
          "cup over reamer",
          "exposure",
          "plan b",
          "plan c");

  static Outcome of(OrdinaryCase findings) {
    Answer answer = findings.answer();
    return new Outcome(
        findings,
        answer.construct(),
        answer.bearing(),
        answer.result("construct").ruledOut().stream()
            .map(RankedOption::name)
            .collect(Collectors.toUnmodifiableSet()),
        Set.copyOf(answer.rows()),
        NAMED.stream().collect(Collectors.toUnmodifiableMap(name -> name, answer::value)));
  }

  boolean isClass(String... classes) {
    return Stream.of(classes).anyMatch(values.get("defect class")::equals);
  }

  boolean is(String decision, String value) {
    return values.get(decision).equals(value);
  }

  boolean states(String field, Object value) {
    return value.equals(findings.get(field));
  }

  boolean isLedBy(String... constructs) {
    return Stream.of(constructs).anyMatch(construct::equals);
  }

  /** A plain hemisphere, of ordinary or extra-large size. */
  boolean isLedByHemisphere() {
    return isLedBy("hemispherical cup", "extra-large cup");
  }

  double contact() {
    return Double.parseDouble(values.get("working host contact"));
  }

  /** What a failed check needs to show of it. */
  @Override
  public String toString() {
    return values.get("defect class")
        + " led by "
        + construct
        + " and "
        + bearing
        + ": "
        + findings;
  }
}
