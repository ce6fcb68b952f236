package org.cotyla.finding;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.cotyla.issue.Place;
import org.cotyla.protocol.TestCase;

/**
 * A case as it was given, not yet read against a protocol. A field that is not stated is missing:
 * nothing is assumed of it.
 *
 * @param title a title without anything that identifies a patient; may be empty
 * @param stage the stage of the case; the protocol's first when absent
 * @param findings what it states, in the order given
 * @param stagePlace where faults of its stage are said to be
 */
public record Case(String title, Optional<String> stage, List<Finding> findings, Place stagePlace) {

  /**
   * One statement.
   *
   * @param field a field by its name as given
   * @param given what the case says of it
   * @param place where faults of it are said to be
   */
  public record Finding(String field, Given given, Place place) {

    /** A statement that is found by its field's name. */
    public Finding(String field, Given given) {
      this(field, given, new Place.InCase(field));
    }
  }

  public Case {
    findings = List.copyOf(findings);
  }

  /** A case whose stage has no place of its own. */
  public Case(String title, Optional<String> stage, List<Finding> findings) {
    this(title, stage, findings, new Place.InCase(""));
  }

  /** A case as it stands in a protocol's own workbook; its cells are read when the case is. */
  public static Case of(TestCase written) {
    List<Finding> findings = new ArrayList<>();
    for (TestCase.Stated stated : written.given()) {
      findings.add(
          new Finding(
              stated.field().name(),
              new Given.Written(stated.text(), Optional.empty()),
              stated.at()));
    }
    return new Case(written.name(), written.stage(), findings, written.stageAt());
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

  /** The same, with faults said to be in that file. */
  public Case in(String file) {
    List<Finding> placed = new ArrayList<>();
    for (Finding finding : findings) {
      Place place = new Place.InFile(file, finding.place());
      placed.add(new Finding(finding.field(), finding.given(), place));
    }
    return new Case(title, stage, placed, new Place.InFile(file, stagePlace));
  }

  public Case titled(String newTitle) {
    return new Case(newTitle, stage, findings, stagePlace);
  }

  public Case atStage(String newStage) {
    return new Case(title, Optional.of(newStage), findings, stagePlace);
  }
}
