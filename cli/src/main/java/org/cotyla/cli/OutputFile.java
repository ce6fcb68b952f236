package org.cotyla.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.UUID;
import java.util.function.Consumer;

/** Writes a file whole or not at all. */
final class OutputFile {

  private OutputFile() {}

  static void write(Path file, String text) {
    write(file, text.getBytes(StandardCharsets.UTF_8));
  }

  /** Writes beside the file first and then moves it there, so that nobody ever meets half of it. */
  static void write(Path file, byte[] content) {
    requireFree(file);
    replace(file, content);
  }

  /** Writes text that is too long to be held, bit by bit, in the same way. */
  static void write(Path file, Consumer<Appendable> content) {
    requireFree(file);
    replace(
        file,
        half -> {
          try (Writer out = Files.newBufferedWriter(half, StandardOpenOption.CREATE_NEW)) {
            content.accept(out);
          } catch (UncheckedIOException unwritable) {
            throw unwritable.getCause();
          }
        });
  }

  /** Refuses a file that is there. */
  static void requireFree(Path file) {
    if (Files.isDirectory(file)) {
      throw FileProblem.isFolder(file);
    }
    if (Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
      // It may be a case that somebody filled in, a link or a device: none of them is ours to lose.
      throw FileProblem.exists(file);
    }
  }

  /** Writes in place of the file that is there, if one is; its user has asked for that. */
  static void replace(Path file, byte[] content) {
    replace(file, half -> Files.write(half, content, StandardOpenOption.CREATE_NEW));
  }

  /** Fills a file that nobody meets. */
  private interface Filling {
    void fill(Path half) throws IOException;
  }

  private static void replace(Path file, Filling filling) {
    Path half = file.resolveSibling(".cotyla-" + UUID.randomUUID() + ".part");
    try {
      try {
        filling.fill(half);
        move(half, file);
      } finally {
        Files.deleteIfExists(half);
      }
    } catch (IOException unwritable) {
      throw FileProblem.writing(file, unwritable);
    }
  }

  /** The folder, made when it is not there yet. */
  static Path folder(Path folder) {
    try {
      return Files.createDirectories(folder);
    } catch (IOException unwritable) {
      throw FileProblem.writing(folder, unwritable);
    }
  }

  private static void move(Path from, Path to) throws IOException {
    try {
      Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
    } catch (AtomicMoveNotSupportedException otherwise) {
      Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
    }
  }
}
