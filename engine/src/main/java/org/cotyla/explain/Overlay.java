package org.cotyla.explain;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.cotyla.finding.Case;
import org.cotyla.name.Names;

/**
 * A case laid over another: what it states replaces what the other states of the same field.
 *
 * @param result the case that comes of it, at the upper case's stage when that states one
 * @param restated the fields that both state, as the upper case spells them
 */
public record Overlay(Case result, List<String> restated) {

  public Overlay {
    restated = List.copyOf(restated);
  }

  /** The findings of both, in the order of the lower case and then of the upper. */
  public static Overlay of(Case lower, Case upper) {
    Map<String, Case.Finding> findings = new LinkedHashMap<>();
    lower.findings().forEach(finding -> findings.put(Names.key(finding.field()), finding));
    List<String> restated = new ArrayList<>();
    for (Case.Finding finding : upper.findings()) {
      if (findings.put(Names.key(finding.field()), finding) != null) {
        restated.add(finding.field());
      }
    }
    boolean ownStage = upper.stage().isPresent();
    Case result =
        new Case(
            upper.title().isBlank() ? lower.title() : upper.title(),
            ownStage ? upper.stage() : lower.stage(),
            List.copyOf(findings.values()),
            ownStage ? upper.stagePlace() : lower.stagePlace());
    return new Overlay(result, restated);
  }
}
