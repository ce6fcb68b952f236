package org.cotyla.workbook;

import java.io.ByteArrayOutputStream;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.zip.CRC32;
import java.util.zip.DataFormatException;
import java.util.zip.Inflater;
import java.util.zip.ZipEntry;
import java.util.zip.ZipException;

/**
 * Unpacks a zip archive from memory into memory, counting as it goes. What the archive says of its
 * own sizes is never believed, and nothing is written to disk.
 */
final class Archive {

  private static final Pattern DRIVE = Pattern.compile("[A-Za-z]:");

  private final byte[] file;
  private final Refusal refusal;
  private long unpacked;

  private Archive(byte[] file, Refusal refusal) {
    this.file = file;
    this.refusal = refusal;
  }

  /**
   * What was in the archive; names are in lower case with forward slashes.
   *
   * @param names of all parts
   * @param xml what may be XML; pictures and the like are counted and let go
   */
  record Unpacked(Set<String> names, Map<String, byte[]> xml) {}

  static Unpacked unpack(byte[] file, Refusal refusal) {
    return new Archive(file, refusal).unpack();
  }

  private Unpacked unpack() {
    Set<String> names = new HashSet<>();
    Map<String, byte[]> xml = new HashMap<>();
    try {
      List<ZipDirectory.Entry> entries = ZipDirectory.entries(file, Limits.PARTS);
      if (entries.size() > Limits.PARTS) {
        throw refusal.because("W010", "the file has more than 2,000 parts, the most that is read");
      }
      for (ZipDirectory.Entry entry : entries) {
        String name = safeName(entry.name());
        if (!names.add(name)) {
          throw refusal.because(
              "W012", "two parts of the file have one name: `" + shown(name) + "`");
        }
        byte[] part = unpack(entry);
        if (Parts.mayBeXml(name, part)) {
          xml.put(name, part);
        }
      }
    } catch (ZipException | DataFormatException damaged) {
      throw refusal.damaged("it cannot be unpacked");
    }
    return new Unpacked(names, xml);
  }

  private byte[] unpack(ZipDirectory.Entry entry) throws DataFormatException {
    if (entry.encrypted()) {
      throw new FileKind(refusal).passwordProtected();
    }
    byte[] part =
        switch (entry.method()) {
          case ZipEntry.STORED -> stored(entry);
          case ZipEntry.DEFLATED -> inflated(entry);
          default ->
              throw refusal.damaged("a part is packed in a way that no spreadsheet program uses");
        };
    CRC32 sum = new CRC32();
    sum.update(part);
    if (sum.getValue() != entry.checkSum()) {
      throw refusal.damaged("a check sum is wrong");
    }
    return part;
  }

  private byte[] stored(ZipDirectory.Entry entry) {
    count(entry.size(), entry.size(), entry);
    return Arrays.copyOfRange(file, entry.start(), entry.start() + entry.size());
  }

  private byte[] inflated(ZipDirectory.Entry entry) throws DataFormatException {
    Inflater inflater = new Inflater(true);
    try {
      inflater.setInput(file, entry.start(), entry.size());
      ByteArrayOutputStream part = new ByteArrayOutputStream();
      byte[] block = new byte[8192];
      while (!inflater.finished()) {
        int read = inflater.inflate(block);
        if (read == 0 && !inflater.finished()) {
          throw new DataFormatException("the part ends too early");
        }
        part.write(block, 0, read);
        count(read, part.size(), entry);
      }
      return part.toByteArray();
    } finally {
      inflater.end();
    }
  }

  private void count(int more, long size, ZipDirectory.Entry entry) {
    unpacked += more;
    if (unpacked > Limits.UNPACKED_BYTES) {
      throw refusal.because("W011", "the file unpacks to more than 256 MiB, the most that is read");
    }
    if (size > Limits.RATIO_FREE_BYTES && size > entry.size() * Limits.RATIO) {
      throw refusal.because(
          "W011",
          "a part of the file unpacks to more than 200 times its packed size",
          "no workbook that people wrote is packed so tightly; do not trust the file");
    }
  }

  private String safeName(String written) {
    String name = written.replace('\\', '/');
    boolean leadsOut =
        name.startsWith("/")
            || DRIVE.matcher(name).lookingAt()
            || List.of(name.split("/")).contains("..");
    if (leadsOut) {
      throw refusal.because(
          "W012",
          "a part of the file has a path that leads out of it: `" + shown(written) + "`",
          "no spreadsheet program writes that; do not trust the file");
    }
    return name.toLowerCase(Locale.ROOT);
  }

  private static String shown(String name) {
    return TidyText.shortened(TidyText.of(name));
  }
}
