package org.cotyla.compare;

import java.util.List;
import java.util.Optional;
import org.cotyla.finding.Case;
import org.cotyla.issue.Issue;

/**
 * A case of a library, or why it could not be read.
 *
 * @param reference what the library calls it
 * @param given the case, when it could be read
 * @param faults why it could not
 */
public record PastCase(String reference, Optional<Case> given, List<Issue> faults) {

  public PastCase {
    faults = List.copyOf(faults);
  }

  public static PastCase of(String reference, Case given) {
    return new PastCase(reference, Optional.of(given), List.of());
  }

  public static PastCase faulty(String reference, List<Issue> faults) {
    return new PastCase(reference, Optional.empty(), faults);
  }
}
