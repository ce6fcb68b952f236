package org.cotyla.draft;

import java.util.List;

/**
 * One decision sheet, as text.
 *
 * @param name the decision's name
 * @param hitPolicy the hit policy's letter
 * @param asks the question it answers
 * @param ranks the ranking it votes in; blank when it does not vote
 * @param shownAs where its result is shown; blank for the usual
 * @param when the names of the inputs
 * @param then the names of the outputs
 * @param rows the rows in order, the default row among them
 */
public record DecisionDraft(
    Text name,
    Text hitPolicy,
    Text asks,
    Text ranks,
    Text shownAs,
    List<Text> when,
    List<Text> then,
    List<RowDraft> rows) {

  public DecisionDraft {
    when = List.copyOf(when);
    then = List.copyOf(then);
    rows = List.copyOf(rows);
  }
}
