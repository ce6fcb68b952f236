package org.cotyla.expression;

import java.util.Optional;

/** A cell that cannot be read as a test or a formula. */
public final class ExpressionException extends Exception {

  private static final long serialVersionUID = 1L;

  private final transient Optional<String> help;

  ExpressionException(String message, String help) {
    super(message);
    this.help = Optional.of(help);
  }

  ExpressionException(String message) {
    this(message, Optional.empty());
  }

  ExpressionException(String message, Optional<String> help) {
    super(message);
    this.help = help;
  }

  /** One line: what is wrong, the author's own text in backticks. */
  public String line() {
    return String.valueOf(getMessage());
  }

  /** Advice, when there is some. */
  public Optional<String> help() {
    return help;
  }
}
