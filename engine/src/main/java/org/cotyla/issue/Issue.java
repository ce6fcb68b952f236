package org.cotyla.issue;

import java.util.Optional;

/**
 * One fault or remark.
 *
 * @param code stable code: W for a workbook, C for a case, P for what a protocol says of itself
 * @param severity its consequence
 * @param place where it is
 * @param message one line, lower-case start, no final period, the author's own text in backticks
 * @param help what to do about it, when there is advice to give
 */
public record Issue(
    String code, Severity severity, Place place, String message, Optional<String> help) {

  /** The issue as it is printed, on one line or two. */
  public String plain() {
    String line = severity.word() + " " + code + " " + place.plain() + ": " + message;
    return help.map(advice -> line + "\n      help: " + advice).orElse(line);
  }

  @Override
  public String toString() {
    return plain();
  }
}
