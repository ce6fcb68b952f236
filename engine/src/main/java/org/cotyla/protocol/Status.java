package org.cotyla.protocol;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.cotyla.name.Names;

/** Where a protocol is in its life. */
public enum Status {
  DRAFT,
  IN_FORCE,
  SUPERSEDED,
  WITHDRAWN;

  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  public static Optional<Status> of(String word) {
    return Arrays.stream(values())
        .filter(status -> Names.key(status.word()).equals(Names.key(word)))
        .findFirst();
  }

  public static List<String> words() {
    return Arrays.stream(values()).map(Status::word).toList();
  }
}
