package org.cotyla.cli.report;

import java.util.List;

/**
 * Entries in two columns of about equal height, read down the first and then the second. Cut here
 * and not by the style sheet, since the PDF library fills columns unevenly.
 */
final class TwoColumns {

  /** About how many letters a line of a column takes. */
  private static final int LINE = 56;

  /** A heading takes more room than a line. */
  private static final double HEADING = 1.6;

  /**
   * Entries under one heading.
   *
   * @param heading the element of the heading, such as h3
   * @param label what the heading says; empty for none
   * @param element the element that holds the entries
   * @param kind its class; empty for none
   */
  record Block(String heading, String label, String element, String kind, List<Entry> entries) {
    Block {
      entries = List.copyOf(entries);
    }

    private double height(int from, int to) {
      double lines = entries.subList(from, to).stream().mapToDouble(Entry::height).sum();
      return lines + (from == 0 && to > 0 && !label.isEmpty() ? HEADING : 0);
    }
  }

  /**
   * One entry.
   *
   * @param letters about how many letters it has
   * @param write writes it with its element
   */
  record Entry(int letters, Runnable write) {
    private double height() {
      return Math.max(1, Math.ceil(letters / (double) LINE)) + 0.15;
    }
  }

  private final Markup markup;
  private final List<Block> blocks;

  TwoColumns(Markup markup, List<Block> blocks) {
    this.markup = markup;
    this.blocks = List.copyOf(blocks);
  }

  /** One below the other where the room is for one column only. */
  void writeAsOne() {
    side(0, count());
  }

  void write() {
    int count = count();
    if (count < 2) {
      writeAsOne();
      return;
    }
    int cut = cut(count);
    markup.start("div", "class", "two");
    markup.start("div", "class", "side");
    side(0, cut);
    markup.end();
    markup.start("div", "class", "side");
    side(cut, count);
    markup.end().end();
  }

  private int count() {
    return blocks.stream().mapToInt(block -> block.entries().size()).sum();
  }

  /** The cut whose higher column is the lowest; of equals the last, so that the first is fuller. */
  private int cut(int count) {
    int best = 1;
    for (int cut = 2; cut < count; cut++) {
      if (higher(cut, count) <= higher(best, count)) {
        best = cut;
      }
    }
    return best;
  }

  private double higher(int cut, int count) {
    return Math.max(height(0, cut), height(cut, count));
  }

  private double height(int from, int to) {
    double height = 0;
    int first = 0;
    for (Block block : blocks) {
      int size = block.entries().size();
      int start = Math.min(size, Math.max(0, from - first));
      int end = Math.min(size, Math.max(start, to - first));
      height += block.height(start, end);
      first += size;
    }
    return height;
  }

  private void side(int from, int to) {
    int first = 0;
    for (Block block : blocks) {
      int size = block.entries().size();
      int start = Math.min(size, Math.max(0, from - first));
      int end = Math.min(size, Math.max(start, to - first));
      if (end > start) {
        part(block, block.entries().subList(start, end), start == 0);
      }
      first += size;
    }
  }

  private void part(Block block, List<Entry> entries, boolean withHeading) {
    markup.start("div", "class", "list");
    if (withHeading && !block.label().isEmpty()) {
      markup.leaf(block.heading(), block.label());
    }
    markup.start(block.element());
    if (!block.kind().isEmpty()) {
      markup.attribute("class", block.kind());
    }
    entries.forEach(entry -> entry.write().run());
    markup.end().end();
  }
}
