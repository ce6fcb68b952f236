package org.cotyla.testcases.library;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.cotyla.finding.Case;
import org.cotyla.issue.RejectedException;
import org.cotyla.json.CaseJson;
import org.cotyla.json.ExpectationJson;
import org.cotyla.trial.Expectation;

/**
 * One case of the library.
 *
 * @param theme the folder that it lies in
 * @param name its file's name without the ending
 * @param file the case
 * @param expectationFile what is expected of it, beside it
 */
record LibraryCase(String theme, String name, Path file, Path expectationFile) {

  private static final String CASE = ".json";
  static final String EXPECTATION = ".expected.json";

  static LibraryCase of(Path file) {
    String fileName = String.valueOf(file.getFileName());
    String name = fileName.substring(0, fileName.length() - CASE.length());
    String theme = String.valueOf(file.resolveSibling(".").normalize().getFileName());
    return new LibraryCase(theme, name, file, file.resolveSibling(name + EXPECTATION));
  }

  String displayName() {
    return theme + "/" + name;
  }

  Case read() {
    try {
      return CaseJson.read(Files.readAllBytes(file));
    } catch (RejectedException refused) {
      throw new AssertionError(displayName() + " is refused:\n" + refused.getMessage(), refused);
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  Expectation expectation() {
    try {
      return ExpectationJson.read(
          String.valueOf(expectationFile.getFileName()), Files.readAllBytes(expectationFile));
    } catch (RejectedException refused) {
      throw new AssertionError(displayName() + " is refused:\n" + refused.getMessage(), refused);
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }
}
