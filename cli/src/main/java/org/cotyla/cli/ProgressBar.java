package org.cotyla.cli;

import java.io.PrintWriter;

/**
 * Shows on a terminal how far a long piece of work is, and leaves no trace of itself. Shows nothing
 * where nobody looks.
 */
final class ProgressBar implements AutoCloseable {

  private static final int CELLS = 30;

  private final PrintWriter err;
  private final boolean shown;
  private final String what;
  private int lastPercent = -1;

  private ProgressBar(PrintWriter err, boolean shown, String what) {
    this.err = err;
    this.shown = shown;
    this.what = what;
  }

  static ProgressBar on(Terminal terminal, String what) {
    return new ProgressBar(terminal.err(), terminal.takesColour(), what);
  }

  /** May be called from several threads. */
  synchronized void at(int done, int total) {
    int percent = total == 0 ? 100 : (int) (100L * done / total);
    if (shown && percent > lastPercent) {
      lastPercent = percent;
      int full = CELLS * percent / 100;
      err.print(
          "\r" + what + " [" + "#".repeat(full) + ".".repeat(CELLS - full) + "] " + percent + " %");
      err.flush();
    }
  }

  @Override
  public synchronized void close() {
    if (shown && lastPercent >= 0) {
      err.print("\r" + " ".repeat(what.length() + CELLS + 10) + "\r");
      err.flush();
    }
  }
}
