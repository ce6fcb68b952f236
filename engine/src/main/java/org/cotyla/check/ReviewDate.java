package org.cotyla.check;

import java.time.LocalDate;
import org.cotyla.protocol.About;

/** Whether the protocol is past the day on which it was to be reviewed. */
final class ReviewDate {

  private final About about;
  private final Remarks remarks;

  ReviewDate(About about, Remarks remarks) {
    this.about = about;
    this.remarks = remarks;
  }

  void check(LocalDate today) {
    about
        .reviewDue()
        .filter(due -> due.isBefore(today))
        .ifPresent(
            due ->
                remarks.warning(
                    "K171",
                    about.reviewDueAt().orElseThrow(),
                    "review due",
                    "the protocol was due for review on " + due,
                    "review it, and set the next date"));
  }
}
