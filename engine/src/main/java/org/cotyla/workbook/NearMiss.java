package org.cotyla.workbook;

import java.util.Arrays;
import java.util.Collection;
import java.util.Optional;
import org.cotyla.name.Names;
import org.cotyla.name.NearestWord;

/**
 * Finds the key word that a cell nearly says. Stricter than the help for a wrong name: a heading
 * that people chose themselves ({@code why}, {@code who}) must not be taken for a slip of the pen.
 */
final class NearMiss {

  private static final int SHORT = 5;
  private static final int LONGEST = 60;

  private NearMiss() {}

  /** The word that the text misses by a letter (two in a long word) or by the letters' order. */
  static Optional<String> of(String text, Collection<String> words) {
    if (text.length() > LONGEST) {
      return Optional.empty();
    }
    String key = Names.key(text);
    return words.stream().filter(word -> isNear(key, Names.key(word))).findFirst();
  }

  private static boolean isNear(String text, String word) {
    if (text.equals(word) || word.length() < 3 || text.length() < 3) {
      return false;
    }
    int limit = word.length() <= SHORT ? 1 : 2;
    return NearestWord.isWithin(limit, text, word)
        || (word.length() > 3 && Arrays.equals(sorted(text), sorted(word)));
  }

  private static char[] sorted(String text) {
    char[] letters = text.toCharArray();
    Arrays.sort(letters);
    return letters;
  }
}
