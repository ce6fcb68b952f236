package org.cotyla.cli;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Optional;

/**
 * One run of the program inside this process.
 *
 * @param code its exit code
 * @param out what it answered
 * @param err what it complained of
 */
record Run(int code, String out, String err) {

  /** The folder of the whole project, whose house protocol is used. */
  static final Path HOME = Path.of(System.getProperty("cotyla.home"));

  static Run of(String... arguments) {
    return with("", false, arguments);
  }

  static Run with(String input, boolean takesColour, String... arguments) {
    return with(input, takesColour, Optional.of(HOME), arguments);
  }

  static Run with(String input, boolean takesColour, Optional<Path> home, String... arguments) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    Terminal terminal =
        new Terminal(
            new ByteArrayInputStream(input.getBytes(StandardCharsets.UTF_8)),
            Terminal.writer(out),
            Terminal.writer(err),
            takesColour,
            false,
            Clock.fixed(Instant.parse("2026-12-15T10:00:00Z"), ZoneOffset.UTC),
            home);
    int code = Main.run(terminal, arguments);
    return new Run(
        code, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
  }
}
