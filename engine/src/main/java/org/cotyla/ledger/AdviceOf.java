package org.cotyla.ledger;

import java.util.List;
import org.cotyla.evaluate.RankedOption;
import org.cotyla.evaluate.RankedOption.Availability;
import org.cotyla.evaluate.RankingResult;
import org.cotyla.evaluate.Recommendation;
import org.cotyla.protocol.ShownAs;
import org.cotyla.value.PossibleValues;

/** Says a recommendation in short. */
final class AdviceOf {

  private AdviceOf() {}

  static Advice of(Recommendation recommendation) {
    return new Advice(
        recommendation.rankings().stream().map(AdviceOf::ranked).toList(),
        recommendation.shownAs(ShownAs.HEADLINE).stream()
            .flatMap(decision -> decision.outputs().entrySet().stream())
            .map(output -> new Advice.Result(output.getKey(), possible(output.getValue())))
            .toList(),
        recommendation.missing().stream()
            .map(
                missing ->
                    new Advice.Missing(
                        missing.datum().field().name(), !missing.mayChangeFirst().isEmpty()))
            .toList(),
        recommendation.faults().size());
  }

  private static Advice.Ranked ranked(RankingResult ranking) {
    return new Advice.Ranked(
        ranking.ranking().name(),
        ranking.firstIsCertain(),
        ranking.options().stream().map(option -> standing(option, ranking)).toList());
  }

  private static Advice.OptionStanding standing(RankedOption option, RankingResult ranking) {
    return new Advice.OptionStanding(
        option.name(),
        option.place(),
        stood(option, ranking),
        option.availability(),
        option.canBeFirst(),
        option.contributions().stream()
            .map(
                contribution ->
                    new Advice.RowVote(
                        contribution.firing().row().id(), contribution.effect().word()))
            .toList());
  }

  /** In first place, or with as many points as what stands there. */
  private static Choice.Stood stood(RankedOption option, RankingResult ranking) {
    if (option.availability() == Availability.RULED_OUT) {
      return Choice.Stood.RULED_OUT;
    }
    boolean level =
        ranking
            .leader()
            .filter(first -> first.points().now().compareTo(option.points().now()) == 0)
            .isPresent();
    if (level) {
      return Choice.Stood.FIRST;
    }
    return option.availability() == Availability.AVAILABLE
        ? Choice.Stood.ACCEPTABLE
        : Choice.Stood.MAY_BE_RULED_OUT;
  }

  private static List<String> possible(PossibleValues values) {
    List<String> words =
        new java.util.ArrayList<>(values.values().parts().stream().map(p -> p.plain()).toList());
    if (values.orNothing() || values.isNothing()) {
      words.add("nothing");
    }
    return words;
  }
}
