package org.cotyla.finding;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A case as it was given, not yet read against a protocol. A field that is not stated is missing:
 * nothing is assumed of it.
 *
 * @param title a title without anything that identifies a patient; may be empty
 * @param stage the stage of the case; the protocol's first when absent
 * @param findings what it states, in the order given
 */
public record Case(String title, Optional<String> stage, List<Finding> findings) {

  /** One statement: a field by its name as given, and what the case says of it. */
  public record Finding(String field, Given given) {}

  public Case {
    findings = List.copyOf(findings);
  }

  /**
   * A case from plain Java values: numbers, texts, booleans, dates, or {@link Given}.
   *
   * @throws IllegalArgumentException when a value is none of these
   */
  public static Case of(Map<String, ?> findings) {
    List<Finding> list = new ArrayList<>();
    findings.forEach((field, value) -> list.add(new Finding(field, Given.ofPlain(value))));
    return new Case("", Optional.empty(), list);
  }

  public Case titled(String newTitle) {
    return new Case(newTitle, stage, findings);
  }

  public Case atStage(String newStage) {
    return new Case(title, Optional.of(newStage), findings);
  }
}
