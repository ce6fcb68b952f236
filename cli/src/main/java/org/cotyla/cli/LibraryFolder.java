package org.cotyla.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.cotyla.finding.Case;
import org.cotyla.issue.Issue;
import org.cotyla.issue.Issues;
import org.cotyla.issue.Place;
import org.cotyla.issue.RejectedException;
import org.cotyla.json.CaseJson;
import org.cotyla.json.ExpectationJson;
import org.cotyla.trial.Expectation;
import org.cotyla.trial.Trial;
import org.cotyla.trial.TrialRun;

/**
 * A folder of cases: {@code name.json}, and beside it {@code name.expected.json} with what is
 * expected. A case without an expectation is an example and is not tried.
 *
 * @param folder the folder; cases may lie in folders in it
 */
record LibraryFolder(Path folder) {

  private static final String CASE = ".json";
  private static final String EXPECTATION = ".expected.json";
  private static final int DEEPEST = 8;

  /** A folder of cases that stands beside the workbook, as in this project. */
  static Optional<LibraryFolder> beside(Path workbook) {
    Path folder = workbook.toAbsolutePath().normalize().getParent();
    if (folder == null) {
      return Optional.empty();
    }
    return Stream.of("cases", "test-cases/cases", "../test-cases/cases")
        .map(name -> folder.resolve(name).normalize())
        .filter(Files::isDirectory)
        .findFirst()
        .map(LibraryFolder::new);
  }

  /** Tries every case that has an expectation, in the order of the files' names. */
  void tryAll(TrialRun run, org.cotyla.protocol.Protocol protocol) {
    for (Path expectation : expectations()) {
      String file = folder.relativize(expectation).toString().replace('\\', '/');
      String whole = file.substring(0, file.length() - EXPECTATION.length());
      int cut = whole.lastIndexOf('/');
      String suite = cut < 0 ? name() : whole.substring(0, cut);
      String name = whole.substring(cut + 1);
      try {
        Expectation expected = ExpectationJson.read(file, bytes(expectation));
        Path caseFile = expectation.resolveSibling(name + CASE);
        run.add(Trial.of(suite, name, read(whole + CASE, caseFile), expected, protocol));
      } catch (RejectedException refused) {
        run.addUnreadable(suite, name, refused.issues());
      }
    }
  }

  private String name() {
    return String.valueOf(folder.toAbsolutePath().normalize().getFileName());
  }

  private static Case read(String file, Path path) {
    if (!Files.isRegularFile(path)) {
      Issues issues = new Issues();
      issues.error("C054", new Place.Whole(file), "there is an expectation but no case");
      throw new RejectedException(issues.list());
    }
    try {
      return CaseJson.read(bytes(path));
    } catch (RejectedException refused) {
      throw new RejectedException(refused.issues().stream().map(issue -> in(file, issue)).toList());
    }
  }

  private static Issue in(String file, Issue issue) {
    return new Issue(
        issue.code(),
        issue.severity(),
        new Place.InFile(file, issue.place()),
        issue.message(),
        issue.help());
  }

  /** At most one byte more than is read, so that a larger file is refused. */
  private static byte[] bytes(Path file) {
    try (var in = Files.newInputStream(file)) {
      return in.readNBytes(CaseJson.MOST_BYTES + 1);
    } catch (IOException unreadable) {
      throw FileProblem.reading(file, unreadable);
    }
  }

  private List<Path> expectations() {
    try (Stream<Path> files = Files.walk(folder, DEEPEST)) {
      return files
          .filter(file -> file.toString().endsWith(EXPECTATION))
          .filter(Files::isRegularFile)
          .sorted(java.util.Comparator.comparing(Path::toString))
          .toList();
    } catch (IOException unreadable) {
      throw FileProblem.reading(folder, unreadable);
    }
  }
}
