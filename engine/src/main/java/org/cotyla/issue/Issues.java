package org.cotyla.issue;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Collects issues in the order of finding, so that one run reports every fault. Not thread-safe.
 */
public final class Issues {

  private final Set<Issue> found = new LinkedHashSet<>();

  public void error(String code, Place place, String message) {
    add(code, Severity.ERROR, place, message, Optional.empty());
  }

  public void error(String code, Place place, String message, String help) {
    add(code, Severity.ERROR, place, message, Optional.of(help));
  }

  public void error(String code, Place place, String message, Optional<String> help) {
    add(code, Severity.ERROR, place, message, help);
  }

  public void warning(String code, Place place, String message, String help) {
    add(code, Severity.WARNING, place, message, Optional.of(help));
  }

  public void note(String code, Place place, String message) {
    add(code, Severity.NOTE, place, message, Optional.empty());
  }

  private void add(
      String code, Severity severity, Place place, String message, Optional<String> help) {
    found.add(new Issue(code, severity, place, message, help));
  }

  public void addAll(List<Issue> issues) {
    found.addAll(issues);
  }

  public boolean hasErrors() {
    return found.stream().anyMatch(issue -> issue.severity() == Severity.ERROR);
  }

  /** All issues, errors first, each group in the order of finding. */
  public List<Issue> list() {
    List<Issue> sorted = new ArrayList<>(found);
    sorted.sort(Comparator.comparing(Issue::severity));
    return List.copyOf(sorted);
  }
}
