package org.cotyla.draft;

import java.util.List;
import java.util.Map;

/**
 * A whole protocol, as text. The headings and keys are those of the workbook format.
 *
 * @param origin what the protocol was read from, for messages
 * @param about the entries of the Protocol sheet by key
 */
public record ProtocolDraft(
    String origin,
    Map<String, Text> about,
    List<Line> fields,
    List<Line> options,
    List<Line> calculations,
    List<Line> sources,
    List<Line> changes,
    List<DecisionDraft> decisions,
    List<Line> reasons,
    List<Line> outcomes) {

  public ProtocolDraft {
    about = Map.copyOf(about);
    fields = List.copyOf(fields);
    options = List.copyOf(options);
    calculations = List.copyOf(calculations);
    sources = List.copyOf(sources);
    changes = List.copyOf(changes);
    decisions = List.copyOf(decisions);
    reasons = List.copyOf(reasons);
    outcomes = List.copyOf(outcomes);
  }

  /** A draft that offers no reasons for departing and no outcomes. */
  public ProtocolDraft(
      String origin,
      Map<String, Text> about,
      List<Line> fields,
      List<Line> options,
      List<Line> calculations,
      List<Line> sources,
      List<Line> changes,
      List<DecisionDraft> decisions) {
    this(
        origin,
        about,
        fields,
        options,
        calculations,
        sources,
        changes,
        decisions,
        List.of(),
        List.of());
  }
}
