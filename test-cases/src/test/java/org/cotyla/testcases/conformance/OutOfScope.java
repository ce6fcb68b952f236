package org.cotyla.testcases.conformance;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/** Why a piece of FEEL lies beyond the engine, which reads S-FEEL over four types of value. */
final class OutOfScope {

  static final String TIMES = "times, and dates with a time";
  static final String DURATIONS = "durations";

  /** A kind of formula that is not read, by what it looks like. */
  private record Reason(Pattern pattern, String words) {
    Reason(String pattern, String words) {
      this(Pattern.compile(pattern), words);
    }
  }

  /** The first that fits is given. */
  private static final List<Reason> REASONS =
      List.of(
          new Reason("\\btime ?\\(|@\"[^\"]*\\d\\d:\\d\\d|date and time", TIMES),
          new Reason("\\bduration\\(|@\"-?P|@\"[^\"]*\" - @\"", DURATIONS),
          new Reason("\\bfunction ?\\(|\\bfn\\(", "functions written in a formula"),
          new Reason("\\{|\\bcontext ?\\(", "contexts written in a formula"),
          new Reason("\\bdecisionService", "decision services called in a formula"),
          new Reason("\\bsubstring", "functions that are not offered (substring)"),
          new Reason("\\bdate ?\\((?!\\s*\")", "dates made from parts or from other values"),
          new Reason("^\\(\\s*[<>=!]|^-?[\\[(][^,]*\\.\\.", "ranges as values"),
          new Reason("\\[", "lists as values"),
          new Reason("^@\"foo\"$", "an @ literal that is no date, which is refused"));

  /** Results that differ from the expected ones without anything being refused. */
  private static final Map<String, String> DIFFERENCES =
      Map.of(
          "boolean_001_a",
          "a list of several types: null, not false (no match either way)",
          "decisionService_001/decision_ds_001",
          "the result type of a decision service");

  private OutOfScope() {}

  /** Why the engine does not read the formula, when that is meant. */
  static Optional<String> of(String formula) {
    return REASONS.stream()
        .filter(reason -> reason.pattern().matcher(formula).find())
        .map(Reason::words)
        .findFirst();
  }

  /** Why a result that was worked out may differ from the expected one, when that is meant. */
  static Optional<String> difference(String result) {
    return Optional.ofNullable(DIFFERENCES.get(result));
  }

  /** Why values of a type of XML Schema are not had. */
  static String type(String schemaType) {
    return schemaType.equals("duration") ? DURATIONS : TIMES;
  }
}
