package org.cotyla.protocol;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.cotyla.name.Names;

/** Where a decision's result is shown. */
public enum ShownAs {
  /** On the first page, with its reason. */
  HEADLINE,
  /** On the first page, as a list under the decision's name. */
  LIST,
  /** Only in the detail. */
  WORKING;

  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  public static Optional<ShownAs> of(String word) {
    return Arrays.stream(values())
        .filter(shown -> Names.key(shown.word()).equals(Names.key(word)))
        .findFirst();
  }

  public static List<String> words() {
    return Arrays.stream(values()).map(ShownAs::word).toList();
  }
}
