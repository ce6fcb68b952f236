package org.cotyla.cli;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.cotyla.caseform.CaseForm;
import org.cotyla.finding.Case;
import org.cotyla.json.CaseJson;
import org.cotyla.json.RecordedPlan;

/**
 * Reads a case from a file, or from standard input when the file is called {@code -}. A form that
 * was filled in is told from JSON by its content, whatever the file is called.
 */
final class CaseFile {

  private static final Path STANDARD_INPUT = Path.of("-");

  private CaseFile() {}

  static Case read(Path file, InputStream standardInput) {
    byte[] bytes = bytes(file, standardInput);
    return CaseForm.isForm(bytes) ? CaseForm.read(name(file), bytes) : CaseJson.read(bytes);
  }

  /** A plan: a case, or a recommendation that was kept as JSON. */
  static RecordedPlan readPlan(Path file, InputStream standardInput) {
    byte[] bytes = bytes(file, standardInput);
    return CaseForm.isForm(bytes)
        ? new RecordedPlan(CaseForm.read(name(file), bytes), Optional.empty())
        : RecordedPlan.read(bytes);
  }

  /** At most one byte more than is read of any kind, so that a larger file is refused. */
  private static byte[] bytes(Path file, InputStream standardInput) {
    if (Files.isDirectory(file)) {
      throw FileProblem.isFolder(file);
    }
    int most = Math.max(CaseForm.MOST_BYTES, RecordedPlan.MOST_BYTES) + 1;
    try {
      if (file.equals(STANDARD_INPUT)) {
        return standardInput.readNBytes(most);
      }
      try (InputStream in = Files.newInputStream(file)) {
        return in.readNBytes(most);
      }
    } catch (IOException unreadable) {
      throw FileProblem.reading(file, unreadable);
    }
  }

  /** What to call the file where several are spoken of. */
  static String name(Path file) {
    return file.equals(STANDARD_INPUT) ? "standard input" : String.valueOf(file.getFileName());
  }
}
