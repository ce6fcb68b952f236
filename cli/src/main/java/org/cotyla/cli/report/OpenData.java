package org.cotyla.cli.report;

import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.cotyla.evaluate.Recommendation;
import org.cotyla.expression.Symbol;
import org.cotyla.finding.Datum;
import org.cotyla.finding.Datum.Knowledge;
import org.cotyla.protocol.Protocol;
import org.cotyla.protocol.Step;

/**
 * The data that are not known and from which something is worked out, directly or through others.
 */
final class OpenData {

  private OpenData() {}

  /** Their names, in the order of the protocol; data of a later stage are not asked for yet. */
  static List<String> under(Recommendation advice, Collection<Symbol> names) {
    Set<Symbol> needed = needed(advice.protocol(), names);
    return advice.findings().data().stream()
        .filter(datum -> needed.contains(datum.field().symbol()) && isOpen(datum))
        .map(datum -> datum.field().name())
        .toList();
  }

  private static boolean isOpen(Datum datum) {
    return datum.knowledge() == Knowledge.MISSING || datum.knowledge() == Knowledge.PARTLY;
  }

  private static Set<Symbol> needed(Protocol protocol, Collection<Symbol> names) {
    Set<Symbol> needed = new HashSet<>(names);
    List<Step> steps = protocol.steps();
    for (int i = steps.size() - 1; i >= 0; i--) {
      if (steps.get(i).gives().stream().anyMatch(needed::contains)) {
        needed.addAll(steps.get(i).needs());
      }
    }
    return needed;
  }
}
