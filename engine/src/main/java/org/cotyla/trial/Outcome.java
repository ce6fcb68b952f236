package org.cotyla.trial;

import java.util.List;
import org.cotyla.issue.Issue;

/** What became of a case that was tried. */
public sealed interface Outcome {

  /** The answer is as it should be. */
  record Passed() implements Outcome {}

  /** The answer differs from what it should be. */
  record Failed(List<Difference> differences) implements Outcome {
    public Failed {
      differences = List.copyOf(differences);
    }
  }

  /** The case or its expectation cannot be read, or does not fit the protocol. */
  record Refused(List<Issue> issues) implements Outcome {
    public Refused {
      issues = List.copyOf(issues);
    }
  }
}
