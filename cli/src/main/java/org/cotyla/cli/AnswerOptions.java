package org.cotyla.cli;

import java.util.Locale;
import org.cotyla.cli.text.Style;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** How an answer is written: as text or JSON, how wide, and in which colours. */
final class AnswerOptions {

  private static final int NARROWEST = 40;
  private static final int WIDEST = 1000;

  private int width = 80;

  @Spec(Spec.Target.MIXEE)
  private @Nullable CommandSpec command;

  @Option(
      names = "--format",
      paramLabel = "FORMAT",
      description = "text or json; json is whole, with every row that fired. Usually text.")
  private Format format = Format.TEXT;

  @Option(
      names = {"--color", "--colour"},
      paramLabel = "WHEN",
      description = "auto, always or never. Usually auto: on a terminal, unless NO_COLOR is set.")
  private ColourMode colour = ColourMode.AUTO;

  /** The kinds of answer. */
  enum Format {
    TEXT,
    JSON;

    @Override
    public String toString() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  @Option(
      names = "--width",
      paramLabel = "N",
      description = "The width of the text in characters. Usually 80.")
  private void setWidth(int characters) {
    if (command != null && (characters < NARROWEST || characters > WIDEST)) {
      throw new ParameterException(
          command.commandLine(),
          "--width is a number from " + NARROWEST + " to " + WIDEST + ", not " + characters);
    }
    width = characters;
  }

  boolean asJson() {
    return format == Format.JSON;
  }

  int width() {
    return width;
  }

  Style style(Terminal terminal) {
    return colour.style(terminal.takesColour());
  }
}
