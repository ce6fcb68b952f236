package org.cotyla.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.cotyla.identity.EngineVersion;

/**
 * Answers that were read and found right, kept as files. After a wanted change, run the tests once
 * with {@code -Dcotyla.golden=write} and read what changed.
 */
public final class Golden {

  private Golden() {}

  /** The answer is, to the letter, what the file says; only the engine's version may differ. */
  public static void matches(String file, String answer) {
    String shown = answer.replace(EngineVersion.current(), "<version>");
    if ("write".equals(System.getProperty("cotyla.golden"))) {
      write(file, shown);
    }
    assertThat(shown).as("answer kept as %s", file).isEqualTo(read(file));
  }

  private static String read(String file) {
    try (InputStream in = Golden.class.getResourceAsStream("golden/" + file)) {
      assertThat(in).as("file golden/%s", file).isNotNull();
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  private static void write(String file, String answer) {
    try {
      for (String folder : new String[] {"src/test/resources", "target/test-classes"}) {
        Path path = Path.of(folder, "org/cotyla/cli/golden", file);
        Files.createDirectories(path.getParent());
        Files.writeString(path, answer);
      }
    } catch (IOException unwritable) {
      throw new UncheckedIOException(unwritable);
    }
  }
}
