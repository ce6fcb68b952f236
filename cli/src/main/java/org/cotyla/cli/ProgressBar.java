package org.cotyla.cli;

import java.io.PrintWriter;

/**
 * Shows on a terminal how far a long piece of work is, and leaves no trace of itself. May be told
 * from several threads.
 *
 * <p>It is shown only where standard error is known to be a terminal, so that it never gets into a
 * file. {@code System.console()} cannot tell: up to Java 21 it speaks of standard input and output,
 * so it would write into {@code 2> file}, and show nothing beside {@code > file}; and Java has no
 * other way to ask. So the shell that starts the program asks ({@code test -t 2}) and passes the
 * answer on as the property {@code cotyla.err}. Without that answer nothing is shown.
 */
final class ProgressBar implements AutoCloseable {

  private static final int CELLS = 30;
  private static final int COUNTED = 10;

  private final PrintWriter err;
  private final boolean shown;
  private final String what;
  private int furthest = -1;
  private String line = "";

  private ProgressBar(PrintWriter err, boolean shown, String what) {
    this.err = err;
    this.shown = shown;
    this.what = what;
  }

  static ProgressBar on(Terminal terminal, String what) {
    return new ProgressBar(terminal.err(), terminal.showsProgress(), what);
  }

  /** How many of how many are done. */
  synchronized void at(int done, int total) {
    int percent = total == 0 ? 100 : (int) (100L * done / total);
    int full = CELLS * percent / 100;
    show(percent, " [" + "#".repeat(full) + ".".repeat(CELLS - full) + "] " + percent + " %");
  }

  /** How many are done, where nobody knows of how many. */
  synchronized void at(int done) {
    int tens = done - done % COUNTED;
    show(tens, " " + tens);
  }

  /** Threads may come late with less than what was shown. */
  private void show(int far, String progress) {
    if (shown && far > furthest) {
      furthest = far;
      line = what + progress;
      err.print("\r" + line);
      err.flush();
    }
  }

  @Override
  public synchronized void close() {
    if (!line.isEmpty()) {
      err.print("\r" + " ".repeat(line.length()) + "\r");
      err.flush();
    }
  }
}
