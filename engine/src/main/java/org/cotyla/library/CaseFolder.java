package org.cotyla.library;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Iterator;
import java.util.List;
import java.util.stream.Stream;
import org.cotyla.compare.PastCase;
import org.cotyla.issue.RejectedException;
import org.cotyla.json.CaseJson;

/**
 * A folder of cases as JSON files, in any depth; files of expectations beside them are not read.
 */
public final class CaseFolder {

  private static final String CASE = ".json";
  private static final String EXPECTATION = ".expected.json";

  private final Path folder;
  private final List<Path> files;

  private CaseFolder(Path folder, List<Path> files) {
    this.folder = folder;
    this.files = files;
  }

  /**
   * The folder, whose files are read one by one when they are asked for.
   *
   * @throws IOException when the folder cannot be listed
   */
  public static CaseFolder of(Path folder) throws IOException {
    try (Stream<Path> found = Files.walk(folder)) {
      List<Path> files =
          found
              .filter(file -> file.toString().endsWith(CASE))
              .filter(file -> !file.toString().endsWith(EXPECTATION))
              .filter(Files::isRegularFile)
              .sorted()
              .toList();
      return new CaseFolder(folder, files);
    }
  }

  public int size() {
    return files.size();
  }

  /** The cases in the order of their files' names. */
  public Iterator<PastCase> cases() {
    return files.stream().map(this::read).iterator();
  }

  private PastCase read(Path file) {
    String relative = folder.relativize(file).toString().replace('\\', '/');
    String reference = relative.substring(0, relative.length() - CASE.length());
    try (InputStream in = Files.newInputStream(file)) {
      return PastCase.of(reference, CaseJson.read(in));
    } catch (RejectedException faulty) {
      return PastCase.faulty(reference, faulty.issues());
    } catch (IOException unreadable) {
      return PastCase.faulty(reference, CaseTable.unreadable(relative, unreadable));
    }
  }
}
