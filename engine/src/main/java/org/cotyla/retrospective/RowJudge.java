package org.cotyla.retrospective;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.cotyla.audit.AgainstRuleOut;
import org.cotyla.audit.AuditTotals;
import org.cotyla.audit.JudgedDecision;
import org.cotyla.evaluate.Engine;
import org.cotyla.finding.Case;
import org.cotyla.issue.Issue;
import org.cotyla.issue.RejectedException;
import org.cotyla.name.NameIndex;
import org.cotyla.protocol.Field;
import org.cotyla.protocol.Protocol;

/** Judges rows by one protocol, and by another when it is to be compared. Thread-safe. */
final class RowJudge {

  private final Engine engine;
  private final Optional<Engine> draft;
  private final RowReader reader;
  private final Set<String> unknownToDraft = new LinkedHashSet<>();

  RowJudge(Engine engine, Optional<Engine> draft, ColumnMapping mapping, LocalDate today) {
    this.engine = engine;
    this.draft = draft;
    this.reader = new RowReader(mapping, engine.protocol(), today);
    draft.ifPresent(other -> unknownToDraft.addAll(unknown(mapping, other.protocol())));
  }

  /** The fields of the columns that the other protocol does not ask for. */
  private static List<String> unknown(ColumnMapping mapping, Protocol other) {
    NameIndex<Field> known = NameIndex.of(other.givenFields(), Field::name);
    return mapping.used().stream()
        .filter(column -> column.meaning() instanceof Meaning.Finding)
        .map(column -> ((Meaning.Finding) column.meaning()).field().name())
        .filter(name -> known.find(name).isEmpty())
        .toList();
  }

  List<String> unknownToDraft() {
    return List.copyOf(unknownToDraft);
  }

  Tallied judge(List<RawRow> rows) {
    AuditTotals totals = new AuditTotals();
    AuditTotals draftTotals = new AuditTotals();
    DraftChanges changes = new DraftChanges();
    List<SetAside> setAside = new ArrayList<>();
    List<AgainstRuleOut> againstRuleOuts = new ArrayList<>();
    long judged = 0;
    for (RawRow row : rows) {
      Optional<PastCase> past = reader.read(row, setAside);
      Optional<JudgedDecision> decision = past.flatMap(one -> judge(one, setAside));
      if (decision.isPresent()) {
        judged++;
        totals.add(decision.get());
        AgainstRuleOut.of(decision.get())
            .limit(Math.max(0, AgainstRuleOut.MOST - againstRuleOuts.size()))
            .forEach(againstRuleOuts::add);
        draft.ifPresent(
            other -> compare(other, past.orElseThrow(), decision.get(), draftTotals, changes));
      }
    }
    return new Tallied(
        rows.size(),
        judged,
        setAside,
        totals,
        againstRuleOuts,
        draft.map(other -> new Tallied.Draft(draftTotals, changes)));
  }

  private Optional<JudgedDecision> judge(PastCase past, List<SetAside> setAside) {
    try {
      return Optional.of(DecisionJudge.judge(past, engine.evaluate(past.given())));
    } catch (RejectedException refused) {
      setAside.addAll(SetAside.of(past.row(), refused));
      return Optional.empty();
    }
  }

  private void compare(
      Engine other,
      PastCase past,
      JudgedDecision now,
      AuditTotals draftTotals,
      DraftChanges changes) {
    try {
      PastCase told = unknownToDraft.isEmpty() ? past : without(past);
      JudgedDecision then = DecisionJudge.judge(told, other.evaluate(told.given()));
      draftTotals.add(then);
      changes.compare(past.row(), now, then);
    } catch (RejectedException refused) {
      Issue first = refused.issues().get(0);
      changes.refused(SetAside.column(first.place()) + ": " + first.code());
    }
  }

  private PastCase without(PastCase past) {
    Case given = past.given();
    List<Case.Finding> known =
        given.findings().stream()
            .filter(finding -> !unknownToDraft.contains(finding.field()))
            .toList();
    Map<String, String> done = new LinkedHashMap<>(past.done());
    return new PastCase(
        past.row(),
        past.reference(),
        past.day(),
        past.role(),
        new Case(given.title(), given.stage(), known, given.stagePlace()),
        done,
        past.reason());
  }
}
