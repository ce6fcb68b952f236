package org.cotyla.library;

import java.io.FilterReader;
import java.io.IOException;
import java.io.Reader;

/** Refuses a record that goes on and on, as after a quotation mark that is never closed. */
final class BoundedReader extends FilterReader {

  private static final int MOST = 1 << 20;

  private int sinceRecord;

  BoundedReader(Reader in) {
    super(in);
  }

  /** A record has ended. */
  void recordRead() {
    sinceRecord = 0;
  }

  @Override
  public int read() throws IOException {
    int character = super.read();
    count(character < 0 ? 0 : 1);
    return character;
  }

  @Override
  public int read(char[] buffer, int offset, int length) throws IOException {
    int read = super.read(buffer, offset, length);
    count(Math.max(0, read));
    return read;
  }

  private void count(int characters) throws IOException {
    sinceRecord += characters;
    if (sinceRecord > MOST) {
      throw new IOException(
          "a row has more than a million characters; a quotation mark may not be closed");
    }
  }
}
