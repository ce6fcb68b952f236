package org.cotyla.cli;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;

/** A file cannot be read or written; the message says which, and why, in one plain line. */
final class FileProblem extends RuntimeException {

  private static final long serialVersionUID = 1L;

  private FileProblem(String message) {
    super(message);
  }

  static FileProblem reading(Path file, IOException why) {
    return new FileProblem("cannot read " + file + ": " + reason(why));
  }

  static FileProblem writing(Path file, IOException why) {
    return new FileProblem("cannot write " + file + ": " + reason(why));
  }

  static FileProblem isFolder(Path file) {
    return new FileProblem(file + " is a folder, not a file");
  }

  static FileProblem isOpen(Path file) {
    return new FileProblem(file + " is open in a spreadsheet program; close it there first");
  }

  static FileProblem noFolder(Path file) {
    return new FileProblem("there is no folder " + file);
  }

  static FileProblem exists(Path file) {
    return new FileProblem(file + " is there already; name a file that is not, or remove it");
  }

  private static String reason(IOException why) {
    if (why instanceof NoSuchFileException) {
      return "there is no such file or folder";
    }
    if (why instanceof AccessDeniedException) {
      return "access is denied";
    }
    String message = why.getMessage();
    return message == null ? why.getClass().getSimpleName() : message;
  }
}
