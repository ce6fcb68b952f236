package org.cotyla.protocol;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.cotyla.name.Names;

/** The words under {@code must} in the sheet Safeguards. */
public enum DemandWord {
  /** What follows is an option. */
  NEVER_COME_FIRST,
  /** What follows is an option. */
  BE_RULED_OUT,
  /** What follows is the id of a row, or the exact text of a result. */
  BE_SHOWN,
  /** What follows is a name, a colon and a test. */
  HOLD;

  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  public static Optional<DemandWord> of(String word) {
    return Arrays.stream(values())
        .filter(demand -> Names.key(demand.word()).equals(Names.key(word)))
        .findFirst();
  }

  public static List<String> words() {
    return Arrays.stream(values()).map(DemandWord::word).toList();
  }
}
