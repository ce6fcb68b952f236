package org.cotyla.retrospective;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/** The lines of a text, each up to a length, with a count of the bytes that were taken in. */
final class TextLines implements AutoCloseable {

  static final int LONGEST = 1 << 20;

  private final Counted counted;
  private final Reader reader;
  private int pushedBack = -1;

  /** A line, and whether it was longer than is kept. */
  record Line(String text, boolean tooLong) {}

  TextLines(InputStream in) {
    this.counted = new Counted(in);
    this.reader = new BufferedReader(new InputStreamReader(counted, StandardCharsets.UTF_8));
  }

  long bytes() {
    return counted.bytes;
  }

  /** The next line without its end; nothing at the end of the text. */
  Optional<Line> next() throws IOException {
    int c = read();
    if (c < 0) {
      return Optional.empty();
    }
    StringBuilder text = new StringBuilder(256);
    boolean tooLong = false;
    while (c >= 0 && c != '\n' && c != '\r') {
      if (text.length() < LONGEST) {
        text.append((char) c);
      } else {
        tooLong = true;
      }
      c = read();
    }
    if (c == '\r') {
      int after = read();
      pushedBack = after == '\n' ? -1 : after;
    }
    return Optional.of(new Line(text.toString(), tooLong));
  }

  private int read() throws IOException {
    if (pushedBack >= 0) {
      int c = pushedBack;
      pushedBack = -1;
      return c;
    }
    return reader.read();
  }

  @Override
  public void close() throws IOException {
    reader.close();
  }

  /** Counts what is taken from a stream. */
  private static final class Counted extends java.io.FilterInputStream {
    private long bytes;

    Counted(InputStream in) {
      super(in);
    }

    @Override
    public int read(byte[] into, int from, int length) throws IOException {
      int got = super.read(into, from, length);
      bytes += Math.max(got, 0);
      return got;
    }
  }
}
