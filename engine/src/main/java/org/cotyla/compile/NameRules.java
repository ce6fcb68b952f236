package org.cotyla.compile;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.cotyla.draft.Text;
import org.cotyla.issue.CellRef;
import org.cotyla.issue.Issues;
import org.cotyla.name.Names;

/** Which names may be given, and that no two things have the same one. */
final class NameRules {

  private static final String FORBIDDEN = "<>=!,;()[]{}\"?*+@:";
  private static final Set<String> RESERVED =
      Set.of(
          "and", "or", "not", "if", "then", "else", "in", "between", "true", "false", "yes", "no",
          "null", "option", "effect", "points");
  private static final int LENGTH_AT_MOST = 120;

  private final Map<String, CellRef> taken = new HashMap<>();
  private final Issues issues;

  NameRules(Issues issues) {
    this.issues = issues;
  }

  /** Whether the name may be used; otherwise the fault is reported. */
  boolean accept(Text cell, String what) {
    return accept(cell.text(), cell.at(), what);
  }

  boolean accept(String name, CellRef at, String what) {
    if (name.isEmpty()) {
      issues.error("W110", at, what + " has no name");
      return false;
    }
    String problem = problem(name);
    if (!problem.isEmpty()) {
      issues.error("W112", at, "the name `" + name + "` " + problem, "use plain words with spaces");
      return false;
    }
    CellRef earlier = taken.putIfAbsent(Names.key(name), at);
    if (earlier != null) {
      issues.error(
          "W111",
          at,
          "the name `" + name + "` is already used at " + earlier.plain(),
          "case, spaces, underscores, hyphens and accents make no difference in names");
      return false;
    }
    return true;
  }

  private static String problem(String name) {
    if (name.length() > LENGTH_AT_MOST) {
      return "is longer than " + LENGTH_AT_MOST + " characters";
    }
    if (!Character.isLetter(name.charAt(0))) {
      return "does not start with a letter";
    }
    if (RESERVED.contains(Names.key(name))) {
      return "has a meaning of its own in cells";
    }
    if (name.toLowerCase(Locale.ROOT).matches("if\\P{L}.*")) {
      return "starts with `if`, which begins a condition in cells";
    }
    for (int i = 0; i < name.length(); i++) {
      if (FORBIDDEN.indexOf(name.charAt(i)) >= 0 || Character.isISOControl(name.charAt(i))) {
        return "contains `" + name.charAt(i) + "`";
      }
    }
    return "";
  }
}
