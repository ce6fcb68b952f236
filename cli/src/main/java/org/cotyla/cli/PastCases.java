package org.cotyla.cli;

import java.io.Closeable;
import java.io.IOException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Collections;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.cotyla.compare.ImpactRun;
import org.cotyla.compare.PastCase;
import org.cotyla.evaluate.Engine;
import org.cotyla.issue.Issue;
import org.cotyla.library.CaseFolder;
import org.cotyla.library.CaseTable;
import org.cotyla.protocol.Protocol;
import org.jspecify.annotations.Nullable;

/** The library of past cases of a run: a folder, a table, or the cases that ship. */
final class PastCases implements Closeable {

  private static final int THREADS = 2;
  private static final Path SHIPPED = Path.of("test-cases", "cases");

  private final String name;
  private final List<Issue> remarks;
  private final Iterator<PastCase> cases;
  private final OptionalInt size;
  private final Closeable file;

  private PastCases(
      String name,
      List<Issue> remarks,
      Iterator<PastCase> cases,
      OptionalInt size,
      Closeable file) {
    this.name = name;
    this.remarks = remarks;
    this.cases = cases;
    this.size = size;
    this.file = file;
  }

  /**
   * The library that is named, else the cases that ship, else none. Its cases are read when they
   * are run.
   */
  static PastCases open(@Nullable Path named, Terminal terminal, Protocol before, Protocol after)
      throws IOException {
    Optional<Path> place =
        Optional.ofNullable(named)
            .or(
                () ->
                    terminal
                        .home()
                        .map(folder -> folder.resolve(SHIPPED))
                        .filter(Files::isDirectory));
    if (named != null && !Files.isReadable(named)) {
      throw FileProblem.reading(named, new NoSuchFileException(named.toString()));
    }
    if (place.isEmpty()) {
      return new PastCases("", List.of(), Collections.emptyIterator(), OptionalInt.of(0), () -> {});
    }
    try {
      return open(place.get(), List.of(after, before));
    } catch (FileSystemException unreadable) {
      throw FileProblem.reading(place.get(), unreadable);
    }
  }

  private static PastCases open(Path path, List<Protocol> protocols) throws IOException {
    String name = String.valueOf(path.getFileName());
    if (Files.isDirectory(path)) {
      CaseFolder folder = CaseFolder.of(path);
      OptionalInt size = OptionalInt.of(folder.size());
      return new PastCases(name, List.of(), folder.cases(), size, () -> {});
    }
    CaseTable table = CaseTable.of(name, Files.newInputStream(path), protocols);
    return new PastCases(name, table.remarks(), table.cases(), OptionalInt.empty(), table);
  }

  /** What to call the library; empty when there is none. */
  String name() {
    return name;
  }

  /** What is to be said of how it was read. */
  List<Issue> remarks() {
    return remarks;
  }

  /** Runs its cases once; nothing when there is no library. */
  Optional<ImpactRun> run(Engine before, Engine after, Terminal terminal) {
    if (name.isEmpty()) {
      return Optional.empty();
    }
    try (ProgressBar bar = ProgressBar.on(terminal, "past cases")) {
      return Optional.of(
          ImpactRun.of(
              before,
              after,
              cases,
              THREADS,
              done -> size.ifPresentOrElse(all -> bar.at(done, all), () -> bar.at(done))));
    }
  }

  @Override
  public void close() throws IOException {
    file.close();
  }
}
