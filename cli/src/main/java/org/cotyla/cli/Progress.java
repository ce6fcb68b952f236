package org.cotyla.cli;

import java.io.PrintWriter;

/** A line on a terminal that says how far a long run is, and goes away with it. */
final class Progress implements AutoCloseable {

  private static final int BAR = 30;

  private final PrintWriter err;
  private final boolean shown;
  private final String what;
  private int all;
  private boolean written;

  Progress(Terminal terminal, String what) {
    this.err = terminal.err();
    this.shown = terminal.takesColour();
    this.what = what;
  }

  /** How many there are, when that is known. */
  void expect(int count) {
    all = count;
  }

  void done(int count) {
    if (!shown) {
      return;
    }
    int filled = all == 0 ? 0 : Math.min(BAR, BAR * count / all);
    String bar = all == 0 ? "" : "[" + "=".repeat(filled) + " ".repeat(BAR - filled) + "] ";
    err.print("\r" + bar + count + (all == 0 ? "" : " of " + all) + " " + what);
    err.flush();
    written = true;
  }

  /** Takes the line away. */
  @Override
  public void close() {
    if (written) {
      err.print("\r\u001B[K");
      err.flush();
    }
  }
}
