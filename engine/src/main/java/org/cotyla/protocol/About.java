package org.cotyla.protocol;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.cotyla.issue.CellRef;

/**
 * What a protocol says of itself.
 *
 * @param identifier short stable name
 * @param title what people read
 * @param version its version
 * @param status where it is in its life
 * @param effectiveFrom the first day it is in force, when set
 * @param reviewDue the day by which it must be reviewed, when set
 * @param reviewDueAt the cell of that day
 * @param owner the role that keeps it
 * @param approvedBy the roles that approved it; empty when none has
 * @param caution the sentence that stands on every output
 * @param stages the stages of a case in order; the first is the usual one
 */
public record About(
    String identifier,
    String title,
    String version,
    Status status,
    Optional<LocalDate> effectiveFrom,
    Optional<LocalDate> reviewDue,
    Optional<CellRef> reviewDueAt,
    String owner,
    String approvedBy,
    String caution,
    List<String> stages) {

  public About {
    stages = List.copyOf(stages);
  }
}
