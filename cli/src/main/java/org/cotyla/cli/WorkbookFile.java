package org.cotyla.cli;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;

/** Reads the bytes of a workbook, at most one more than any workbook may have. */
final class WorkbookFile {

  private static final int MOST_BYTES = 16 << 20;

  private WorkbookFile() {}

  static byte[] read(Path file) {
    if (Files.isDirectory(file)) {
      throw FileProblem.isFolder(file);
    }
    try (InputStream in = Files.newInputStream(file)) {
      return in.readNBytes(MOST_BYTES + 1);
    } catch (IOException unreadable) {
      throw FileProblem.reading(file, unreadable);
    }
  }
}
