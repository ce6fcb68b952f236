package org.cotyla.testcases.library;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** The folder of invented cases, one folder in it for each theme. */
final class CaseLibrary {

  private CaseLibrary() {}

  static Path folder() {
    Path home = Path.of(System.getProperty("cotyla.home", ".."));
    return home.resolve("test-cases").resolve("cases").toAbsolutePath().normalize();
  }

  /** Every case that lies in a theme, in the order of theme and name. */
  static List<LibraryCase> cases() {
    return files().stream().filter(file -> !isExpectation(file)).map(LibraryCase::of).toList();
  }

  /** Every expectation that lies in a theme. */
  static List<Path> expectations() {
    return files().stream().filter(CaseLibrary::isExpectation).toList();
  }

  private static boolean isExpectation(Path file) {
    return file.toString().endsWith(LibraryCase.EXPECTATION);
  }

  private static List<Path> files() {
    try (Stream<Path> found = Files.walk(folder(), 2)) {
      return found
          .filter(file -> file.getNameCount() == folder().getNameCount() + 2)
          .filter(file -> file.toString().endsWith(".json"))
          .sorted()
          .toList();
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }
}
