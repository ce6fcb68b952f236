package org.cotyla.compare;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.cotyla.compare.Difference.Kind;
import org.cotyla.expression.Symbol;
import org.cotyla.finite.Claim;
import org.cotyla.protocol.DecisionTable;
import org.cotyla.protocol.HitPolicy;
import org.cotyla.protocol.Row;

/** In what two lists can differ: which entries are there, and in which order. */
final class ListAspects {

  private static final int MOST_ENTRIES_IN_ORDER = 60;

  private final DecisionTable before;
  private final DecisionTable after;
  private final Side old;
  private final Side young;

  ListAspects(DecisionTable before, DecisionTable after, Side old, Side young) {
    this.before = before;
    this.after = after;
    this.old = old;
    this.young = young;
  }

  Aspects aspects() {
    if (before.hitPolicy() != after.hitPolicy()) {
      return Aspects.refused("the two lists put their entries in order in different ways");
    }
    if (after.hitPolicy() == HitPolicy.RULE_ORDER) {
      return inOrderOfRows();
    }
    if (after.hitPolicy() == HitPolicy.OUTPUT_ORDER && !isOrderedByValues()) {
      return Aspects.refused(
          "whether its entries come in the same order cannot be told: its priorities changed,"
              + " or do not settle the order alone");
    }
    return Aspects.of(entries());
  }

  private List<Aspect> entries() {
    Map<String, Claim> was = entries(before, old);
    Map<String, Claim> is = entries(after, young);
    Claim never = new Claim.Any(List.of());
    Set<String> all = new LinkedHashSet<>(was.keySet());
    all.addAll(is.keySet());
    List<Aspect> entries = new ArrayList<>();
    for (String entry : all) {
      entries.add(
          new PresenceAspect(
              entry,
              was.getOrDefault(entry, never),
              is.getOrDefault(entry, never),
              Kind.NEW_ENTRY,
              Kind.GONE_ENTRY));
    }
    return entries;
  }

  private static Map<String, Claim> entries(DecisionTable table, Side side) {
    Map<String, List<Claim>> rows = new LinkedHashMap<>();
    for (Row row : TablePair.rows(table)) {
      String entry = new Entry(table, row, side).words();
      rows.computeIfAbsent(entry, same -> new ArrayList<>()).add(new Claim.Counts(table, row));
    }
    Map<String, Claim> entries = new LinkedHashMap<>();
    rows.forEach(
        (entry, claims) -> entries.put(entry, new Claim.Of(side.number(), new Claim.Any(claims))));
    return entries;
  }

  /** Whether the same entries always come in the same order, since their values alone settle it. */
  private boolean isOrderedByValues() {
    for (int i = 0; i < after.outputs().size(); i++) {
      Symbol output = after.outputs().get(i).symbol();
      boolean samePriorities = before.outputs().get(i).symbol().choices().equals(output.choices());
      if (!output.isChoice() || !samePriorities) {
        return false;
      }
    }
    return true;
  }

  /** With pairs of entries that may come the other way round. */
  private Aspects inOrderOfRows() {
    ListOrder was = new ListOrder(before, old);
    ListOrder is = new ListOrder(after, young);
    List<String> common = was.entries().stream().filter(is.entries()::contains).toList();
    if (common.size() > MOST_ENTRIES_IN_ORDER) {
      return Aspects.refused("it has too many entries for their order to be compared");
    }
    List<Aspect> aspects = entries();
    for (int i = 0; i < common.size(); i++) {
      for (int j = i + 1; j < common.size(); j++) {
        String one = common.get(i);
        String other = common.get(j);
        if (was.mayTurn(one, other) || is.mayTurn(one, other) || !is.startsBefore(one, other)) {
          Claim both = new Claim.All(List.of(was.both(one, other), is.both(one, other)));
          aspects.add(
              new OrderAspect(one, other, was.precedes(one, other), is.precedes(one, other), both));
        }
      }
    }
    return Aspects.of(aspects);
  }
}
