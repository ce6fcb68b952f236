package org.cotyla.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.util.Optional;
import java.util.function.Consumer;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("The progress of long work")
class ProgressBarTest {

  private static String written(boolean showsProgress, Consumer<ProgressBar> work) {
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    Terminal terminal =
        new Terminal(
            InputStream.nullInputStream(),
            Terminal.writer(new ByteArrayOutputStream()),
            Terminal.writer(err),
            true,
            showsProgress,
            Clock.systemUTC(),
            Optional.empty());
    try (ProgressBar bar = ProgressBar.on(terminal, "working")) {
      work.accept(bar);
    }
    return err.toString(StandardCharsets.UTF_8);
  }

  @Test
  @DisplayName("is a bar where the whole is known, shown anew when it grows, and taken away")
  void bar() {
    assertThat(
            written(
                true,
                bar -> {
                  bar.at(0, 300);
                  bar.at(1, 300);
                  bar.at(150, 300);
                  bar.at(140, 300);
                }))
        .isEqualTo(
            "\rworking ["
                + ".".repeat(30)
                + "] 0 %"
                + "\rworking ["
                + "#".repeat(15)
                + ".".repeat(15)
                + "] 50 %"
                + "\r"
                + " ".repeat(45)
                + "\r");
  }

  @Test
  @DisplayName("is a number, by tens, where the whole is not known")
  void count() {
    assertThat(
            written(
                true,
                bar -> {
                  for (int done = 1; done <= 25; done++) {
                    bar.at(done);
                  }
                }))
        .isEqualTo("\rworking 0\rworking 10\rworking 20\r          \r");
  }

  @Test
  @DisplayName("is not written where complaints go into a file")
  void redirected() {
    assertThat(
            written(
                false,
                bar -> {
                  bar.at(1, 2);
                  bar.at(20);
                }))
        .isEmpty();
  }
}
