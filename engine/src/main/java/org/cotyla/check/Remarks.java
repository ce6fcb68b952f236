package org.cotyla.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.cotyla.evaluate.Recommendation;
import org.cotyla.issue.Issue;
import org.cotyla.issue.Place;
import org.cotyla.issue.Severity;

/** Collects remarks. Not thread-safe. */
final class Remarks {

  private final List<Remark> found = new ArrayList<>();

  void error(
      String code, Place at, String about, String message, Optional<String> help, Example example) {
    add(code, Severity.ERROR, at, about, message, help, example);
  }

  void warning(
      String code, Place at, String about, String message, Optional<String> help, Example example) {
    add(code, Severity.WARNING, at, about, message, help, example);
  }

  void warning(String code, Place at, String about, String message, String help) {
    warning(code, at, about, message, Optional.of(help), Example.none());
  }

  void note(String code, Place at, String about, String message) {
    add(code, Severity.NOTE, at, about, message, Optional.empty(), Example.none());
  }

  void note(String code, Place at, String about, String message, String help) {
    add(code, Severity.NOTE, at, about, message, Optional.of(help), Example.none());
  }

  private void add(
      String code,
      Severity severity,
      Place at,
      String about,
      String message,
      Optional<String> help,
      Example example) {
    found.add(new Remark(new Issue(code, severity, at, message, help), about, example.answer()));
  }

  void addAll(List<Remark> remarks) {
    found.addAll(remarks);
  }

  List<Remark> list() {
    return List.copyOf(found);
  }

  /** A case that shows what is remarked on. */
  record Example(Optional<Recommendation> answer) {
    static Example none() {
      return new Example(Optional.empty());
    }

    static Example of(Recommendation answer) {
      return new Example(Optional.of(answer));
    }
  }
}
