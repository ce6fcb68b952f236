package org.cotyla.protocol;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.cotyla.name.Names;

/** How an outcome counts in a reckoning over time. */
public enum Counts {
  /** Something that happened, which may happen again. */
  EVENT,
  /** The last that is known; nothing can be observed after it. */
  CENSORING;

  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  public static Optional<Counts> of(String word) {
    return Arrays.stream(values())
        .filter(counts -> Names.key(counts.word()).equals(Names.key(word)))
        .findFirst();
  }

  public static List<String> words() {
    return Arrays.stream(values()).map(Counts::word).toList();
  }

  @Override
  public String toString() {
    return word();
  }
}
