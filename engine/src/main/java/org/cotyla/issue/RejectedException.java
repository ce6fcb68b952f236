package org.cotyla.issue;

import java.util.List;
import java.util.stream.Collectors;

/** What was given cannot be used; carries every fault that was found, not only the first. */
public class RejectedException extends RuntimeException {

  private static final long serialVersionUID = 1L;

  private final transient List<Issue> issues;

  public RejectedException(List<Issue> issues) {
    super(issues.stream().map(Issue::plain).collect(Collectors.joining("\n")));
    this.issues = List.copyOf(issues);
  }

  /** Every issue, errors first. */
  public List<Issue> issues() {
    return issues;
  }
}
