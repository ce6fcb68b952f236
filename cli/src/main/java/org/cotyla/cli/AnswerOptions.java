package org.cotyla.cli;

import java.util.Locale;
import picocli.CommandLine.Option;

/** How an answer is written: as text or JSON, how wide, and in which colours. */
final class AnswerOptions extends TextOptions {

  @Option(
      names = "--format",
      paramLabel = "FORMAT",
      description = "text or json; json is whole, with every row that fired. Usually text.")
  private Format format = Format.TEXT;

  /** The kinds of answer. */
  enum Format {
    TEXT,
    JSON;

    @Override
    public String toString() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  boolean asJson() {
    return format == Format.JSON;
  }
}
