package org.cotyla.workbook;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.zip.ZipException;

/**
 * Reads the directory at the end of a zip archive that is in memory.
 *
 * <p>Why not a library: the JDK reads a directory only from a file, and its stream, which goes by
 * the parts' own headers, refuses archives that large-workbook writers make and accepts ones that
 * are cut short; the library that does neither takes 70 ms of a cold start for it.
 */
final class ZipDirectory {

  private static final int END = 0x06054b50;
  private static final int END_SIZE = 22;
  private static final int LOCATOR_64 = 0x07064b50;
  private static final int LOCATOR_64_SIZE = 20;
  private static final int END_64 = 0x06064b50;
  private static final int ENTRY = 0x02014b50;
  private static final int ENTRY_SIZE = 46;
  private static final int PART = 0x04034b50;
  private static final int PART_SIZE = 30;
  private static final int LONGEST_COMMENT = 0xFFFF;

  /** What stands in a field of two or four bytes when the true number is in the 64-bit part. */
  private static final int MORE_16 = 0xFFFF;

  private static final long MORE_32 = 0xFFFF_FFFFL;
  private static final int EXTRA_64 = 1;

  /**
   * A part of the archive.
   *
   * @param encrypted whether it is locked with a password
   * @param method how it is packed
   * @param checkSum of what it unpacks to
   * @param start where the packed bytes start
   * @param size how many packed bytes there are; they lie inside the file
   */
  record Entry(String name, boolean encrypted, int method, long checkSum, int start, int size) {}

  private final ByteBuffer file;

  private ZipDirectory(byte[] file) {
    this.file = ByteBuffer.wrap(file).order(ByteOrder.LITTLE_ENDIAN);
  }

  /** At most one entry more than the limit, so that a huge directory costs nothing. */
  static List<Entry> entries(byte[] file, int limit) throws ZipException {
    try {
      return new ZipDirectory(file).entries(limit);
    } catch (IndexOutOfBoundsException | ArithmeticException beyondEnd) {
      throw new ZipException("a number leads out of the file");
    }
  }

  private List<Entry> entries(int limit) throws ZipException {
    int end = end();
    long count = file.getShort(end + 10) & MORE_16;
    long at = file.getInt(end + 16) & MORE_32;
    if (count == MORE_16 || at == MORE_32) {
      require(LOCATOR_64, end - LOCATOR_64_SIZE);
      int end64 = Math.toIntExact(file.getLong(end - LOCATOR_64_SIZE + 8));
      require(END_64, end64);
      count = file.getLong(end64 + 32);
      at = file.getLong(end64 + 48);
    }
    List<Entry> entries = new ArrayList<>();
    int next = Math.toIntExact(at);
    for (long i = 0; i < count && entries.size() <= limit; i++) {
      require(ENTRY, next);
      entries.add(entry(next));
      next += ENTRY_SIZE + unsigned(next + 28) + unsigned(next + 30) + unsigned(next + 32);
    }
    return entries;
  }

  private int end() throws ZipException {
    int last = file.limit() - END_SIZE;
    for (int at = last; at >= 0 && at >= last - LONGEST_COMMENT; at--) {
      if (file.getInt(at) == END) {
        return at;
      }
    }
    throw new ZipException("the directory is missing");
  }

  private Entry entry(int at) throws ZipException {
    int nameLength = unsigned(at + 28);
    long unpacked = file.getInt(at + 24) & MORE_32;
    long size = file.getInt(at + 20) & MORE_32;
    long part = file.getInt(at + 42) & MORE_32;
    if (size == MORE_32 || part == MORE_32) {
      int large = extra64(at + ENTRY_SIZE + nameLength, unsigned(at + 30));
      // Only those that did not fit stand there, in this order.
      large += unpacked == MORE_32 ? 8 : 0;
      if (size == MORE_32) {
        size = file.getLong(large);
        large += 8;
      }
      part = part == MORE_32 ? file.getLong(large) : part;
    }
    int header = Math.toIntExact(part);
    require(PART, header);
    int start = header + PART_SIZE + unsigned(header + 26) + unsigned(header + 28);
    if (size < 0 || start + size > file.limit()) {
      throw new ZipException("a part leads out of the file");
    }
    byte[] name = new byte[nameLength];
    file.get(at + ENTRY_SIZE, name);
    return new Entry(
        new String(name, StandardCharsets.UTF_8),
        (unsigned(at + 8) & 1) != 0,
        unsigned(at + 10),
        file.getInt(at + 16) & MORE_32,
        start,
        (int) size);
  }

  private int extra64(int from, int length) throws ZipException {
    int at = from;
    while (at + 4 <= from + length) {
      if (unsigned(at) == EXTRA_64) {
        return at + 4;
      }
      at += 4 + unsigned(at + 2);
    }
    throw new ZipException("a size is missing");
  }

  private int unsigned(int at) {
    return file.getShort(at) & MORE_16;
  }

  private void require(int signature, int at) throws ZipException {
    if (file.getInt(at) != signature) {
      throw new ZipException("a header is damaged");
    }
  }
}
