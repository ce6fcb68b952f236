package org.cotyla.json;

import com.fasterxml.jackson.core.JsonToken;
import java.util.Collection;
import java.util.Optional;
import org.cotyla.issue.Issues;
import org.cotyla.issue.Place;
import org.cotyla.name.NearestWord;

/** What can be wrong with the JSON of a case, in words. */
final class CaseFaults {

  static final Place WHOLE = new Place.InCase("");

  private static final int LONGEST_QUOTED = 60;

  private final Issues issues = new Issues();

  Issues issues() {
    return issues;
  }

  void notJson(String message, String help) {
    issues.error("C020", WHOLE, message, help);
  }

  void notACase(String message) {
    issues.error("C021", WHOLE, message, "a case is an object such as {\"findings\": {...}}");
  }

  void unknownKey(Place place, String key, Collection<String> known, Optional<String> advice) {
    String help = advice.orElseGet(() -> NearestWord.help(key, known));
    issues.error("C022", place, quoted(key) + " is not a key of the case format", help);
  }

  void wrongKind(Place place, String what, JsonToken found, String expected) {
    issues.error("C023", place, what + " is " + kind(found), expected);
  }

  void twice(Place place, String key) {
    issues.error("C024", place, "the key " + quoted(key) + " stands twice", "keep one of them");
  }

  void tooLarge(Place place, String message, String help) {
    issues.error("C025", place, message, help);
  }

  void tooDeep(int most) {
    issues.error(
        "C026",
        WHOLE,
        "lists and objects are nested deeper than " + most + " levels",
        "a case needs no more than 5");
  }

  void incomplete(Place place, String message, String help) {
    issues.error("C027", place, message, help);
  }

  /** The author's own words in backticks, cut short when they are long. */
  static String quoted(String text) {
    return "`" + cut(text) + "`";
  }

  static String cut(String text) {
    return text.length() <= LONGEST_QUOTED ? text : text.substring(0, LONGEST_QUOTED - 3) + "...";
  }

  static String kind(JsonToken token) {
    return switch (token) {
      case START_OBJECT -> "an object";
      case START_ARRAY -> "a list";
      case VALUE_STRING -> "a text";
      case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> "a number";
      case VALUE_TRUE, VALUE_FALSE -> "true or false";
      default -> "null";
    };
  }
}
