package org.cotyla.cli;

import org.cotyla.cli.text.Style;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** How text is written: how wide, and in which colours. */
abstract class TextOptions {

  private static final int NARROWEST = 40;
  private static final int WIDEST = 1000;

  private int width = 80;

  @Spec(Spec.Target.MIXEE)
  private @Nullable CommandSpec command;

  @Option(
      names = {"--color", "--colour"},
      paramLabel = "WHEN",
      description = "auto, always or never. Usually auto: on a terminal, unless NO_COLOR is set.")
  private ColourMode colour = ColourMode.AUTO;

  @Option(
      names = "--width",
      paramLabel = "N",
      description = "The width of the text in characters. Usually 80.")
  private void setWidth(int characters) {
    if (characters < NARROWEST || characters > WIDEST) {
      refuse("--width is a number from " + NARROWEST + " to " + WIDEST + ", not " + characters);
    }
    width = characters;
  }

  /** Says that the command line asks for what cannot be. */
  final void refuse(String why) {
    if (command != null) {
      throw new ParameterException(command.commandLine(), why);
    }
  }

  final int width() {
    return width;
  }

  final Style style(Terminal terminal) {
    return colour.style(terminal.takesColour());
  }
}
