package org.cotyla.testcases.conformance;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Takes FEEL text apart at its outermost brackets and commas. */
final class FeelText {

  /** A call that is the whole of a text. */
  record Call(String function, List<String> arguments) {}

  private FeelText() {}

  /** The call, when the text is a name, a bracket that ends the text, and arguments in it. */
  static Optional<Call> call(String text) {
    int open = text.indexOf('(');
    boolean named = open > 0 && Character.isLetter(text.charAt(0));
    if (!named || !text.endsWith(")") || closing(text, open) != text.length() - 1) {
      return Optional.empty();
    }
    String name = text.substring(0, open).strip();
    boolean isName =
        name.chars().allMatch(c -> Character.isLetterOrDigit(c) || " ._-".indexOf(c) >= 0);
    return isName
        ? Optional.of(new Call(name, parts(text.substring(open + 1, text.length() - 1))))
        : Optional.empty();
  }

  /** The items, when the whole of the text is a list in square brackets. */
  static Optional<List<String>> list(String text) {
    boolean isList =
        text.startsWith("[")
            && text.endsWith("]")
            && closing(text, 0) == text.length() - 1
            && !text.contains("..");
    return isList ? Optional.of(parts(text.substring(1, text.length() - 1))) : Optional.empty();
  }

  /** The parts between the commas that stand in no bracket and no string. */
  static List<String> parts(String text) {
    List<String> parts = new ArrayList<>();
    int start = 0;
    int i = 0;
    while (i < text.length()) {
      char c = text.charAt(i);
      if (c == ',') {
        parts.add(text.substring(start, i).strip());
        start = i + 1;
      }
      i = next(text, i);
    }
    if (!text.isBlank()) {
      parts.add(text.substring(start).strip());
    }
    return parts;
  }

  private static int closing(String text, int open) {
    return next(text, open) - 1;
  }

  /** The place after the character, the string or the bracket with all in it. */
  private static int next(String text, int at) {
    char c = text.charAt(at);
    if (c == '"') {
      int i = at + 1;
      while (i < text.length() && text.charAt(i) != '"') {
        i += text.charAt(i) == '\\' ? 2 : 1;
      }
      return i + 1;
    }
    if ("([{".indexOf(c) < 0) {
      return at + 1;
    }
    int i = at + 1;
    while (i < text.length() && ")]}".indexOf(text.charAt(i)) < 0) {
      i = next(text, i);
    }
    return i + 1;
  }
}
