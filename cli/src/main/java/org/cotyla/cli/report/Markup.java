package org.cotyla.cli.report;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashSet;
import java.util.Set;
import java.util.regex.Pattern;
import org.cotyla.cli.text.Printable;

/**
 * Writes a document that is HTML and well-formed XML at once. Every text and every attribute's
 * value is escaped here, and nothing that runs or loads can be written; so no text of a workbook or
 * a case becomes markup. Used once, by one thread.
 */
final class Markup {

  private static final Pattern NAME = Pattern.compile("[a-zA-Z][a-zA-Z0-9-]*(:[a-z]+)?");
  private static final Set<String> ACTIVE =
      Set.of("script", "iframe", "object", "embed", "img", "image", "use", "form", "base");
  private static final Set<String> INLINE =
      Set.of("a", "abbr", "b", "em", "span", "strong", "sup", "tspan");

  private final StringBuilder out = new StringBuilder("<!DOCTYPE html>\n");
  private final Deque<String> open = new ArrayDeque<>();
  private final Set<String> ids = new HashSet<>();
  private boolean startIsOpen;

  /** Starts an element; names and values of its attributes follow each other. */
  Markup start(String element, String... attributes) {
    closeStart();
    requireName(element);
    if (ACTIVE.contains(element)) {
      throw new IllegalArgumentException("a report has no element " + element);
    }
    out.append('<').append(element);
    open.push(element);
    startIsOpen = true;
    for (int i = 0; i < attributes.length; i += 2) {
      attribute(attributes[i], attributes[i + 1]);
    }
    return this;
  }

  /** Adds an attribute to the element that was started last. */
  Markup attribute(String name, String value) {
    if (!startIsOpen) {
      throw new IllegalStateException("no element has just been started");
    }
    requireName(name);
    String key = name.toLowerCase(java.util.Locale.ROOT);
    boolean loads = key.equals("src") || key.equals("style") || key.startsWith("on");
    boolean leads = key.endsWith("href") && !value.startsWith("#");
    if (loads || leads) {
      throw new IllegalArgumentException("a report has no attribute " + name + "=" + value);
    }
    if (key.equals("id") && !ids.add(value)) {
      throw new IllegalArgumentException("the id " + value + " stands twice");
    }
    out.append(' ').append(name).append("=\"").append(escaped(value)).append('"');
    return this;
  }

  Markup text(String text) {
    closeStart();
    out.append(escaped(text));
    return this;
  }

  Markup end() {
    String element = open.pop();
    if (startIsOpen) {
      startIsOpen = false;
      // HTML knows these as empty; of others it would take `/>` for a start.
      if (isEmptyByNature(element)) {
        out.append("/>");
        breakAfter(element);
        return this;
      }
      out.append('>');
    }
    out.append("</").append(element).append('>');
    breakAfter(element);
    return this;
  }

  /** An element that holds only text. */
  Markup leaf(String element, String text, String... attributes) {
    return start(element, attributes).text(text).end();
  }

  /** A link to a place in the document. */
  Markup link(String id, String text) {
    return leaf("a", text, "href", "#" + id);
  }

  /** A style sheet of our own; it cannot hold anything that would end it. */
  Markup style(String css) {
    if (css.contains("<") || css.contains("&") || css.contains("url(") || css.contains("@import")) {
      throw new IllegalArgumentException("a style sheet that ends itself or loads something");
    }
    start("style");
    closeStart();
    out.append('\n').append(css);
    return end();
  }

  private void closeStart() {
    if (startIsOpen) {
      out.append('>');
      startIsOpen = false;
    }
  }

  private void breakAfter(String element) {
    if (!INLINE.contains(element)) {
      out.append('\n');
    }
  }

  private boolean isEmptyByNature(String element) {
    boolean drawn = open.contains("svg");
    return drawn || element.equals("meta");
  }

  private static void requireName(String name) {
    if (!NAME.matcher(name).matches()) {
      throw new IllegalArgumentException("not a name: " + name);
    }
  }

  /** Control and format characters, which could turn the line round, are shown as `?`. */
  static String escaped(String text) {
    StringBuilder safe = new StringBuilder(text.length() + 16);
    Printable.line(text).codePoints().forEach(character -> append(safe, character));
    return safe.toString();
  }

  private static void append(StringBuilder safe, int character) {
    switch (character) {
      case '&' -> safe.append("&amp;");
      case '<' -> safe.append("&lt;");
      case '>' -> safe.append("&gt;");
      case '"' -> safe.append("&quot;");
      case '\'' -> safe.append("&#39;");
      default -> {
        // The last two characters of each plane are none, and XML forbids those of the first.
        boolean none = (character & 0xFFFE) == 0xFFFE;
        safe.appendCodePoint(none ? '?' : character);
      }
    }
  }

  @Override
  public String toString() {
    if (!open.isEmpty()) {
      throw new IllegalStateException("still open: " + open);
    }
    return out.toString();
  }
}
