package org.cotyla.cli.report;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.cotyla.cli.text.Printable;

/** The report's style sheet, with the colours put in and the caution at the foot of each page. */
final class Stylesheet {

  private static final Pattern VARIABLE = Pattern.compile("var\\(--([a-z]+)\\)");
  private static final String FOOT = "\"foot of the page\"";

  private Stylesheet() {}

  /** The sheet as it stands in a document whose every printed page ends with the sentence. */
  static String with(String foot) {
    String sheet = VARIABLE.matcher(read()).replaceAll(Stylesheet::colour);
    return sheet.replace(FOOT, string(foot));
  }

  private static String colour(MatchResult variable) {
    String name = variable.group(1);
    return Arrays.stream(Palette.values())
        .filter(colour -> colour.variable().equals(name))
        .map(Palette::hex)
        .findFirst()
        .orElseThrow(() -> new IllegalStateException("the style sheet asks for --" + name));
  }

  /** A string of CSS in which nothing can end it: all but letters, digits and spaces by number. */
  static String string(String text) {
    StringBuilder css = new StringBuilder("\"");
    Printable.line(text)
        .codePoints()
        .forEach(
            character -> {
              if (character < 128 && (Character.isLetterOrDigit(character) || character == ' ')) {
                css.appendCodePoint(character);
              } else {
                css.append('\\').append(Integer.toHexString(character)).append(' ');
              }
            });
    return css.append('"').toString();
  }

  private static String read() {
    try (InputStream in = Stylesheet.class.getResourceAsStream("report.css")) {
      if (in == null) {
        throw new IllegalStateException("the style sheet is missing from this build");
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }
}
