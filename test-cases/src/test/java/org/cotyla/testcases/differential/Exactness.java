package org.cotyla.testcases.differential;

import java.math.BigDecimal;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.cotyla.evaluate.DecisionResult;
import org.cotyla.evaluate.Firing;
import org.cotyla.evaluate.RankingResult;
import org.cotyla.evaluate.Recommendation;
import org.cotyla.testcases.differential.PlainInterpreter.World;
import org.cotyla.value.PossibleValues;
import org.cotyla.value.Value;

/** How often the engine says no more than is so, where it must not say less. */
final class Exactness {

  private int rows;
  private int rowsExact;
  private int firsts;
  private int firstsExact;
  private int decisions;
  private int decisionsExact;

  /** Counts rows that may match, first places that are open, and results that are open. */
  void count(Recommendation advice, List<World> worlds) {
    for (DecisionResult result : advice.decisions()) {
      String table = result.table().name();
      for (Firing firing : result.firings()) {
        if (!firing.certain()) {
          rows++;
          long matching =
              worlds.stream()
                  .filter(w -> w.decisions().get(table).matching().contains(firing.row()))
                  .count();
          rowsExact += matching > 0 && matching < worlds.size() ? 1 : 0;
        }
      }
      result
          .outputs()
          .forEach(
              (name, value) -> {
                if (!value.isCertain()) {
                  decisions++;
                  Set<Object> met = new HashSet<>();
                  worlds.forEach(
                      w ->
                          met.add(
                              text(new TreeMap<>(w.decisions().get(table).outputs()).get(name))));
                  boolean exact = isFinite(value) ? met.equals(texts(value)) : met.size() > 1;
                  decisionsExact += exact ? 1 : 0;
                }
              });
    }
    for (RankingResult result : advice.rankings()) {
      if (!result.firstIsCertain()) {
        firsts++;
        Set<Object> met = new HashSet<>();
        worlds.forEach(w -> met.add(text(w.rankings().get(result.ranking().name()).first())));
        firstsExact += met.equals(texts(result.first())) ? 1 : 0;
      }
    }
  }

  private static boolean isFinite(PossibleValues value) {
    return value.values().isFinite();
  }

  private static Set<Object> texts(PossibleValues value) {
    Set<Object> texts = new HashSet<>();
    for (Value one : value.values().values()) {
      texts.add(text(PlainFormulas.plain(one)));
    }
    if (value.orNothing()) {
      texts.add(text(null));
    }
    return texts;
  }

  static String text(Object plain) {
    if (plain instanceof BigDecimal number) {
      return Value.of(number).plain();
    }
    if (plain instanceof Map<?, ?> outputs) {
      StringBuilder text = new StringBuilder();
      outputs.forEach(
          (name, value) -> text.append(name).append('=').append(text(value)).append(';'));
      return text.toString();
    }
    return String.valueOf(plain);
  }

  /** The share of everything counted that is exact. */
  double share() {
    return (double) (rowsExact + firstsExact + decisionsExact) / (rows + firsts + decisions);
  }

  void print() {
    java.util.logging.Logger.getLogger(Exactness.class.getName()).info(this::toString);
  }

  @Override
  public String toString() {
    return String.format(
        Locale.ROOT,
        "of what is said to be open, brute force finds open: rows %d of %d, results %d of %d,"
            + " first places %d of %d: %.1f %% in all",
        rowsExact,
        rows,
        decisionsExact,
        decisions,
        firstsExact,
        firsts,
        100 * share());
  }
}
