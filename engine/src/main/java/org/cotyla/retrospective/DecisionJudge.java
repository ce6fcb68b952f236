package org.cotyla.retrospective;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.cotyla.audit.JudgedDecision;
import org.cotyla.audit.Judgement;
import org.cotyla.audit.Verdict;
import org.cotyla.evaluate.Contribution;
import org.cotyla.evaluate.RankedOption;
import org.cotyla.evaluate.RankedOption.Availability;
import org.cotyla.evaluate.RankingResult;
import org.cotyla.evaluate.Recommendation;
import org.cotyla.protocol.About;
import org.cotyla.protocol.Effect;
import org.cotyla.protocol.ShownAs;
import org.cotyla.value.PossibleValues;

/** Holds what was done against a recommendation. */
final class DecisionJudge {

  private static final String OPEN = "open";

  private DecisionJudge() {}

  static JudgedDecision judge(PastCase past, Recommendation advice) {
    List<Judgement> judgements = new ArrayList<>();
    past.done()
        .forEach(
            (ranking, chosen) ->
                advice
                    .ranking(ranking)
                    .ifPresent(result -> judgements.add(judgement(result, chosen))));
    About about = advice.protocol().about();
    TreeMap<String, Boolean> missing = new TreeMap<>();
    advice
        .missing()
        .forEach(
            one ->
                missing.merge(
                    one.datum().field().name(),
                    !one.mayChangeFirst().isEmpty(),
                    Boolean::logicalOr));
    return new JudgedDecision(
        "row " + past.row(),
        past.reference(),
        past.day(),
        about.identifier() + " " + about.version(),
        about.status().word(),
        past.role(),
        judgements,
        groups(advice),
        past.reason(),
        Optional.empty(),
        missing);
  }

  private static Judgement judgement(RankingResult result, String chosen) {
    Optional<RankedOption> first = result.leader();
    Optional<RankedOption> own = result.option(chosen);
    TreeSet<String> rows = new TreeSet<>();
    first.ifPresent(option -> rows.addAll(rows(option, true)));
    own.ifPresent(option -> rows.addAll(rows(option, false)));
    return new Judgement(
        result.ranking().name(),
        chosen,
        first.map(RankedOption::name),
        own.map(option -> verdict(option, first)).orElse(Verdict.NOT_RANKED),
        List.copyOf(rows),
        own.map(DecisionJudge::ruledOutBy).orElse(List.of()),
        result.options().stream().map(RankedOption::name).toList());
  }

  private static List<String> ruledOutBy(RankedOption option) {
    return option.contributions().stream()
        .filter(contribution -> contribution.effect() == Effect.RULE_OUT)
        .map(DecisionJudge::row)
        .toList();
  }

  /** Level with the first is first; what only may be ruled out, was not by what is known. */
  private static Verdict verdict(RankedOption own, Optional<RankedOption> first) {
    if (own.availability() == Availability.RULED_OUT) {
      return Verdict.RULED_OUT;
    }
    boolean level =
        first.filter(one -> one.points().now().compareTo(own.points().now()) == 0).isPresent();
    return level ? Verdict.FIRST : Verdict.ACCEPTABLE;
  }

  private static List<String> rows(RankedOption option, boolean inFavour) {
    return option.contributions().stream()
        .filter(contribution -> (contribution.effect() == Effect.FAVOUR) == inFavour)
        .map(DecisionJudge::row)
        .toList();
  }

  private static String row(Contribution contribution) {
    return contribution.firing().row().id();
  }

  /** What the decisions came to that the protocol shows in full, where that is certain. */
  private static Map<String, String> groups(Recommendation advice) {
    Map<String, String> groups = new LinkedHashMap<>();
    advice.shownAs(ShownAs.HEADLINE).stream()
        .flatMap(decision -> decision.outputs().entrySet().stream())
        .forEach(output -> groups.put(output.getKey(), group(output.getValue())));
    return groups;
  }

  private static String group(PossibleValues value) {
    if (value.isNothing()) {
      return "nothing";
    }
    return value.isCertain()
        ? value.values().parts().stream()
            .map(part -> part.plain())
            .collect(Collectors.joining(", "))
        : OPEN;
  }
}
