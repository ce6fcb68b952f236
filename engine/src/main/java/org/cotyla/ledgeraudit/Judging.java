package org.cotyla.ledgeraudit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.cotyla.audit.JudgedDecision;
import org.cotyla.audit.Judgement;
import org.cotyla.audit.Verdict;
import org.cotyla.evaluate.RankedOption.Availability;
import org.cotyla.ledger.Advice;
import org.cotyla.ledger.Advice.OptionStanding;
import org.cotyla.ledger.Advice.Ranked;
import org.cotyla.ledger.Choice;
import org.cotyla.ledger.Content;
import org.cotyla.ledger.ProtocolVersion;
import org.cotyla.protocol.Effect;

/** Holds what was chosen against what was advised. */
final class Judging {

  private static final int DIGITS = 8;

  private Judging() {}

  /** A decision without any advice before it. */
  static JudgedDecision unadvised(long entry, Content.Decision decision) {
    return new JudgedDecision(
        place(entry),
        decision.caseReference(),
        Optional.of(decision.day()),
        JudgedDecision.NOT_RECORDED,
        JudgedDecision.NOT_RECORDED,
        decision.role(),
        List.of(),
        Map.of(),
        decision.reason(),
        decision.because(),
        new TreeMap<>());
  }

  private static String place(long entry) {
    return "entry " + entry;
  }

  static JudgedDecision judge(
      long entry, Content.Decision decision, Advised advised, String standing) {
    Advice advice = advised.advice();
    Map<String, String> groups = new LinkedHashMap<>();
    advice
        .results()
        .forEach(result -> groups.put(result.field(), String.join(" or ", result.possible())));
    TreeMap<String, Boolean> missing = new TreeMap<>();
    advice
        .missing()
        .forEach(datum -> missing.merge(datum.field(), datum.mayChangeFirst(), Boolean::logicalOr));
    return new JudgedDecision(
        place(entry),
        decision.caseReference(),
        Optional.of(decision.day()),
        label(advised.protocol()),
        standing,
        decision.role(),
        decision.choices().stream().map(choice -> judge(choice, advice)).toList(),
        groups,
        decision.reason(),
        decision.because(),
        missing);
  }

  /** With the start of its digest, since drafts of one version differ. */
  private static String label(ProtocolVersion protocol) {
    String digest = protocol.digest();
    int from = digest.indexOf(':') + 1;
    return protocol.identifier()
        + " "
        + protocol.version()
        + " ("
        + digest.substring(from, Math.min(digest.length(), from + DIGITS))
        + ")";
  }

  private static Judgement judge(Choice choice, Advice advice) {
    Optional<Ranked> ranking = advice.ranking(choice.ranking());
    Optional<OptionStanding> first =
        ranking.flatMap(
            ranked ->
                ranked.options().stream()
                    .filter(option -> option.stood() == Choice.Stood.FIRST)
                    .findFirst());
    Optional<OptionStanding> chosen = ranking.flatMap(ranked -> ranked.option(choice.option()));
    List<String> rows = new ArrayList<>();
    first.ifPresent(option -> rows.addAll(rows(option, true)));
    chosen.ifPresent(option -> rows.addAll(rows(option, false)));
    return new Judgement(
        choice.ranking(),
        choice.option(),
        first.map(OptionStanding::option),
        chosen.map(option -> verdict(option.stood())).orElse(Verdict.NOT_RANKED),
        rows.stream().distinct().toList(),
        chosen.map(Judging::ruledOutBy).orElse(List.of()),
        ranking.stream()
            .flatMap(ranked -> ranked.options().stream())
            .map(OptionStanding::option)
            .toList());
  }

  private static List<String> ruledOutBy(OptionStanding option) {
    return option.rows().stream()
        .filter(vote -> vote.effect().equals(Effect.RULE_OUT.word()))
        .map(Advice.RowVote::row)
        .toList();
  }

  private static List<String> rows(OptionStanding option, boolean speakingFor) {
    return option.rows().stream()
        .filter(vote -> vote.effect().equals(Effect.FAVOUR.word()) == speakingFor)
        .map(Advice.RowVote::row)
        .toList();
  }

  private static Verdict verdict(Choice.Stood stood) {
    return switch (stood) {
      case FIRST -> Verdict.FIRST;
      case ACCEPTABLE, MAY_BE_RULED_OUT -> Verdict.ACCEPTABLE;
      case RULED_OUT -> Verdict.RULED_OUT;
      case NOT_LISTED -> Verdict.NOT_RANKED;
    };
  }

  /** Whether something was chosen that a row with open data might have ruled out. */
  static boolean mightBeRuledOut(Content.Decision decision, Advice advice) {
    return decision.choices().stream()
        .flatMap(choice -> option(choice, advice).stream())
        .anyMatch(option -> option.availability() == Availability.MAY_BE_RULED_OUT);
  }

  private static Optional<OptionStanding> option(Choice choice, Advice advice) {
    return advice.ranking(choice.ranking()).flatMap(ranked -> ranked.option(choice.option()));
  }
}
