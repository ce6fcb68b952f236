package org.cotyla.cli;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import org.cotyla.finding.Case;
import org.cotyla.json.CaseJson;

/** Reads a case from a file, or from standard input when the file is called {@code -}. */
final class CaseFile {

  private static final Path STANDARD_INPUT = Path.of("-");

  private CaseFile() {}

  static Case read(Path file, InputStream standardInput) {
    if (Files.isDirectory(file)) {
      throw FileProblem.isFolder(file);
    }
    try {
      if (file.equals(STANDARD_INPUT)) {
        return CaseJson.read(standardInput);
      }
      try (InputStream in = Files.newInputStream(file)) {
        return CaseJson.read(in);
      }
    } catch (IOException unreadable) {
      throw FileProblem.reading(file, unreadable);
    }
  }
}
