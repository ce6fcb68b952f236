package org.cotyla.cli.text;

import java.util.List;
import java.util.Locale;

/** Text of a given width that grows line by line; long lines go on under their own start. */
final class Page {

  private final int width;
  private final Style style;
  private final StringBuilder text = new StringBuilder();

  Page(int width, Style style) {
    this.width = width;
    this.style = style;
  }

  /** A heading with an empty line before it, starting with a capital. */
  void heading(String heading) {
    blank();
    String line = Printable.line(heading);
    int first = line.offsetByCodePoints(0, line.isEmpty() ? 0 : 1);
    String capital = line.substring(0, first).toUpperCase(Locale.ROOT);
    lines(capital + line.substring(first), width).forEach(part -> line(style.heading(part)));
  }

  void blank() {
    if (!text.isEmpty()) {
      text.append('\n');
    }
  }

  /** A paragraph that starts so far in. */
  void paragraph(int indent, String words) {
    hanging(" ".repeat(indent), words);
  }

  /** A line with a mark before it. */
  void marked(int indent, Mark mark, String words) {
    marked(indent, mark, "", words);
  }

  /** A line with a mark and a label, such as points, before it; the label is padded by its user. */
  void marked(int indent, Mark mark, String label, String words) {
    String lead = mark.sign() + (label.isEmpty() ? "" : " " + label) + " ";
    String shown = style.marked(mark, lead.stripTrailing()) + " ";
    List<String> lines = lines(words, width - indent - lead.length());
    for (int i = 0; i < lines.size(); i++) {
      line(" ".repeat(indent) + (i == 0 ? shown : " ".repeat(lead.length())) + lines.get(i));
    }
  }

  /** A warning, set off as a whole. */
  void warning(String words) {
    String lead = Mark.WARNING.sign() + " ";
    List<String> lines = lines(words, width - lead.length());
    for (int i = 0; i < lines.size(); i++) {
      line(style.warning((i == 0 ? lead : "  ") + lines.get(i)));
    }
  }

  /** A line with a lead; what does not fit goes on under the end of the lead. */
  void hanging(String lead, String words) {
    List<String> lines = lines(words, width - lead.length());
    for (int i = 0; i < lines.size(); i++) {
      line((i == 0 ? lead : " ".repeat(lead.length())) + lines.get(i));
    }
  }

  int width() {
    return width;
  }

  /** Lines that were laid out already, and made safe to show. */
  void rawLines(List<String> lines) {
    lines.forEach(this::line);
  }

  private List<String> lines(String words, int room) {
    return Wrap.lines(Printable.line(words), room);
  }

  private void line(String line) {
    text.append(line.stripTrailing()).append('\n');
  }

  @Override
  public String toString() {
    return text.toString();
  }
}
