package org.cotyla.expression;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.cotyla.name.Names;
import org.cotyla.name.NearestWord;

/**
 * A longer name that may be meant where a cell goes on, without a sign between, behind a name that
 * was read: {@code crp limitt} is the name {@code crp} and a word too many.
 */
final class MisspeltName {

  private static final Pattern WORD = Pattern.compile("\\G\\s*[\\p{L}\\p{N}\\p{M}_'’]+");

  private MisspeltName() {}

  /** The fault, with the name that may be meant, or else with other advice. */
  static ExpressionException fault(
      Cursor cursor, Vocabulary vocabulary, String message, Optional<String> otherwise) {
    return new ExpressionException(
        message,
        meant(cursor, vocabulary).map(name -> "did you mean `" + name + "`?").or(() -> otherwise));
  }

  /** The name nearest to the words read and as many of those that follow as it takes. */
  private static Optional<String> meant(Cursor cursor, Vocabulary vocabulary) {
    Optional<String> read = cursor.nameBefore();
    // A number behind a name is more likely one too many than part of a name.
    if (read.isEmpty() || !Character.isLetter(cursor.peek())) {
      return Optional.empty();
    }
    String key = Names.key(read.get());
    List<String> longer =
        vocabulary.names().stream()
            .filter(name -> Names.key(name).startsWith(key) && !Names.key(name).equals(key))
            .toList();
    StringBuilder words = new StringBuilder(read.get());
    Optional<String> meant = Optional.empty();
    Matcher following = WORD.matcher(cursor.text()).region(cursor.at(), cursor.text().length());
    while (meant.isEmpty() && following.find()) {
      words.append(following.group());
      meant = NearestWord.to(words.toString(), longer);
    }
    return meant;
  }
}
