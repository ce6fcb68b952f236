package org.cotyla.protocol;

import java.util.List;

/**
 * What stands beside a protocol so that an edit of it can be trusted. It changes no answer.
 *
 * @param safeguards in the order of the workbook
 * @param accepted warnings that are accepted, in the order of the workbook
 * @param cases in the order of the workbook
 */
public record Checks(List<Safeguard> safeguards, List<Acceptance> accepted, List<TestCase> cases) {

  public Checks {
    safeguards = List.copyOf(safeguards);
    accepted = List.copyOf(accepted);
    cases = List.copyOf(cases);
  }

  public static Checks none() {
    return new Checks(List.of(), List.of(), List.of());
  }
}
