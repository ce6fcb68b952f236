package org.cotyla.dmn;

import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;
import org.cotyla.expression.FormulaFunction;
import org.cotyla.expression.StandardFunctions;

/**
 * Gives each thing a name that every FEEL engine reads as one name (DMN clause 10.3.1.4). A plain
 * name stays as it is; one that holds a keyword or a sign is written with underscores.
 */
final class FeelNames {

  private static final Set<String> KEYWORDS =
      Set.of(
          "and",
          "at",
          "between",
          "context",
          "date",
          "days",
          "duration",
          "else",
          "every",
          "external",
          "false",
          "for",
          "function",
          "if",
          "in",
          "instance",
          "item",
          "list",
          "months",
          "not",
          "null",
          "of",
          "or",
          "partial",
          "range",
          "return",
          "satisfies",
          "some",
          "then",
          "time",
          "true",
          "years");

  /** Built-in functions that the export itself calls, and those with the shortest names. */
  private static final Set<String> FUNCTIONS =
      Set.of(
          "append",
          "before",
          "concatenate",
          "count",
          "day",
          "exp",
          "includes",
          "log",
          "mean",
          "median",
          "meets",
          "mode",
          "modulo",
          "month",
          "now",
          "number",
          "odd",
          "even",
          "overlaps",
          "product",
          "remove",
          "reverse",
          "sort",
          "starts",
          "stddev",
          "string",
          "substring",
          "sum",
          "today",
          "union",
          "year",
          "all",
          "any",
          "after",
          "finishes",
          "coincides",
          "during",
          "flatten",
          "is",
          "matches",
          "replace",
          "split",
          "sublist");

  private static final Pattern PLAIN = Pattern.compile("\\p{L}[\\p{L}\\p{Mn}\\p{Nd}]*");
  private static final Pattern PART = Pattern.compile("[\\p{L}\\p{Mn}\\p{Nd}]+");
  private static final Pattern OTHER = Pattern.compile("[^\\p{L}\\p{Mn}\\p{Nd}]+");

  private final Set<String> taken = new HashSet<>();
  private final Set<String> reserved = new HashSet<>(FUNCTIONS);

  FeelNames() {
    StandardFunctions.all().stream().map(FormulaFunction::name).forEach(reserved::add);
  }

  /** A name for the thing, different from all names given before, whatever their capitals. */
  String of(String plainName) {
    String name = readable(plainName.strip());
    String unique = name;
    for (int i = 2; !taken.add(unique.toLowerCase(Locale.ROOT)); i++) {
      unique = name + "_" + i;
    }
    return unique;
  }

  private String readable(String name) {
    List<String> words = List.of(name.split(" +"));
    boolean plain =
        PLAIN.matcher(words.get(0)).matches()
            && words.stream().allMatch(word -> PART.matcher(word).matches())
            && words.stream().noneMatch(FeelNames::isKeyword)
            && !reserved.contains(name.toLowerCase(Locale.ROOT));
    if (plain) {
      return String.join(" ", words);
    }
    String joined = OTHER.matcher(name).replaceAll("_").replaceAll("^_|_$", "");
    boolean needsMark =
        joined.isEmpty()
            || !Character.isLetter(joined.codePointAt(0))
            || isKeyword(joined)
            || reserved.contains(joined.toLowerCase(Locale.ROOT));
    return needsMark ? "the_" + joined : joined;
  }

  private static boolean isKeyword(String word) {
    return KEYWORDS.contains(word.toLowerCase(Locale.ROOT));
  }
}
