package org.cotyla.audit;

import java.io.Serializable;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Decisions added up: counts by month, role, option and so on, and no single decision.
 *
 * <p>Totals may be gathered in parts, anywhere and in any order: the merged totals are the same. So
 * that they stay small whatever they are given, a table of more than {@link #MOST_VALUES} different
 * values is counted under {@link #TOO_MANY} as a whole, which does not hang on the order either.
 *
 * <p>Adding changes the totals; one instance belongs to one thread at a time.
 */
public final class AuditTotals implements Serializable {

  private static final long serialVersionUID = 1;

  /** The ranking that stands for the decision as a whole, with the worst of its verdicts. */
  public static final String WHOLE = "";

  /** The one value of {@link Dimension#ALL}. */
  public static final String ALL = "all";

  /** Above this many different values a table is counted as a whole. */
  public static final int MOST_VALUES = 1000;

  /** What a table is counted under when it has too many different values. */
  public static final String TOO_MANY = "more than " + MOST_VALUES + " different values";

  private static final int MOST_MISSING = 20;

  private static final Comparator<Table> ORDER =
      Comparator.comparing(Table::dimension)
          .thenComparing(Table::ranking)
          .thenComparing(Table::name);

  private final Map<Table, SortedMap<String, Tally>> tables = new HashMap<>();

  /**
   * What is counted together.
   *
   * @param ranking the ranking, {@link #WHOLE} for the decision as a whole
   * @param name the group's or row's name; empty for the other dimensions
   */
  private record Table(Dimension dimension, String ranking, String name) implements Serializable {}

  /** One line of the totals as plain data. */
  public record Count(
      Dimension dimension, String ranking, String name, String value, Tally tally) {}

  /** The totals of plain data. */
  public static AuditTotals of(Iterable<Count> counts) {
    AuditTotals totals = new AuditTotals();
    counts.forEach(
        count ->
            totals.count(
                new Table(count.dimension(), count.ranking(), count.name()),
                count.value(),
                count.tally()));
    return totals;
  }

  /** Adds a decision, and gives these totals. */
  public AuditTotals add(JudgedDecision decision) {
    Tally whole = Tally.of(decision.whole());
    add(decision, WHOLE, whole);
    decision
        .missing()
        .forEach(
            (datum, decisive) -> {
              count(new Table(Dimension.DATUM, WHOLE, ""), datum, whole);
              if (decisive) {
                count(new Table(Dimension.DECISIVE_DATUM, WHOLE, ""), datum, whole);
              }
            });
    for (Judgement judgement : decision.judgements()) {
      Tally one = Tally.of(Optional.of(judgement.verdict()));
      String ranking = judgement.ranking();
      add(decision, ranking, one);
      Table options = new Table(Dimension.OPTION, ranking, "");
      // What nobody chose shows as nothing, and not as if it were no option.
      judgement.options().forEach(option -> count(options, option, Tally.NONE));
      count(options, judgement.chosen(), one);
      judgement
          .first()
          .ifPresent(first -> count(new Table(Dimension.ADVISED, ranking, ""), first, one));
      for (String row : new TreeSet<>(judgement.rows())) {
        count(new Table(Dimension.ROW, ranking, ""), row, one);
        if (one.departed() > 0) {
          count(new Table(Dimension.ROW_REASON, ranking, row), reason(decision), one);
        }
      }
    }
    return this;
  }

  private void add(JudgedDecision decision, String ranking, Tally one) {
    count(new Table(Dimension.ALL, ranking, ""), ALL, one);
    String month =
        decision
            .day()
            .map(day -> YearMonth.from(day).toString())
            .orElse(JudgedDecision.NOT_RECORDED);
    count(new Table(Dimension.MONTH, ranking, ""), month, one);
    count(new Table(Dimension.ROLE, ranking, ""), decision.role(), one);
    count(new Table(Dimension.PROTOCOL, ranking, ""), decision.protocolVersion(), one);
    count(new Table(Dimension.STANDING, ranking, ""), decision.standing(), one);
    count(new Table(Dimension.MISSING, ranking, ""), missing(decision.missing().size()), one);
    decision
        .groups()
        .forEach((group, value) -> count(new Table(Dimension.GROUP, ranking, group), value, one));
    if (one.departed() > 0) {
      count(new Table(Dimension.REASON, ranking, ""), reason(decision), one);
    }
  }

  private static String reason(JudgedDecision decision) {
    return decision.reason().orElse(JudgedDecision.NOT_RECORDED);
  }

  /** With leading space, so that the numbers stand in order. */
  private static String missing(int count) {
    return count < MOST_MISSING
        ? String.format(Locale.ROOT, "%2d", count)
        : MOST_MISSING + " or more";
  }

  private void count(Table table, String value, Tally tally) {
    SortedMap<String, Tally> values = tables.computeIfAbsent(table, any -> new TreeMap<>());
    values.merge(values.containsKey(TOO_MANY) ? TOO_MANY : value, tally, Tally::plus);
    boolean tooMany = value.equals(TOO_MANY) && values.size() > 1;
    if (tooMany || values.size() > MOST_VALUES) {
      Tally all = values.values().stream().reduce(Tally.NONE, Tally::plus);
      values.clear();
      values.put(TOO_MANY, all);
    }
  }

  /** The totals of both; neither is changed. */
  public AuditTotals merge(AuditTotals other) {
    List<Count> both = new ArrayList<>(counts());
    both.addAll(other.counts());
    return of(both);
  }

  /** All of it as plain data, in a fixed order. */
  public List<Count> counts() {
    List<Count> counts = new ArrayList<>();
    tables.entrySet().stream()
        .sorted(Map.Entry.comparingByKey(ORDER))
        .forEach(
            entry -> {
              Table table = entry.getKey();
              entry
                  .getValue()
                  .forEach(
                      (value, tally) ->
                          counts.add(
                              new Count(
                                  table.dimension(), table.ranking(), table.name(), value, tally)));
            });
    return counts;
  }

  /** All decisions, in this ranking. */
  public Tally all(String ranking) {
    return by(Dimension.ALL, ranking, "").getOrDefault(ALL, Tally.NONE);
  }

  /** The counts by the values of a dimension. */
  public SortedMap<String, Tally> by(Dimension dimension, String ranking, String name) {
    SortedMap<String, Tally> found = tables.get(new Table(dimension, ranking, name));
    return found == null
        ? Collections.emptySortedMap()
        : Collections.unmodifiableSortedMap(new TreeMap<>(found));
  }

  /** The rankings that were judged, in the order of the alphabet. */
  public List<String> rankings() {
    return tables.keySet().stream()
        .filter(table -> table.dimension() == Dimension.ALL && !table.ranking().equals(WHOLE))
        .map(Table::ranking)
        .sorted()
        .toList();
  }

  /** The names of the groups that were counted, in the order of the alphabet. */
  public List<String> groups() {
    return tables.keySet().stream()
        .filter(table -> table.dimension() == Dimension.GROUP && table.ranking().equals(WHOLE))
        .map(Table::name)
        .sorted()
        .toList();
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof AuditTotals totals && tables.equals(totals.tables);
  }

  @Override
  public int hashCode() {
    return tables.hashCode();
  }
}
