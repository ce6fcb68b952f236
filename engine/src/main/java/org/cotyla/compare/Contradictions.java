package org.cotyla.compare;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.cotyla.finite.Claim;
import org.cotyla.finite.Claim.Weighted;
import org.cotyla.protocol.DecisionTable;
import org.cotyla.protocol.HitPolicy;
import org.cotyla.protocol.Row;

/** When rows of a table match together that its hit policy does not allow. */
final class Contradictions {

  private Contradictions() {}

  /** True of the cases in which the table contradicts itself; nothing when it never can. */
  static Optional<Claim> of(DecisionTable table, Side side) {
    boolean unique = table.hitPolicy() == HitPolicy.UNIQUE;
    if (!unique && table.hitPolicy() != HitPolicy.ANY) {
      return Optional.empty();
    }
    Map<Object, List<Claim>> together = new LinkedHashMap<>();
    for (Row row : table.rows()) {
      Object says = unique ? row : CanonicalTable.row(table, row, side).results();
      together.computeIfAbsent(says, same -> new ArrayList<>()).add(new Claim.Matches(table, row));
    }
    List<Weighted> each =
        together.values().stream()
            .map(rows -> new Weighted(new Claim.Any(rows), BigDecimal.ONE))
            .toList();
    return each.size() < 2
        ? Optional.empty()
        : Optional.of(new Claim.Of(side.number(), new Claim.AddUpTo(each, BigDecimal.valueOf(2))));
  }
}
