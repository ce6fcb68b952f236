package org.cotyla.retrospective;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.cotyla.name.Names;
import org.cotyla.unit.Units;

/**
 * A heading taken apart: a name, and a unit in brackets behind it.
 *
 * @param name the name
 * @param unit the UCUM code of the unit
 */
record HeadingWords(String name, Optional<String> unit) {

  private static final Pattern WITH_UNIT = Pattern.compile("(.*\\S)\\s*[(\\[]([^()\\[\\]]+)[)\\]]");

  /** What people write for units, by the codes of UCUM; not one of them could mean another. */
  private static final Map<String, String> IN_WORDS =
      Map.ofEntries(
          Map.entry("years", "a"),
          Map.entry("year", "a"),
          Map.entry("months", "mo"),
          Map.entry("weeks", "wk"),
          Map.entry("days", "d"),
          Map.entry("degrees", "deg"),
          Map.entry("°", "deg"),
          Map.entry("percent", "%"),
          Map.entry("per cent", "%"),
          Map.entry("millimetres", "mm"),
          Map.entry("centimetres", "cm"));

  static HeadingWords of(String heading) {
    Matcher parts = WITH_UNIT.matcher(heading.strip());
    if (parts.matches()) {
      String written = parts.group(2).strip();
      String code = IN_WORDS.getOrDefault(written, written);
      if (Units.isKnown(code)) {
        return new HeadingWords(parts.group(1).strip(), Optional.of(code));
      }
    }
    return new HeadingWords(heading.strip(), Optional.empty());
  }

  /** Whether each word of the name is a word of the other. */
  boolean isPartOf(String other) {
    List<String> words = words(other);
    List<String> own = words(name);
    return !own.isEmpty() && words.containsAll(own);
  }

  private static List<String> words(String name) {
    return Arrays.stream(name.split("[\\s_-]+"))
        .map(Names::key)
        .filter(word -> !word.isEmpty())
        .toList();
  }
}
