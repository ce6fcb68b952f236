package org.cotyla.retrospective;

import java.io.Serializable;
import java.util.List;
import org.cotyla.issue.Issue;
import org.cotyla.issue.Place;
import org.cotyla.issue.RejectedException;
import org.cotyla.issue.Severity;

/**
 * Why a row could not be judged.
 *
 * @param row the row's number as a spreadsheet program shows it
 * @param column the heading of the column at fault; empty when it is the row as a whole
 * @param reason what is wrong, and what was expected
 */
public record SetAside(long row, String column, String reason) implements Serializable {

  /** Every fault of a case, under the headings that are its places. */
  static List<SetAside> of(long row, RejectedException refused) {
    return refused.issues().stream()
        .filter(issue -> issue.severity() == Severity.ERROR)
        .map(issue -> new SetAside(row, column(issue.place()), reason(issue)))
        .toList();
  }

  private static String reason(Issue issue) {
    return issue.message() + issue.help().map(advice -> ": " + advice).orElse("");
  }

  static String column(Place place) {
    return place instanceof Place.Whole column ? column.name() : place.plain();
  }
}
