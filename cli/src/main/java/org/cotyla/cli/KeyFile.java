package org.cotyla.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermissions;

/** Reads and writes the files of keys. */
final class KeyFile {

  private static final int MOST_BYTES = 10_000;

  private KeyFile() {}

  static String read(Path file) {
    if (Files.isDirectory(file)) {
      throw FileProblem.isFolder(file);
    }
    try (var in = Files.newInputStream(file)) {
      return new String(in.readNBytes(MOST_BYTES), StandardCharsets.UTF_8);
    } catch (IOException unreadable) {
      throw FileProblem.reading(file, unreadable);
    }
  }

  /** Writes a private key, which nobody but its owner can read at any moment. */
  static void writePrivate(Path file, String pem) {
    boolean posix = FileSystems.getDefault().supportedFileAttributeViews().contains("posix");
    FileAttribute<?>[] ownerOnly =
        posix
            ? new FileAttribute<?>[] {
              PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rw-------"))
            }
            : new FileAttribute<?>[0];
    try {
      Files.createFile(file, ownerOnly);
      Files.writeString(file, pem);
    } catch (FileAlreadyExistsException there) {
      throw FileProblem.exists(file);
    } catch (IOException unwritable) {
      throw FileProblem.writing(file, unwritable);
    }
  }
}
