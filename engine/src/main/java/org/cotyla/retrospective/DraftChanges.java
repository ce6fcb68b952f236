package org.cotyla.retrospective;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import org.cotyla.audit.JudgedDecision;
import org.cotyla.audit.Judgement;
import org.cotyla.audit.Verdict;

/**
 * What another protocol, most often a draft, judges otherwise: counts, and the first few cases.
 * Gathered in parts like the totals, the merged changes are the same in any order.
 */
public final class DraftChanges {

  static final int MOST_EXAMPLES = 10;

  /** What is counted. */
  public enum Kind {
    /** Cases that both judged. */
    COMPARED("judged by both"),
    /** Cases that the draft refuses; the value is the reason. */
    REFUSED("refused by the other"),
    /** Another option stands first; the value is from and to. */
    FIRST("another first"),
    /** What was done is judged otherwise; the value is from and to. */
    VERDICT("another verdict"),
    /** A row that speaks in one of the two only, in cases that are judged otherwise. */
    ROW("row");

    private final String words;

    Kind(String words) {
      this.words = words;
    }

    public String words() {
      return words;
    }
  }

  /** What is counted together. */
  record Key(Kind kind, String ranking, String value) implements Comparable<Key> {
    @Override
    public int compareTo(Key other) {
      return Comparator.comparing(Key::kind)
          .thenComparing(Key::ranking)
          .thenComparing(Key::value)
          .compare(this, other);
    }
  }

  /** A case that is judged otherwise. */
  public record Example(long row, String ranking, String reference, String change) {}

  private static final int MOST_REASONS = 200;
  private static final String OTHER_REASONS = "other reasons";
  private static final Comparator<Example> ORDER =
      Comparator.comparingLong(Example::row).thenComparing(Example::ranking);

  private final SortedMap<Key, Long> counts = new TreeMap<>();
  private final List<Example> examples = new ArrayList<>();

  void compare(long row, JudgedDecision now, JudgedDecision draft) {
    for (Judgement before : now.judgements()) {
      draft.judgements().stream()
          .filter(after -> after.ranking().equals(before.ranking()))
          .findFirst()
          .ifPresentOrElse(
              after -> compare(row, now.reference(), before, after),
              () -> refused("it has no ranking `" + before.ranking() + "`"));
    }
  }

  private void compare(long row, String reference, Judgement before, Judgement after) {
    String ranking = before.ranking();
    add(new Key(Kind.COMPARED, ranking, ""), 1);
    String first = change(before.first().orElse("none"), after.first().orElse("none"));
    String verdict = change(before.verdict().word(), after.verdict().word());
    if (!first.isEmpty()) {
      add(new Key(Kind.FIRST, ranking, first), 1);
    }
    if (!verdict.isEmpty()) {
      add(new Key(Kind.VERDICT, ranking, verdict), 1);
    }
    if (first.isEmpty() && verdict.isEmpty()) {
      return;
    }
    for (String id : new TreeSet<>(after.rows())) {
      if (!before.rows().contains(id)) {
        add(new Key(Kind.ROW, ranking, id + " speaks only in the draft"), 1);
      }
    }
    for (String id : new TreeSet<>(before.rows())) {
      if (!after.rows().contains(id)) {
        add(new Key(Kind.ROW, ranking, id + " speaks no longer"), 1);
      }
    }
    String what =
        "chosen "
            + before.chosen()
            + (first.isEmpty() ? "" : "; first " + first)
            + (verdict.isEmpty() ? "" : "; judged " + verdict);
    examples.add(new Example(row, ranking, reference, what));
    trim();
  }

  private static String change(String before, String after) {
    return before.equals(after) ? "" : before + " -> " + after;
  }

  void refused(String reason) {
    Key key = new Key(Kind.REFUSED, "", reason);
    boolean full = !counts.containsKey(key) && values(Kind.REFUSED, "").size() >= MOST_REASONS;
    add(full ? new Key(Kind.REFUSED, "", OTHER_REASONS) : key, 1);
  }

  void add(Key key, long count) {
    counts.merge(key, count, Long::sum);
  }

  void add(Example example) {
    examples.add(example);
    trim();
  }

  /** Of each ranking the first few rows are kept. */
  private void trim() {
    examples.sort(ORDER);
    Map<String, Integer> kept = new TreeMap<>();
    examples.removeIf(example -> kept.merge(example.ranking(), 1, Integer::sum) > MOST_EXAMPLES);
  }

  void addAll(DraftChanges other) {
    other.counts.forEach(this::add);
    examples.addAll(other.examples);
    trim();
  }

  SortedMap<Key, Long> counts() {
    return counts;
  }

  public List<Example> examples() {
    return List.copyOf(examples);
  }

  /** How many of a kind there are in all. */
  public long count(Kind kind, String ranking) {
    return values(kind, ranking).values().stream().mapToLong(Long::longValue).sum();
  }

  /** How many cases come to be judged so that were not, or stop to be. */
  public long verdicts(String ranking, Verdict verdict, boolean newly) {
    String word = verdict.word();
    return values(Kind.VERDICT, ranking).entrySet().stream()
        .filter(
            one ->
                newly ? one.getKey().endsWith("-> " + word) : one.getKey().startsWith(word + " ->"))
        .mapToLong(Map.Entry::getValue)
        .sum();
  }

  /** The counts of a kind by value, in the order of the alphabet. */
  public SortedMap<String, Long> values(Kind kind, String ranking) {
    SortedMap<String, Long> values = new TreeMap<>();
    counts.forEach(
        (key, count) -> {
          if (key.kind() == kind && key.ranking().equals(ranking)) {
            values.put(key.value(), count);
          }
        });
    return values;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof DraftChanges that
        && counts.equals(that.counts)
        && examples.equals(that.examples);
  }

  @Override
  public int hashCode() {
    return counts.hashCode();
  }
}
