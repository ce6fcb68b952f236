package org.cotyla.protocol;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.cotyla.name.Names;

/**
 * How certain a source is: the levels of the GRADE Working Group, and three honest words below
 * them.
 */
public enum Certainty {
  HIGH,
  MODERATE,
  LOW,
  VERY_LOW,
  /** Widely done, no published source. */
  COMMON_PRACTICE,
  /** What this department thinks. */
  HOUSE_OPINION,
  /** Remembered; the source has still to be looked up. */
  FROM_MEMORY;

  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  public static Optional<Certainty> of(String word) {
    return Arrays.stream(values())
        .filter(certainty -> Names.key(certainty.word()).equals(Names.key(word)))
        .findFirst();
  }

  public static List<String> words() {
    return Arrays.stream(values()).map(Certainty::word).toList();
  }
}
