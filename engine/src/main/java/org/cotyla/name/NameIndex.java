package org.cotyla.name;

import java.util.Collection;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;

/** Things by name, found by key or as the longest name at a place in running text. Immutable. */
public final class NameIndex<T> {

  /**
   * A name found in running text.
   *
   * @param what the thing of that name
   * @param end where the text goes on
   */
  public record Found<T>(T what, int end) {}

  private final NavigableMap<String, T> byKey;

  private NameIndex(NavigableMap<String, T> byKey) {
    this.byKey = byKey;
  }

  /** An index of the things by the name that each gives; of two with one key the first is kept. */
  public static <T> NameIndex<T> of(Collection<T> things, Function<T, String> name) {
    NavigableMap<String, T> byKey = new TreeMap<>();
    things.forEach(thing -> byKey.putIfAbsent(Names.key(name.apply(thing)), thing));
    return new NameIndex<>(byKey);
  }

  public Optional<T> find(String name) {
    return Optional.ofNullable(byKey.get(Names.key(name)));
  }

  /**
   * The longest name that starts at the place and ends at the end of a word. A hyphen with a space
   * on both sides is a minus and never part of a name.
   */
  public Optional<Found<T>> longestAt(String text, int start) {
    StringBuilder key = new StringBuilder();
    Optional<Found<T>> longest = Optional.empty();
    for (int i = start; i < text.length(); i++) {
      char c = text.charAt(i);
      if (Names.isSeparator(c)) {
        if (isMinus(text, i)) {
          break;
        }
        continue;
      }
      key.append(Names.key(String.valueOf(c)));
      String soFar = key.toString();
      String next = byKey.ceilingKey(soFar);
      if (next == null || !next.startsWith(soFar)) {
        break;
      }
      T exact = byKey.get(soFar);
      if (exact != null && endsWord(text, i)) {
        longest = Optional.of(new Found<>(exact, i + 1));
      }
    }
    return longest;
  }

  private static boolean isMinus(String text, int i) {
    return Names.isDash(text.charAt(i))
        && i > 0
        && Character.isWhitespace(text.charAt(i - 1))
        && i + 1 < text.length()
        && Character.isWhitespace(text.charAt(i + 1));
  }

  private static boolean endsWord(String text, int last) {
    if (last + 1 == text.length()) {
      return true;
    }
    char next = text.charAt(last + 1);
    return !Character.isLetterOrDigit(next)
        && Character.getType(next) != Character.NON_SPACING_MARK;
  }
}
