package org.cotyla.ledger;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.Optional;
import java.util.stream.Stream;
import org.cotyla.evaluate.Engine;
import org.cotyla.evaluate.Identity;
import org.cotyla.evaluate.Recommendation;
import org.cotyla.explain.Replan;
import org.cotyla.expression.Symbol;
import org.cotyla.finding.Case;
import org.cotyla.finding.Datum;
import org.cotyla.finding.Datum.Knowledge;
import org.cotyla.finding.FindingsReader;
import org.cotyla.identity.CaseDigest;
import org.cotyla.issue.Issues;
import org.cotyla.issue.RejectedException;
import org.cotyla.json.RecommendationJson;
import org.cotyla.json.RecordedCase;
import org.cotyla.privacy.Wording;
import org.cotyla.protocol.Protocol;
import org.cotyla.value.ValueType;

/**
 * Runs cases and records what came out. A case is recorded under its local reference alone: a title
 * or anything else that the protocol does not ask for stays out.
 */
public final class Recorder {

  private final Ledger ledger;
  private final ProtocolFile file;
  private final Engine engine;

  public Recorder(Ledger ledger, ProtocolFile file) {
    this(ledger, file, Engine.of(file.protocol()));
  }

  /** With an engine of the same protocol that was built before. */
  public Recorder(Ledger ledger, ProtocolFile file, Engine engine) {
    this.ledger = ledger;
    this.file = file;
    this.engine = engine;
  }

  /**
   * What was recorded.
   *
   * @param entry the entry, whose content is a recommendation
   * @param recommendation the recommendation, as it was recorded
   */
  public record Recorded(Entry entry, Recommendation recommendation) {
    public Content.Recommendation content() {
      return (Content.Recommendation) entry.content();
    }
  }

  /** A plan that was run again, and its entry. */
  public record RecordedReplan(Recorded recorded, Replan replan) {}

  /**
   * Runs a case and records it.
   *
   * @param reference the local reference of the case
   * @param day the local day
   * @throws RejectedException listing every fault of the case and its reference
   */
  public Recorded recommend(String reference, Case given, LocalDate day) {
    Issues issues = new Issues();
    Wording.reference(reference, issues);
    Recommendation advice;
    try {
      advice = engine.evaluate(canonical(given, reference));
    } catch (RejectedException faulty) {
      issues.addAll(faulty.issues());
      throw new RejectedException(issues.list());
    }
    Registry.throwIfAny(issues);
    return record(reference, advice, day, Optional.empty());
  }

  /**
   * Runs a planned case again with what was found later, and records it beside its plan.
   *
   * @throws RejectedException listing every fault, or when no plan of these findings is recorded
   */
  public RecordedReplan replan(String reference, Case plan, Case later, LocalDate day) {
    Issues issues = new Issues();
    Wording.reference(reference, issues);
    Registry.throwIfAny(issues);
    Replan replan = Replan.of(engine, plan.titled(reference), later.titled(reference));
    String planDigest = replan.comparison().before().identity().caseDigest();
    long planned = planOf(reference, planDigest);
    String canonical = CaseDigest.canonical(replan.comparison().after().findings());
    Recommendation advice = engine.evaluate(read(canonical, reference));
    return new RecordedReplan(record(reference, advice, day, Optional.of(planned)), replan);
  }

  private long planOf(String reference, String caseDigest) {
    try (Stream<Entry> about = ledger.entriesAbout(reference)) {
      return about
          .filter(
              entry ->
                  entry.content() instanceof Content.Recommendation known
                      && known.caseDigest().equals(caseDigest))
          .mapToLong(Entry::sequence)
          .max()
          .orElseThrow(
              () ->
                  LedgerFault.of(
                      "L042",
                      "no plan of `" + reference + "` with these findings is recorded",
                      "record it with `cotyla recommend --ledger`, and give the same case here"));
    }
  }

  private Case canonical(Case given, String reference) {
    Protocol protocol = file.protocol();
    return read(CaseDigest.canonical(new FindingsReader(protocol).read(given)), reference);
  }

  private Case read(String canonical, String reference) {
    return RecordedCase.read(canonical, reference, file.protocol());
  }

  private Recorded record(
      String reference, Recommendation advice, LocalDate day, Optional<Long> plan) {
    requireNobody(advice);
    Identity identity = advice.identity();
    Document whole = Document.of(RecommendationJson.write(advice).getBytes(StandardCharsets.UTF_8));
    ProtocolVersion version = file.version();
    Advice inShort = AdviceOf.of(advice);
    String canonical = CaseDigest.canonical(advice.findings());
    Entry entry =
        ledger.write(
            writing -> {
              file.keepIn(writing);
              return writing.append(
                  new Content.Recommendation(
                      reference,
                      day,
                      advice.findings().stage(),
                      version,
                      writing.governance().life(version, day),
                      isOverdue(version, day),
                      identity.engineVersion(),
                      identity.caseDigest(),
                      canonical,
                      writing.keep(whole),
                      inShort,
                      plan));
            });
    return new Recorded(entry, advice);
  }

  /** What a case says in free words is held to the same as what people say of a decision. */
  private static void requireNobody(Recommendation advice) {
    Issues issues = new Issues();
    for (Datum datum : advice.findings().data()) {
      boolean stated =
          datum.knowledge() == Knowledge.RECORDED || datum.knowledge() == Knowledge.PARTLY;
      Symbol field = datum.field().symbol();
      if (stated && field.type() == ValueType.TEXT && !field.isChoice()) {
        datum
            .value()
            .values()
            .parts()
            .forEach(part -> Wording.text(field.name(), part.plain(), issues));
      }
    }
    Registry.throwIfAny(issues);
  }

  static boolean isOverdue(ProtocolVersion version, LocalDate day) {
    return version.reviewDue().filter(due -> due.isBefore(day)).isPresent();
  }
}
