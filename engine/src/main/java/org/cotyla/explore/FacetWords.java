package org.cotyla.explore;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.cotyla.evaluate.DecisionResult;
import org.cotyla.evaluate.RankedOption;
import org.cotyla.evaluate.RankedOption.Availability;
import org.cotyla.evaluate.RankingResult;
import org.cotyla.evaluate.Recommendation;
import org.cotyla.evaluate.Standing;
import org.cotyla.protocol.DecisionTable;
import org.cotyla.protocol.Option;
import org.cotyla.protocol.ShownAs;
import org.cotyla.value.PossibleValues;

/** What a part of an answer came to, in words; two answers agree in it when the words do. */
final class FacetWords {

  private static final String NONE = "none";

  private FacetWords() {}

  static String of(Recommendation answer, Facet facet) {
    return switch (facet.kind()) {
      case FIRST -> answer.ranking(facet.name()).map(FacetWords::first).orElse("");
      case DECISION -> answer.decision(facet.name()).map(FacetWords::decision).orElse("");
      case RULED_OUT -> answer.ranking(facet.name()).map(FacetWords::ruledOut).orElse("");
      case SHOWN -> shown(answer);
    };
  }

  /** A change from the one to the other. */
  static Margin.Change change(Facet facet, String from, String to) {
    return switch (facet.kind()) {
      case RULED_OUT -> new Margin.Change(facet, without(from, to, ", "), without(to, from, ", "));
      case DECISION -> decision(facet, from, to);
      case FIRST, SHOWN -> new Margin.Change(facet, from, to);
    };
  }

  /** Of several outputs or entries only those that differ. */
  private static Margin.Change decision(Facet facet, String from, String to) {
    String less = without(from, to, "; ");
    String more = without(to, from, "; ");
    return new Margin.Change(facet, less.isEmpty() ? from : less, more.isEmpty() ? to : more);
  }

  private static String without(String names, String others, String sign) {
    List<String> left = new ArrayList<>(List.of(names.split(sign)));
    left.removeAll(List.of(others.split(sign)));
    left.remove(NONE);
    return String.join(sign, left);
  }

  private static String shown(Recommendation answer) {
    List<String> words = new ArrayList<>();
    answer.decisions().stream()
        .filter(result -> result.table().shownAs() != ShownAs.WORKING && !result.table().votes())
        .forEach(result -> words.add(result.table().name() + ": " + decision(result)));
    for (RankingResult ranking : answer.rankings()) {
      words.add(ranking.ranking().name() + ": " + first(ranking) + "; out " + ruledOut(ranking));
      ranking
          .options()
          .forEach(
              option ->
                  words.add(
                      option.name()
                          + " "
                          + option.points().least().toPlainString()
                          + ".."
                          + option.points().most().toPlainString()));
    }
    return String.join("\n", words);
  }

  private static String first(RankingResult result) {
    List<String> names = new ArrayList<>();
    result.ranking().options().stream()
        .map(Option::name)
        .filter(name -> result.option(name).filter(RankedOption::canBeFirst).isPresent())
        .forEach(names::add);
    if (result.first().orNothing()) {
      names.add("nothing");
    }
    return String.join(" or ", names);
  }

  private static String decision(DecisionResult result) {
    if (result.table().hitPolicy().isList()) {
      return entries(result);
    }
    List<DecisionTable.Output> outputs = result.table().outputs();
    return outputs.stream()
        .map(
            output -> {
              PossibleValues value = result.outputs().get(output.symbol().name());
              String words = value == null ? "nothing" : value.plain();
              return outputs.size() == 1 ? words : output.symbol().name() + " " + words;
            })
        .collect(Collectors.joining("; "));
  }

  /** The entries without their order, which two rows with one entry could change. */
  private static String entries(DecisionResult result) {
    Stream<String> rows =
        result.counting().stream()
            .map(firing -> entry(firing.results(), firing.standing() == Standing.DECIDES));
    Stream<String> byDefault =
        result.defaultResults().isEmpty()
            ? Stream.empty()
            : Stream.of(entry(result.defaultResults(), result.byDefault()));
    String entries =
        Stream.concat(rows, byDefault).distinct().sorted().collect(Collectors.joining("; "));
    return entries.isEmpty() ? "no entry" : entries;
  }

  private static String entry(List<PossibleValues> results, boolean decides) {
    String words = results.stream().map(PossibleValues::plain).collect(Collectors.joining(", "));
    return decides ? words : "perhaps " + words;
  }

  private static String ruledOut(RankingResult result) {
    List<String> names = new ArrayList<>();
    for (Option option : result.ranking().options()) {
      result
          .option(option.name())
          .map(RankedOption::availability)
          .filter(availability -> availability != Availability.AVAILABLE)
          .ifPresent(
              availability ->
                  names.add(
                      availability == Availability.RULED_OUT
                          ? option.name()
                          : "perhaps " + option.name()));
    }
    return names.isEmpty() ? NONE : String.join(", ", names);
  }
}
