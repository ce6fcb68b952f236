package org.cotyla.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.cotyla.expression.FormulaLibrary;
import org.cotyla.protocol.Protocol;
import org.cotyla.workbook.Workbooks;
import org.jspecify.annotations.Nullable;

/** Finds the protocol of a run: the file that was named, or the house protocol that ships. */
final class HouseProtocol {

  private static final String FILE = "acetabular-revision.xlsx";

  private HouseProtocol() {}

  /** The named file; else the one in the program's folder, which a lead may edit; else our copy. */
  static Protocol read(@Nullable Path named, Optional<Path> home) {
    if (named != null) {
      return readable(named);
    }
    Optional<Path> edited = home.map(folder -> folder.resolve("rules").resolve(FILE));
    return edited
        .filter(Files::isRegularFile)
        .map(file -> Workbooks.read(file, FormulaLibrary.installed()))
        .orElseGet(HouseProtocol::copy);
  }

  /** The file that would be read; a copy inside the program is none. */
  static Path file(@Nullable Path named, Optional<Path> home) {
    return Optional.ofNullable(named)
        .or(() -> home.map(folder -> folder.resolve("rules").resolve(FILE)))
        .orElseGet(() -> Path.of(FILE));
  }

  private static Protocol readable(Path file) {
    if (Files.isDirectory(file)) {
      throw FileProblem.isFolder(file);
    }
    try (InputStream in = Files.newInputStream(file)) {
      Path name = file.getFileName();
      return Workbooks.read(String.valueOf(name), in, FormulaLibrary.installed());
    } catch (IOException unreadable) {
      throw FileProblem.reading(file, unreadable);
    }
  }

  private static Protocol copy() {
    try (InputStream in = HouseProtocol.class.getResourceAsStream("/org/cotyla/rules/" + FILE)) {
      if (in == null) {
        throw new IllegalStateException("the house protocol is missing from this build");
      }
      return Workbooks.read(FILE, in, FormulaLibrary.installed());
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }
}
