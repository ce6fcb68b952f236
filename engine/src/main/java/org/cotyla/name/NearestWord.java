package org.cotyla.name;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.apache.commons.text.similarity.LevenshteinDistance;

/** The valid word that is nearest to a wrong one, for the help line of a fault. */
public final class NearestWord {

  private static final int LISTED_AT_MOST = 12;

  private NearestWord() {}

  /** The nearest word within a third of the wrong word's length (at least 2 changes), if any. */
  public static Optional<String> to(String wrong, Collection<String> valid) {
    String key = Names.key(wrong);
    int limit = Math.max(2, key.length() / 3);
    LevenshteinDistance distance = new LevenshteinDistance(limit);
    record Scored(String word, int steps) {}
    return valid.stream()
        .map(word -> new Scored(word, distance.apply(key, Names.key(word))))
        .filter(scored -> scored.steps() >= 0 && scored.steps() < key.length())
        .min(Comparator.comparingInt(Scored::steps).thenComparing(Scored::word))
        .map(Scored::word);
  }

  /** Whether at most so many letters must be changed, added or left out to get the other word. */
  public static boolean isWithin(int changes, String word, String other) {
    return new LevenshteinDistance(changes).apply(word, other) >= 0;
  }

  /** A help line: the nearest word, then what is valid when that is a short list. */
  public static String help(String wrong, Collection<String> valid) {
    Optional<String> nearest = to(wrong, valid);
    String list = valid.size() <= LISTED_AT_MOST ? String.join(", ", valid) : shortList(valid);
    return nearest
        .map(word -> "did you mean `" + word + "`?" + (list.isEmpty() ? "" : " (" + list + ")"))
        .orElse(list.isEmpty() ? "nothing is defined here" : "expected one of: " + list);
  }

  private static String shortList(Collection<String> valid) {
    List<String> first = valid.stream().limit(LISTED_AT_MOST).collect(Collectors.toList());
    return String.join(", ", first) + ", and " + (valid.size() - LISTED_AT_MOST) + " more";
  }
}
