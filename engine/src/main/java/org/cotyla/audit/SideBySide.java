package org.cotyla.audit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The same decisions as two protocols judge them, line by line.
 *
 * @param ranking the ranking, {@link AuditTotals#WHOLE} for the decision as a whole
 * @param by what they are parted by, in words; empty for all together
 * @param value what the decisions of the line have in common
 * @param one how the first protocol judges them; nothing where it has no such line
 * @param other how the second does
 */
public record SideBySide(
    String ranking, String by, String value, Optional<AuditLine> one, Optional<AuditLine> other) {

  /** What is a property of the protocol, and so never the same for two of them, is left out. */
  private static final Set<Dimension> OF_A_PROTOCOL =
      Set.of(Dimension.PROTOCOL, Dimension.STANDING, Dimension.MISSING);

  /** A line's place in both. */
  private record Key(String ranking, String by, String value) {}

  /** Whether the two protocols judge the line's decisions alike. */
  public boolean isAlike() {
    return one.map(AuditLine::tally).equals(other.map(AuditLine::tally));
  }

  /** Both reports, in the order of the first; what only the second has comes last. */
  public static List<SideBySide> of(AuditReport one, AuditReport other) {
    Map<Key, AuditLine> first = lines(one);
    Map<Key, AuditLine> second = lines(other);
    List<Key> keys = new ArrayList<>(first.keySet());
    second.keySet().stream().filter(key -> !first.containsKey(key)).forEach(keys::add);
    return keys.stream()
        .map(
            key ->
                new SideBySide(
                    key.ranking(),
                    key.by(),
                    key.value(),
                    Optional.ofNullable(first.get(key)),
                    Optional.ofNullable(second.get(key))))
        .toList();
  }

  private static Map<Key, AuditLine> lines(AuditReport report) {
    Map<Key, AuditLine> lines = new LinkedHashMap<>();
    for (RankingAudit part : report.parts()) {
      lines.put(new Key(part.ranking(), "", AuditTotals.ALL), part.all());
      for (Breakdown breakdown : part.breakdowns()) {
        if (!OF_A_PROTOCOL.contains(breakdown.by())) {
          String by = AuditTables.name(breakdown);
          breakdown
              .lines()
              .forEach(line -> lines.put(new Key(part.ranking(), by, line.value()), line));
        }
      }
    }
    return lines;
  }
}
