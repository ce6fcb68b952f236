package org.cotyla.testcases.conformance;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/**
 * Where the data of the DMN Technology Compatibility Kit (https://github.com/dmn-tck/tck) stands.
 * It is not part of this project; without it the conformance tests are skipped and say so.
 */
record TckData(Path home) {

  static final String ABSENT =
      "the conformance data is not here: set cotyla.tck to a folder with the DMN TCK selection"
          + " (models and tests of the public repository dmn-tck/tck, and unary-tests.jsonl),"
          + " or put that folder at ../shared/tck beside the checkout";

  /** The data, from the property cotyla.tck or beside the checkout. */
  static TckData find() {
    String named = System.getProperty("cotyla.tck", "");
    Path checkout = Path.of(System.getProperty("cotyla.home", "."));
    return new TckData(
        named.isBlank()
            ? checkout.resolve("../shared/tck").toAbsolutePath().normalize()
            : Path.of(named));
  }

  boolean isThere() {
    return Files.isRegularFile(home.resolve("unary-tests.jsonl"))
        && Files.isDirectory(home.resolve("compliance-level-2"));
  }

  void assumeThere() {
    assumeTrue(isThere(), ABSENT);
  }

  List<String> unaryTests() {
    try {
      return Files.readAllLines(home.resolve("unary-tests.jsonl"));
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  /** The folder of that name, whatever its level. */
  Path folder(String name) {
    return Stream.of("compliance-level-2", "compliance-level-3")
        .map(level -> home.resolve(level).resolve(name))
        .filter(Files::isDirectory)
        .findFirst()
        .orElseThrow(() -> new IllegalStateException("no folder " + name + " in " + home));
  }

  /** Every folder of models, by name. */
  List<String> folders() {
    return Stream.of("compliance-level-2", "compliance-level-3")
        .flatMap(level -> list(home.resolve(level)))
        .map(folder -> folder.getFileName().toString())
        .toList();
  }

  static Stream<Path> list(Path folder) {
    try (Stream<Path> files = Files.list(folder)) {
      return files.sorted().toList().stream();
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }
}
