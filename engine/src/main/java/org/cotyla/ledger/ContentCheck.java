package org.cotyla.ledger;

import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import org.cotyla.expression.FormulaFunction;
import org.cotyla.issue.Issues;
import org.cotyla.issue.RejectedException;
import org.cotyla.privacy.Wording;
import org.cotyla.protocol.Protocol;

/** Holds each entry against the rules that the program follows when it writes one. */
final class ContentCheck {

  private final LedgerSource source;
  private final Replay replay;
  private final Set<String> documents = new HashSet<>();
  private Governance governance = Governance.NONE;

  ContentCheck(LedgerSource source, Collection<FormulaFunction> functions) {
    this.source = source;
    this.replay = new Replay(source, functions);
  }

  /** Looks at the next entry; each fault is a line that follows the entry's name. */
  void next(Entry entry, Consumer<String> faults) {
    if ((entry.sequence() == 1) != (entry.kind() == Kind.FOUNDING)) {
      faults.accept("a ledger has one founding, and begins with it");
    }
    KeyRules.fault(entry, governance).ifPresent(faults);
    Content content = entry.content();
    if (content instanceof Content.Approval approval) {
      workbook(approval.protocol(), faults);
    } else if (content instanceof Content.Release release) {
      release(release, faults);
    } else if (content instanceof Content.Withdrawal withdrawal) {
      withdrawal(withdrawal, faults);
    } else if (content instanceof Content.Recommendation recommendation) {
      recommendation(entry, recommendation, faults);
    } else if (content instanceof Content.Decision decision) {
      decision(entry, decision, faults);
    } else if (content instanceof Content.Outcome outcome) {
      outcome(entry, outcome, faults);
    } else if (content instanceof Content.Founding founding) {
      refused(() -> KeyRules.requireFounders(founding.keys()), faults);
    } else if (content instanceof Content.KeyVoucher voucher) {
      refused(() -> KeyRules.requireNew(voucher.key(), governance), faults);
    } else if (content instanceof Content.KeyWithdrawal withdrawn) {
      refused(() -> KeyRules.requireEnoughWithout(withdrawn.key(), governance), faults);
    } else if (content instanceof Content.Checkpoint checkpoint) {
      if (checkpoint.sequence() != entry.sequence() - 1
          || !checkpoint.digest().equals(entry.previous())) {
        faults.accept("it is not of the state that it stands behind");
      }
    }
    governance = governance.with(entry);
  }

  private static void refused(Runnable rule, Consumer<String> faults) {
    try {
      rule.run();
    } catch (RejectedException broken) {
      broken.issues().forEach(issue -> faults.accept(issue.message()));
    }
  }

  /** The documents that entries have named so far. */
  Set<String> documents() {
    return documents;
  }

  Governance governance() {
    return governance;
  }

  private void workbook(ProtocolVersion protocol, Consumer<String> faults) {
    documents.add(protocol.workbook());
    replay.workbook(protocol, faults);
  }

  private void release(Content.Release release, Consumer<String> faults) {
    workbook(release.protocol(), faults);
    if (!governance.isApproved(release)) {
      faults.accept("it was released without the approvals of two roles");
    }
  }

  private void withdrawal(Content.Withdrawal withdrawal, Consumer<String> faults) {
    boolean known =
        governance.releases().stream()
            .anyMatch(
                release ->
                    release.sequence() == withdrawal.release()
                        && release.protocol().equals(withdrawal.protocol()));
    if (!known) {
      faults.accept("what it withdraws was not released by entry " + withdrawal.release());
    }
  }

  private void recommendation(
      Entry entry, Content.Recommendation recorded, Consumer<String> faults) {
    documents.add(recorded.protocol().workbook());
    documents.add(recorded.recommendation());
    replay.kept(recorded, faults);
    if (governance.life(recorded.protocol(), recorded.day()) != recorded.life()
        || Recorder.isOverdue(recorded.protocol(), recorded.day()) != recorded.reviewOverdue()) {
      faults.accept("where it says the protocol was in its life is not where it was");
    }
    recorded
        .plan()
        .filter(
            plan ->
                about(plan, entry, recorded.caseReference(), Content.Recommendation.class)
                    .isEmpty())
        .ifPresent(plan -> faults.accept("its plan, entry " + plan + ", is not one of its case"));
  }

  private void decision(Entry entry, Content.Decision decision, Consumer<String> faults) {
    Optional<Content.Recommendation> advised =
        about(
            decision.recommendation(),
            entry,
            decision.caseReference(),
            Content.Recommendation.class);
    if (advised.isEmpty()) {
      faults.accept(
          "its recommendation, entry " + decision.recommendation() + ", is not one of its case");
      return;
    }
    Content.Recommendation known = advised.get();
    Issues issues = new Issues();
    DecisionRules.day(decision.day(), known.day(), "recommendation", issues);
    List<DecisionRecorder.Chosen> said =
        decision.choices().stream()
            .map(choice -> new DecisionRecorder.Chosen(choice.ranking(), choice.option()))
            .toList();
    List<Choice> choices = DecisionRules.choices(said, known.advice(), issues);
    boolean followed = DecisionRules.followed(choices);
    if (!issues.hasErrors()
        && (!choices.equals(decision.choices()) || followed != decision.followed())) {
      faults.accept("how its choices stood is not what the recommendation says");
    }
    Optional<String> reason =
        protocol(known)
            .flatMap(
                protocol ->
                    DecisionRules.reason(
                        decision.reason(), decision.because(), followed, protocol, issues));
    Wording.role(decision.role(), issues);
    decision.because().ifPresent(text -> Wording.text("because", text, issues));
    tell(issues, faults);
    if (!issues.hasErrors() && protocol(known).isPresent()) {
      requireSame(
          reason, decision.reason(), "its reason is not written as the protocol lists it", faults);
    }
  }

  private void outcome(Entry entry, Content.Outcome outcome, Consumer<String> faults) {
    Optional<Content.Decision> decided =
        about(outcome.decision(), entry, outcome.caseReference(), Content.Decision.class);
    if (decided.isEmpty()) {
      faults.accept("its decision, entry " + outcome.decision() + ", is not one of its case");
      return;
    }
    Issues issues = new Issues();
    DecisionRules.day(outcome.day(), decided.get().day(), "decision", issues);
    Wording.role(outcome.role(), issues);
    about(
            decided.get().recommendation(),
            entry,
            outcome.caseReference(),
            Content.Recommendation.class)
        .flatMap(advised -> protocol(advised))
        .flatMap(protocol -> DecisionRules.outcome(outcome.outcome(), protocol, issues))
        .ifPresent(
            known -> {
              requireSame(
                  known.name(),
                  outcome.outcome(),
                  "its outcome is not written as the protocol lists it",
                  faults);
              requireSame(
                  known.counts(),
                  outcome.counts(),
                  "how its outcome counts is not what the protocol says",
                  faults);
            });
    tell(issues, faults);
  }

  /** The protocol of a recommendation; what is wrong with the kept workbook is told there. */
  private Optional<Protocol> protocol(Content.Recommendation advised) {
    return replay.workbook(advised.protocol(), toldThere -> {}).map(ProtocolFile::protocol);
  }

  private static void requireSame(
      Object expected, Object found, String otherwise, Consumer<String> faults) {
    if (!expected.equals(found)) {
      faults.accept(otherwise);
    }
  }

  /** Rules of writing that the entry breaks. */
  private static void tell(Issues issues, Consumer<String> faults) {
    issues.list().forEach(issue -> faults.accept(issue.message()));
  }

  private <T extends Content> Optional<T> about(
      long sequence, Entry later, String reference, Class<T> kind) {
    if (sequence >= later.sequence()) {
      return Optional.empty();
    }
    try {
      return source
          .entry(sequence)
          .map(Entry::content)
          .filter(content -> content.aboutCase().filter(reference::equals).isPresent())
          .filter(kind::isInstance)
          .map(kind::cast);
    } catch (UnreadableEntryException reportedElsewhere) {
      return Optional.empty();
    }
  }
}
