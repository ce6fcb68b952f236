package org.cotyla.finding;

import java.util.List;
import java.util.Optional;
import org.cotyla.issue.Issue;

/**
 * A case read against a protocol: every given field, with what is known of it. Immutable.
 *
 * @param title the case's title
 * @param stage the stage's name
 * @param data every given field in the order of the protocol
 * @param remarks values that are accepted but unusual
 */
public record Findings(String title, String stage, List<Datum> data, List<Issue> remarks) {

  public Findings {
    data = List.copyOf(data);
    remarks = List.copyOf(remarks);
  }

  public Optional<Datum> datum(String field) {
    return data.stream().filter(datum -> datum.field().name().equals(field)).findFirst();
  }
}
