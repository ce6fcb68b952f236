package org.cotyla.ledgeraudit;

import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.cotyla.audit.AgainstRuleOut;
import org.cotyla.audit.AuditReport;
import org.cotyla.audit.AuditSource;
import org.cotyla.audit.AuditTotals;
import org.cotyla.audit.JudgedDecision;
import org.cotyla.audit.Judgement;
import org.cotyla.audit.Verdict;
import org.cotyla.ledger.Content;
import org.cotyla.ledger.Entry;
import org.cotyla.ledger.Governance;
import org.cotyla.ledger.LedgerSource;
import org.cotyla.ledger.Life;

/**
 * Audits the decisions of a ledger over a period. Each decision is held against the latest
 * recommendation for its case that was recorded before it and not of a later day, which after a
 * re-plan in theatre is the re-plan. Used once.
 */
public final class LedgerAudit {

  private final Optional<LocalDate> from;
  private final Optional<LocalDate> to;
  private final Consumer<JudgedDecision> each;

  private final AuditTotals totals = new AuditTotals();
  private final Noted noted = new Noted();
  private final FollowUp followUp = new FollowUp();
  private final Map<String, List<Advised>> advised = new HashMap<>();
  private final Map<String, String> undecided = new LinkedHashMap<>();
  private final List<AgainstRuleOut> againstRuleOuts = new ArrayList<>();
  private Governance governance = Governance.NONE;
  private LocalDate lastDay = LocalDate.MIN;
  private Optional<Entry> head = Optional.empty();

  /**
   * @param from the first day, of the decisions; from the start when absent
   * @param to the last day, of decisions and outcomes; to the last day on record when absent
   */
  public LedgerAudit(Optional<LocalDate> from, Optional<LocalDate> to) {
    this(from, to, judged -> {});
  }

  /** With somebody who is handed each decision as it was judged, in the order of the ledger. */
  public LedgerAudit(
      Optional<LocalDate> from, Optional<LocalDate> to, Consumer<JudgedDecision> each) {
    this.from = from;
    this.to = to;
    this.each = each;
  }

  /**
   * The report.
   *
   * @throws org.cotyla.ledger.UnreadableEntryException when the text of an entry cannot be read
   */
  public AuditReport of(LedgerSource ledger) {
    try (Stream<Entry> entries = ledger.entries()) {
      entries.forEach(this::take);
    }
    undecided.forEach(
        (reference, any) -> noted.add("advised in the period, no decision", reference));
    LocalDate until = to.orElse(lastDay);
    return AuditReport.of(
        source(until),
        totals,
        noted.list(),
        againstRuleOuts,
        followUp.curves(from.orElse(LocalDate.MIN), until));
  }

  private void take(Entry entry) {
    head = Optional.of(entry);
    governance = governance.with(entry);
    seen(entry.time().atOffset(ZoneOffset.UTC).toLocalDate());
    Content content = entry.content();
    if (content instanceof Content.Recommendation recommendation) {
      seen(recommendation.day());
      advised
          .computeIfAbsent(recommendation.caseReference(), any -> new ArrayList<>())
          .add(Advised.of(entry.sequence(), recommendation));
      if (isWithin(recommendation.day())) {
        undecided.put(recommendation.caseReference(), "");
      }
    } else if (content instanceof Content.Decision decision) {
      seen(decision.day());
      undecided.remove(decision.caseReference());
      followUp.decided(entry.sequence(), decision);
      if (isWithin(decision.day())) {
        judge(entry.sequence(), decision);
      }
    } else if (content instanceof Content.Outcome outcome) {
      seen(outcome.day());
      followUp.cameOf(outcome);
    }
  }

  private void seen(LocalDate day) {
    lastDay = day.isAfter(lastDay) ? day : lastDay;
  }

  private boolean isWithin(LocalDate day) {
    return from.filter(day::isBefore).isEmpty() && to.filter(day::isAfter).isEmpty();
  }

  private void judge(long entry, Content.Decision decision) {
    String reference = decision.caseReference();
    Optional<Advised> latest =
        advised.getOrDefault(reference, List.of()).stream()
            .filter(one -> !one.day().isAfter(decision.day()))
            .reduce((earlier, later) -> later);
    if (latest.isEmpty()) {
      noted.add("decided without a recommendation before it", reference);
      hand(Judging.unadvised(entry, decision));
      return;
    }
    Advised held = latest.get();
    Life standing = Standing.of(held, decision.day(), governance);
    JudgedDecision judged = Judging.judge(entry, decision, held, standing.word());
    note(decision, held, standing, judged);
    hand(judged);
  }

  private void hand(JudgedDecision judged) {
    totals.add(judged);
    AgainstRuleOut.of(judged)
        .limit(Math.max(0, AgainstRuleOut.MOST - againstRuleOuts.size()))
        .forEach(againstRuleOuts::add);
    each.accept(judged);
  }

  private void note(Content.Decision decision, Advised held, Life standing, JudgedDecision judged) {
    String reference = decision.caseReference();
    if (standing != Life.IN_FORCE) {
      noted.add("decided under a protocol that was " + standing.word(), reference);
    }
    if (held.reviewOverdue()) {
      noted.add("decided under a protocol whose review was due", reference);
    }
    for (Judgement judgement : judged.judgements()) {
      if (judgement.verdict() == Verdict.RULED_OUT) {
        noted.add("decided against a rule-out: " + judgement.ranking(), reference);
      }
    }
    if (Judging.mightBeRuledOut(decision, held.advice())) {
      noted.add("chose what open data might have ruled out", reference);
    }
    if (held.entry() != decision.recommendation()) {
      noted.add("decided against an earlier recommendation than the latest", reference);
    }
    if (held.isReplan()) {
      noted.add("decided after a re-plan", reference);
    }
    if (held.advice().faults() > 0) {
      noted.add("decided where the protocol contradicted itself", reference);
    }
  }

  private AuditSource source(LocalDate until) {
    List<AuditSource.Fact> identity = new ArrayList<>();
    identity.add(new AuditSource.Fact("ledger", governance.ledger()));
    head.ifPresent(
        entry -> {
          identity.add(new AuditSource.Fact("last entry", Long.toString(entry.sequence())));
          identity.add(new AuditSource.Fact("digest of the last entry", entry.digest()));
        });
    return new AuditSource("Decisions of a ledger", from, Optional.of(until), identity);
  }
}
