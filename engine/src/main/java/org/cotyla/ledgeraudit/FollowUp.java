package org.cotyla.ledgeraudit;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import org.cotyla.audit.OutcomeCurve;
import org.cotyla.audit.Survival;
import org.cotyla.ledger.Choice;
import org.cotyla.ledger.Content;
import org.cotyla.protocol.Counts;

/**
 * Follows decisions to what came of them. Each decision is followed to the last that is known of
 * it, the next decision of its case or the end of the period, and to the event when that came by
 * then.
 */
final class FollowUp {

  private final Map<Long, Content.Decision> decisions = new LinkedHashMap<>();
  private final Map<Long, List<Content.Outcome>> outcomes = new LinkedHashMap<>();

  /** Takes a decision, in the order of the ledger, which need not be that of their days. */
  void decided(long entry, Content.Decision decision) {
    decisions.put(entry, decision);
  }

  void cameOf(Content.Outcome outcome) {
    outcomes.computeIfAbsent(outcome.decision(), any -> new ArrayList<>()).add(outcome);
  }

  /** The curves of the decisions from a day to a day, by ranking, option and outcome. */
  List<OutcomeCurve> curves(LocalDate from, LocalDate to) {
    Map<Long, LocalDate> replaced = replaced();
    List<Long> within =
        decisions.entrySet().stream()
            .filter(entry -> !entry.getValue().day().isBefore(from))
            .filter(entry -> !entry.getValue().day().isAfter(to))
            .map(Map.Entry::getKey)
            .toList();
    TreeSet<String> names = new TreeSet<>();
    for (long entry : within) {
      outcomes(entry, to).stream()
          .filter(outcome -> outcome.counts() == Counts.EVENT)
          .forEach(outcome -> names.add(outcome.outcome()));
    }
    List<OutcomeCurve> curves = new ArrayList<>();
    for (String name : names) {
      SortedMap<String, SortedMap<String, List<Survival.Followed>>> groups = new TreeMap<>();
      for (long entry : within) {
        Content.Decision decision = decision(entry);
        Survival.Followed followed = followed(entry, decision, name, end(entry, replaced, to));
        for (Choice choice : decision.choices()) {
          groups
              .computeIfAbsent(choice.ranking(), any -> new TreeMap<>())
              .computeIfAbsent(choice.option(), any -> new ArrayList<>())
              .add(followed);
        }
      }
      groups.forEach(
          (ranking, options) ->
              options.forEach(
                  (option, followed) ->
                      curves.add(new OutcomeCurve(ranking, option, name, Survival.of(followed)))));
    }
    return curves;
  }

  private Content.Decision decision(long entry) {
    return Optional.ofNullable(decisions.get(entry)).orElseThrow();
  }

  private List<Content.Outcome> outcomes(long entry, LocalDate to) {
    return outcomes.getOrDefault(entry, List.of()).stream()
        .filter(outcome -> !outcome.day().isAfter(to))
        .toList();
  }

  /** The day on which each decision was followed by the next of its case. */
  private Map<Long, LocalDate> replaced() {
    Map<String, Map.Entry<Long, Content.Decision>> last = new HashMap<>();
    Map<Long, LocalDate> replaced = new HashMap<>();
    decisions.entrySet().stream()
        .sorted(
            Comparator.comparing(
                    (Map.Entry<Long, Content.Decision> entry) -> entry.getValue().day())
                .thenComparing(Map.Entry::getKey))
        .forEach(
            entry -> {
              Map.Entry<Long, Content.Decision> before =
                  last.put(entry.getValue().caseReference(), entry);
              if (before != null) {
                replaced.put(before.getKey(), entry.getValue().day());
              }
            });
    return replaced;
  }

  private Survival.Followed followed(
      long entry, Content.Decision decision, String outcome, LocalDate end) {
    Optional<LocalDate> event =
        outcomes(entry, end).stream()
            .filter(came -> came.counts() == Counts.EVENT && came.outcome().equals(outcome))
            .map(Content.Outcome::day)
            .min(LocalDate::compareTo);
    return new Survival.Followed(
        ChronoUnit.DAYS.between(decision.day(), event.orElse(end)), event.isPresent());
  }

  /** The last day on which something could be observed of a decision. */
  private LocalDate end(long entry, Map<Long, LocalDate> replaced, LocalDate to) {
    LocalDate end =
        outcomes(entry, to).stream()
            .filter(came -> came.counts() == Counts.CENSORING)
            .map(Content.Outcome::day)
            .min(LocalDate::compareTo)
            .orElse(to);
    LocalDate next = replaced.get(entry);
    return next != null && next.isBefore(end) ? next : end;
  }
}
