package org.cotyla.cli.text;

/** How marks and headings are set off. Colour only ever repeats what a mark or a word says. */
public enum Style {
  PLAIN,
  COLOURED;

  private static final String RESET = "\u001B[0m";

  String heading(String text) {
    return set("\u001B[1m", text);
  }

  String warning(String text) {
    return set("\u001B[1;31m", text);
  }

  /** The text in the colour that goes with its mark, if that has one. */
  String marked(Mark mark, String text) {
    return mark.colour().isEmpty() ? text : set(mark.colour(), text);
  }

  private String set(String colour, String text) {
    return this == PLAIN || text.isEmpty() ? text : colour + text + RESET;
  }
}
