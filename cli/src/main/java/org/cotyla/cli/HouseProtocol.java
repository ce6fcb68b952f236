package org.cotyla.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.cotyla.expression.FormulaLibrary;
import org.cotyla.ledger.ProtocolFile;
import org.cotyla.protocol.Protocol;
import org.cotyla.workbook.Workbooks;
import org.jspecify.annotations.Nullable;

/** Finds the protocol of a run: the file that was named, or the house protocol that ships. */
final class HouseProtocol {

  private static final String FILE = "acetabular-revision.xlsx";

  /** One more than is read of a workbook, so that a larger one is refused as one. */
  private static final int MOST_BYTES = (16 << 20) + 1;

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

  /** The same with its bytes, as a ledger keeps it. */
  static ProtocolFile readFile(@Nullable Path named, Optional<Path> home) {
    Optional<Path> edited =
        home.map(folder -> folder.resolve("rules").resolve(FILE)).filter(Files::isRegularFile);
    Path file = named != null ? named : edited.orElse(null);
    if (file != null && Files.isDirectory(file)) {
      throw FileProblem.isFolder(file);
    }
    try (InputStream in = file == null ? shipped() : Files.newInputStream(file)) {
      String name = file == null ? FILE : String.valueOf(file.getFileName());
      return ProtocolFile.read(name, in.readNBytes(MOST_BYTES), FormulaLibrary.installed());
    } catch (IOException unreadable) {
      throw FileProblem.reading(file == null ? Path.of(FILE) : file, unreadable);
    }
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
    try (InputStream in = shipped()) {
      return Workbooks.read(FILE, in, FormulaLibrary.installed());
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  private static InputStream shipped() {
    InputStream in = HouseProtocol.class.getResourceAsStream("/org/cotyla/rules/" + FILE);
    if (in == null) {
      throw new IllegalStateException("the house protocol is missing from this build");
    }
    return in;
  }
}
