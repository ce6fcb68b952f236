package org.cotyla.protocol;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.cotyla.name.Names;

/** What a row does to an option. */
public enum Effect {
  /** Adds its points. */
  FAVOUR,
  /** Takes its points away. */
  OPPOSE,
  /** Bars the option, whatever its points. */
  RULE_OUT;

  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  public static Optional<Effect> of(String word) {
    return Arrays.stream(values())
        .filter(effect -> Names.key(effect.word()).equals(Names.key(word)))
        .findFirst();
  }

  public static List<String> words() {
    return Arrays.stream(values()).map(Effect::word).toList();
  }
}
