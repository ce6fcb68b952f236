package org.cotyla.cli;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.function.IntConsumer;
import org.cotyla.compare.Impact;
import org.cotyla.compare.ImpactRun;
import org.cotyla.compare.PastCase;
import org.cotyla.evaluate.Engine;
import org.cotyla.finite.Answer;
import org.cotyla.issue.Issue;
import org.cotyla.library.CaseFolder;
import org.cotyla.library.CaseTable;
import org.cotyla.protocol.Protocol;
import org.jspecify.annotations.Nullable;

/** The library of past cases of a run: a folder, a table, or the cases that ship. */
final class PastCases {

  private static final int THREADS = 2;
  private static final Path SHIPPED = Path.of("test-cases", "cases");

  private final Optional<Path> place;
  private final Terminal terminal;
  private final List<Protocol> protocols;
  private List<Answer.Found> changed = List.of();
  private List<Issue> remarks = List.of();

  private PastCases(Optional<Path> place, Terminal terminal, List<Protocol> protocols) {
    this.place = place;
    this.terminal = terminal;
    this.protocols = protocols;
  }

  static PastCases of(@Nullable Path named, Terminal terminal, Protocol before, Protocol after) {
    Optional<Path> place =
        Optional.ofNullable(named)
            .or(
                () ->
                    terminal
                        .home()
                        .map(folder -> folder.resolve(SHIPPED))
                        .filter(Files::isDirectory));
    if (named != null && !Files.isReadable(named)) {
      throw FileProblem.reading(named, new java.nio.file.NoSuchFileException(named.toString()));
    }
    return new PastCases(place, terminal, List.of(after, before));
  }

  /** What to call the library. */
  String name() {
    return place.map(path -> String.valueOf(path.getFileName())).orElse("");
  }

  /** What is to be said of how it was read. */
  List<Issue> remarks() {
    return remarks;
  }

  Optional<Impact> run(Engine before, Engine after) throws IOException {
    if (place.isEmpty()) {
      return Optional.empty();
    }
    Path path = place.get();
    try (ProgressBar bar = ProgressBar.on(terminal, "past cases")) {
      if (Files.isDirectory(path)) {
        CaseFolder folder = CaseFolder.of(path);
        int size = folder.size();
        return Optional.of(run(before, after, folder.cases(), done -> bar.at(done, size)));
      }
      try (InputStream in = Files.newInputStream(path);
          CaseTable table = CaseTable.of(String.valueOf(path.getFileName()), in, protocols)) {
        remarks = table.remarks();
        return Optional.of(run(before, after, table.cases(), bar::at));
      }
    } catch (java.nio.file.FileSystemException unreadable) {
      throw FileProblem.reading(path, unreadable);
    }
  }

  /** Some of the cases that change, with both answers. */
  List<Answer.Found> changed() {
    return changed;
  }

  private Impact run(Engine before, Engine after, Iterator<PastCase> cases, IntConsumer done) {
    ImpactRun run = ImpactRun.of(before, after, cases, THREADS, done);
    changed = run.examples();
    return run.impact();
  }
}
