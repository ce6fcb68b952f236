package org.cotyla.ledgeraudit;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
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
 * Follows decisions to what came of them. Each decision is followed to the event, or else to the
 * last that is known of it, the next decision of its case or the end of the period.
 */
final class FollowUp {

  private final Map<Long, Content.Decision> decisions = new LinkedHashMap<>();
  private final Map<String, Long> last = new LinkedHashMap<>();
  private final Map<Long, LocalDate> replaced = new LinkedHashMap<>();
  private final Map<Long, List<Content.Outcome>> outcomes = new LinkedHashMap<>();

  /** Takes a decision; those of one case in the order of the ledger. */
  void decided(long entry, Content.Decision decision) {
    Long before = last.put(decision.caseReference(), entry);
    if (before != null) {
      replaced.put(before, decision.day());
    }
    decisions.put(entry, decision);
  }

  void cameOf(Content.Outcome outcome) {
    outcomes.computeIfAbsent(outcome.decision(), any -> new ArrayList<>()).add(outcome);
  }

  /** The curves of the decisions from a day to a day, by ranking, option and outcome. */
  List<OutcomeCurve> curves(LocalDate from, LocalDate to) {
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
        Survival.Followed followed = followed(entry, decision, name, to);
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

  private Survival.Followed followed(
      long entry, Content.Decision decision, String outcome, LocalDate to) {
    Optional<LocalDate> event =
        outcomes(entry, to).stream()
            .filter(came -> came.counts() == Counts.EVENT && came.outcome().equals(outcome))
            .map(Content.Outcome::day)
            .min(LocalDate::compareTo);
    LocalDate end = event.orElseGet(() -> end(entry, decision, to));
    return new Survival.Followed(
        Math.max(0, ChronoUnit.DAYS.between(decision.day(), end)), event.isPresent());
  }

  private LocalDate end(long entry, Content.Decision decision, LocalDate to) {
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
