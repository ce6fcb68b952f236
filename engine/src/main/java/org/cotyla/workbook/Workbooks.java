package org.cotyla.workbook;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.cotyla.compile.ProtocolCompiler;
import org.cotyla.draft.ProtocolDraft;
import org.cotyla.expression.Dialect;
import org.cotyla.expression.FormulaFunction;
import org.cotyla.expression.StandardFunctions;
import org.cotyla.issue.Issue;
import org.cotyla.issue.Issues;
import org.cotyla.issue.Place;
import org.cotyla.issue.RejectedException;
import org.cotyla.issue.Severity;
import org.cotyla.protocol.Protocol;

/**
 * Reads protocols from {@code .xlsx} workbooks. A workbook is untrusted input: its size is limited,
 * nothing in it is run, and reading it touches no other file.
 */
public final class Workbooks {

  private Workbooks() {}

  /**
   * Reads a workbook whose formulas call standard functions only.
   *
   * @throws RejectedException with every fault that was found, each with its place
   */
  public static Protocol read(Path file) {
    return read(file, List.of());
  }

  /**
   * Reads a workbook.
   *
   * @param functions what its formulas may call besides the standard functions
   * @throws RejectedException with every fault that was found, each with its place
   */
  public static Protocol read(Path file, Collection<FormulaFunction> functions) {
    Path last = file.getFileName();
    String name = last == null ? file.toString() : last.toString();
    Refusal refusal = new Refusal(name);
    if (Files.isDirectory(file)) {
      throw refusal.because("W001", "this is a folder and not a file");
    }
    try (InputStream in = Files.newInputStream(file)) {
      return read(name, in, functions);
    } catch (NoSuchFileException missing) {
      throw refusal.because("W001", "there is no such file");
    } catch (IOException unreadable) {
      throw refusal.because("W001", "the file cannot be read");
    }
  }

  /**
   * Reads a workbook from a stream, which stays open.
   *
   * @param name what to call it in messages
   * @param functions what its formulas may call besides the standard functions
   * @throws RejectedException with every fault that was found, each with its place
   */
  public static Protocol read(
      String name, InputStream workbook, Collection<FormulaFunction> functions) {
    byte[] bytes;
    try {
      bytes = workbook.readNBytes(Limits.FILE_BYTES + 1);
    } catch (IOException unreadable) {
      throw new Refusal(name).because("W001", "the file cannot be read");
    }
    return read(name, bytes, functions);
  }

  /**
   * Reads a workbook from its bytes.
   *
   * @param name what to call it in messages
   * @param functions what its formulas may call besides the standard functions
   * @throws RejectedException with every fault that was found, each with its place
   */
  public static Protocol read(String name, byte[] workbook, Collection<FormulaFunction> functions) {
    Issues read = new Issues();
    Optional<ProtocolDraft> draft = DraftReader.read(GridReader.read(name, workbook), read);
    List<FormulaFunction> all = new ArrayList<>(StandardFunctions.all());
    all.addAll(functions);
    ProtocolCompiler compiler = new ProtocolCompiler(all, Dialect.KIND);
    if (draft.isPresent() && !read.hasErrors()) {
      return compiler
          .compile(draft.get(), read)
          .orElseThrow(() -> new RejectedException(read.list()));
    }
    draft.ifPresent(
        whole -> {
          Issues compiled = new Issues();
          compiler.compile(whole, compiled);
          read.addAll(withoutRepeats(compiled.list(), read.list()));
        });
    throw new RejectedException(read.list());
  }

  /** A cell that cannot be read is not judged again by what would have stood in it. */
  private static List<Issue> withoutRepeats(List<Issue> compiled, List<Issue> read) {
    Set<Place> faulty =
        read.stream()
            .filter(issue -> issue.severity() == Severity.ERROR)
            .map(Issue::place)
            .collect(Collectors.toSet());
    return compiled.stream().filter(issue -> !faulty.contains(issue.place())).toList();
  }
}
