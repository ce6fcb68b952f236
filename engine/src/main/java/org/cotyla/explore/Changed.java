package org.cotyla.explore;

import java.util.List;
import java.util.Map;
import org.cotyla.finding.Datum;
import org.cotyla.finding.Datum.Knowledge;
import org.cotyla.finding.Findings;
import org.cotyla.protocol.Field;
import org.cotyla.value.PossibleValues;
import org.cotyla.value.ValueSet;

/** Findings with some of them replaced. */
final class Changed {

  private Changed() {}

  static Findings with(Findings findings, Field field, ValueSet values) {
    return with(findings, Map.of(field.name(), values));
  }

  /**
   * @param values by the name of the field
   */
  static Findings with(Findings findings, Map<String, ValueSet> values) {
    List<Datum> data =
        findings.data().stream()
            .map(
                datum -> {
                  ValueSet changed = values.get(datum.field().name());
                  return changed == null ? datum : datum(datum.field(), changed);
                })
            .toList();
    return new Findings(findings.title(), findings.stage(), data, List.of());
  }

  private static Datum datum(Field field, ValueSet values) {
    Knowledge knowledge =
        values.single().isPresent()
            ? Knowledge.RECORDED
            : values.equals(field.allowed()) ? Knowledge.MISSING : Knowledge.PARTLY;
    return new Datum(field, knowledge, PossibleValues.of(values));
  }
}
