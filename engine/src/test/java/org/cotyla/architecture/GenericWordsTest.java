package org.cotyla.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

class GenericWordsTest {

  /** Words of one trade, which belong in its workbook and not in the engine. */
  private static final Pattern TRADE =
      Pattern.compile(
          "(?i)\\b(hips?|bones?|acetabul\\w*|implants?|cups?|surgeons?|surgery|surgical|patients?"
              + "|pelvis|pelvic|femur|femoral|joints?|orthop\\w*|prosthe\\w*|clinic|clinical"
              + "|hospitals?|disease|diagnos\\w*|infection|dislocat\\w*|fracture\\w*)\\b");

  /** Sentences about what identifies a patient must never be stored name the word itself. */
  private static final List<String> EXCEPTIONS = List.of("identifies a patient");

  @Test
  @DisplayName("The engine's sources and the names of its tests know no trade")
  void knowsNoTrade() throws IOException {
    Path source = Path.of(System.getProperty("cotyla.home"), "engine", "src");
    List<String> found = new ArrayList<>();
    try (Stream<Path> files = Files.walk(source)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        String name = file.getFileName().toString();
        if (TRADE.matcher(name.replaceAll("([a-z])([A-Z])", "$1 $2")).find()) {
          found.add(name);
        }
        boolean main = file.startsWith(source.resolve("main"));
        if (main
            && (name.endsWith(".java") || name.endsWith(".json") || name.endsWith(".properties"))) {
          find(file, found);
        }
      }
    }
    assertThat(found).isEmpty();
  }

  private static void find(Path file, List<String> found) throws IOException {
    int number = 0;
    for (String line : Files.readAllLines(file)) {
      number++;
      if (TRADE.matcher(line).find() && EXCEPTIONS.stream().noneMatch(line::contains)) {
        found.add(file.getFileName() + ":" + number + ": " + line.strip());
      }
    }
  }
}
