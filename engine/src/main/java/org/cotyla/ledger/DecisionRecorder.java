package org.cotyla.ledger;

import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.cotyla.expression.FormulaFunction;
import org.cotyla.issue.Issues;
import org.cotyla.issue.Place;
import org.cotyla.issue.RejectedException;
import org.cotyla.privacy.Wording;
import org.cotyla.protocol.Outcome;
import org.cotyla.protocol.Protocol;

/** Records what was done, and what came of it, against the recommendation that was there. */
public final class DecisionRecorder {

  private static final Place DAY = new Place.Whole("day");

  private final Ledger ledger;
  private final Collection<FormulaFunction> functions;
  private final LocalDate today;

  /**
   * @param functions what the formulas of kept workbooks may call
   * @param today the local day, after which nothing can have happened
   */
  public DecisionRecorder(Ledger ledger, Collection<FormulaFunction> functions, LocalDate today) {
    this.ledger = ledger;
    this.functions = List.copyOf(functions);
    this.today = today;
  }

  /**
   * What somebody says was done.
   *
   * @param reference the local reference of the case
   * @param recommendation the entry of the recommendation; the last of the case when absent
   * @param choices what was chosen, once for each ranking
   * @param reason why it departs, a word of the protocol's list
   * @param because why it departs, in free words
   */
  public record Done(
      String reference,
      Optional<Long> recommendation,
      LocalDate day,
      String role,
      List<Chosen> choices,
      Optional<String> reason,
      Optional<String> because) {
    public Done {
      choices = List.copyOf(choices);
    }
  }

  /** An option that was chosen in a ranking, both as somebody writes them. */
  public record Chosen(String ranking, String option) {}

  /** What somebody says came of a decision; the last of the case when no entry is named. */
  public record CameOf(
      String reference, Optional<Long> decision, LocalDate day, String outcome, String role) {}

  /**
   * Records a decision. Whether it follows or departs is worked out, not asked.
   *
   * @throws RejectedException listing every fault of what is said
   */
  public Entry decide(Done done) {
    Issues issues = new Issues();
    common(done.reference(), done.role(), done.day(), issues);
    done.because().ifPresent(text -> Wording.text("because", text, issues));
    Entry entry = find(done.reference(), done.recommendation(), Kind.RECOMMENDATION, issues);
    Content.Recommendation advised = (Content.Recommendation) entry.content();
    DecisionRules.day(done.day(), advised.day(), "recommendation", issues);
    Protocol protocol = protocol(advised);
    List<Choice> choices = DecisionRules.choices(done.choices(), advised.advice(), issues);
    boolean followed = DecisionRules.followed(choices);
    Optional<String> reason =
        DecisionRules.reason(done.reason(), done.because(), followed, protocol, issues);
    Registry.throwIfAny(issues);
    Content decision =
        new Content.Decision(
            done.reference(),
            entry.sequence(),
            done.day(),
            done.role(),
            choices,
            followed,
            reason,
            done.because());
    return ledger.write(writing -> writing.append(decision));
  }

  /**
   * Records an outcome.
   *
   * @throws RejectedException listing every fault of what is said
   */
  public Entry outcome(CameOf said) {
    Issues issues = new Issues();
    common(said.reference(), said.role(), said.day(), issues);
    Entry entry = find(said.reference(), said.decision(), Kind.DECISION, issues);
    Content.Decision decision = (Content.Decision) entry.content();
    DecisionRules.day(said.day(), decision.day(), "decision", issues);
    Protocol protocol = protocol(recommendationOf(decision));
    Optional<Outcome> outcome = DecisionRules.outcome(said.outcome(), protocol, issues);
    Registry.throwIfAny(issues);
    Outcome known = outcome.orElseThrow();
    Content content =
        new Content.Outcome(
            said.reference(),
            entry.sequence(),
            said.day(),
            known.name(),
            known.counts(),
            said.role());
    return ledger.write(writing -> writing.append(content));
  }

  private void common(String reference, String role, LocalDate day, Issues issues) {
    Wording.reference(reference, issues);
    Wording.role(role, issues);
    if (day.isAfter(today)) {
      issues.error("L045", DAY, day + " has not come yet");
    }
  }

  /** The entry that is meant, of this case and kind; without it nothing more can be said. */
  private Entry find(String reference, Optional<Long> sequence, Kind kind, Issues issues) {
    try (Stream<Entry> about = ledger.entriesAbout(reference)) {
      Optional<Entry> found =
          about
              .filter(entry -> entry.kind() == kind)
              .filter(entry -> sequence.isEmpty() || sequence.get() == entry.sequence())
              .reduce((earlier, later) -> later);
      if (found.isPresent()) {
        return found.get();
      }
    }
    String number = sequence.map(n -> "entry " + n + " is not a " + kind).orElse("no " + kind);
    issues.error("L043", LedgerFault.WHOLE, number + " of `" + reference + "` in this ledger");
    throw new RejectedException(issues.list());
  }

  private Content.Recommendation recommendationOf(Content.Decision decision) {
    return ledger
        .entry(decision.recommendation())
        .map(Entry::content)
        .filter(Content.Recommendation.class::isInstance)
        .map(Content.Recommendation.class::cast)
        .orElseThrow(() -> damaged("the recommendation of the decision is not there"));
  }

  private Protocol protocol(Content.Recommendation advised) {
    byte[] workbook =
        ledger
            .document(advised.protocol().workbook())
            .orElseThrow(() -> damaged("the workbook of the recommendation is not there"));
    return ProtocolFile.read("kept workbook", workbook, functions).protocol();
  }

  private static RejectedException damaged(String what) {
    return LedgerFault.of("L044", what, "`cotyla verify` tells what is wrong with the ledger");
  }
}
