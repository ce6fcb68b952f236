package org.cotyla.cli.text;

/** A label and the words that belong to it, in two columns. */
final class LabelledLine {

  /** How wide the labels are. */
  static final int LABEL = 22;

  private LabelledLine() {}

  /** Words below each other; a label that is too long has a line of its own. */
  static void write(Page page, int indent, String label, String words) {
    String lead = " ".repeat(indent) + Printable.line(label);
    int room = indent + LABEL;
    if (Wrap.length(lead) > room) {
      page.paragraph(indent, label);
      page.paragraph(room + 2, words);
    } else {
      page.hanging(lead + " ".repeat(room + 2 - Wrap.length(lead)), words);
    }
  }
}
