package org.cotyla.retrospective;

import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import org.cotyla.finding.Case;

/**
 * A past case and what was done.
 *
 * @param row the row's number
 * @param reference a local reference that says nothing outside its house, or the row's number
 * @param role the role of who decided
 * @param done the chosen option of each ranking that something was written under
 * @param reason why it departs, a word of the protocol's list
 */
record PastCase(
    long row,
    String reference,
    Optional<LocalDate> day,
    String role,
    Case given,
    Map<String, String> done,
    Optional<String> reason) {

  /** What is written when something was done that is none of the ranking's options. */
  static final String NOT_LISTED = "not listed";
}
