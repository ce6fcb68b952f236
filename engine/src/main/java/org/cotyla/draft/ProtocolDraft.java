package org.cotyla.draft;

import java.util.List;
import java.util.Map;

/**
 * A whole protocol, as text. The headings and keys are those of the workbook format.
 *
 * @param origin what the protocol was read from, for messages
 * @param about the entries of the Protocol sheet by key
 * @param checks the sheets by which its author checks it
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
    List<Line> pictures,
    ChecksDraft checks,
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
    pictures = List.copyOf(pictures);
    reasons = List.copyOf(reasons);
    outcomes = List.copyOf(outcomes);
  }

  /** A draft of nothing but what answers cases. */
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
        ChecksDraft.none(),
        List.of(),
        List.of());
  }
}
