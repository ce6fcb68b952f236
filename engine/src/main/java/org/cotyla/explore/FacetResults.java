package org.cotyla.explore;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.cotyla.evaluate.DecisionResult;
import org.cotyla.evaluate.Firing;
import org.cotyla.evaluate.RankedOption;
import org.cotyla.evaluate.RankedOption.Availability;
import org.cotyla.evaluate.RankingResult;
import org.cotyla.evaluate.Recommendation;
import org.cotyla.evaluate.Standing;
import org.cotyla.expression.Symbol;
import org.cotyla.finite.Claim;
import org.cotyla.protocol.DecisionTable;
import org.cotyla.protocol.HitPolicy;
import org.cotyla.protocol.Row;
import org.cotyla.protocol.ShownAs;
import org.cotyla.value.Interval;
import org.cotyla.value.PossibleValues;
import org.cotyla.value.Value;

/**
 * Everything that a part of an answer can still come to, by what evaluation over possible values
 * knows: what it rules out is not listed, and what is certain has nothing listed.
 *
 * @param results the results; two cases differ in this part when one of these claims is true of one
 *     and not of the other
 * @param formulas names that a formula of a result uses and that are open; what hangs on them can
 *     differ although no claim does
 */
record FacetResults(List<Result> results, Set<Symbol> formulas) {

  /** As many values of a sum are told apart; beyond that only its rows are. */
  private static final int SUMS_AT_MOST = 64;

  static FacetResults of(Recommendation advice, Facet facet) {
    Builder builder = new Builder();
    switch (facet.kind()) {
      case FIRST -> advice.ranking(facet.name()).ifPresent(builder::first);
      case RULED_OUT -> advice.ranking(facet.name()).ifPresent(builder::ruledOut);
      case DECISION -> advice.decision(facet.name()).ifPresent(builder::decision);
      case SHOWN -> builder.shown(advice);
    }
    return new FacetResults(List.copyOf(builder.results), Set.copyOf(builder.formulas));
  }

  /** Whether the part is the same whatever the open data are. */
  boolean isCertain() {
    return results.isEmpty() && formulas.isEmpty();
  }

  /** One list in the making. Used once. */
  private static final class Builder {

    private final List<Result> results = new ArrayList<>();
    private final Set<Symbol> formulas = new HashSet<>();

    void first(RankingResult result) {
      if (result.firstIsCertain()) {
        return;
      }
      result.ranking().options().stream()
          .filter(
              option -> result.option(option.name()).filter(RankedOption::canBeFirst).isPresent())
          .forEach(
              option ->
                  results.add(
                      new Result(option.name(), new Claim.First(result.ranking(), option.name()))));
      if (result.first().orNothing()) {
        Symbol first = result.ranking().first();
        results.add(
            new Result("nothing", new Claim.Is(first, PossibleValues.nothing(first.type()))));
      }
    }

    void ruledOut(RankingResult result) {
      result.ranking().options().stream()
          .filter(
              option ->
                  result
                      .option(option.name())
                      .filter(one -> one.availability() == Availability.MAY_BE_RULED_OUT)
                      .isPresent())
          .forEach(
              option ->
                  results.add(
                      new Result(
                          option.name(), new Claim.RuledOut(result.ranking(), option.name()))));
    }

    void decision(DecisionResult result) {
      HitPolicy policy = result.table().hitPolicy();
      if (result.isCertain()) {
        return;
      }
      if (policy.isAggregate()) {
        result.table().outputs().forEach(output -> aggregate(result, output.symbol()));
      } else {
        rows(result);
      }
    }

    /** Rows that give the same are one result. */
    private void rows(DecisionResult result) {
      Map<String, List<Claim>> byWords = new LinkedHashMap<>();
      for (Firing firing : result.counting()) {
        if (firing.results().stream().allMatch(PossibleValues::isCertain)) {
          add(byWords, words(result, firing.results()), claim(result, firing.row()));
        } else {
          formula(firing.row());
          add(byWords, firing.row().id(), claim(result, firing.row()));
        }
      }
      if (result.mayBeByDefault()) {
        result.table().otherwise().ifPresent(this::formula);
        add(byWords, byDefault(result), new Claim.NoRow(result.table()));
      }
      byWords.forEach(
          (words, claims) ->
              results.add(
                  new Result(words, claims.size() == 1 ? claims.get(0) : new Claim.Any(claims))));
    }

    private static void add(Map<String, List<Claim>> byWords, String words, Claim claim) {
      byWords.computeIfAbsent(words, key -> new ArrayList<>()).add(claim);
    }

    private static Claim claim(DecisionResult result, Row row) {
      return new Claim.Counts(result.table(), row);
    }

    private void formula(Row row) {
      row.results().forEach(cell -> formulas.addAll(cell.expression().references()));
    }

    private static String words(DecisionResult result, List<PossibleValues> values) {
      List<DecisionTable.Output> outputs = result.table().outputs();
      List<String> words = new ArrayList<>();
      for (int i = 0; i < values.size(); i++) {
        String value = values.get(i).plain();
        words.add(values.size() == 1 ? value : outputs.get(i).symbol().name() + " " + value);
      }
      return String.join("; ", words);
    }

    /** An entry that a row gives as well is the same entry. */
    private static String byDefault(DecisionResult result) {
      if (result.defaultResults().isEmpty()) {
        List<PossibleValues> nothing =
            result.table().outputs().stream()
                .map(output -> PossibleValues.nothing(output.symbol().type()))
                .toList();
        return result.table().hitPolicy().isList() ? "no entry" : words(result, nothing);
      }
      boolean certain = result.defaultResults().stream().allMatch(PossibleValues::isCertain);
      return certain
          ? words(result, result.defaultResults())
          : result.table().otherwise().map(Row::id).orElse("");
    }

    private void aggregate(DecisionResult result, Symbol output) {
      PossibleValues all =
          Optional.ofNullable(result.outputs().get(output.name()))
              .orElse(PossibleValues.nothing(output.type()));
      if (all.isCertain()) {
        return;
      }
      List<Value> values = all.values().isFinite() ? all.values().values() : multiples(result, all);
      boolean formula = !results(result).allMatch(PossibleValues::isCertain);
      if (values.isEmpty() || formula) {
        rows(result);
        result.counting().forEach(firing -> formula(firing.row()));
        // Rows may differ and add up to the same; that is found out by running both cases.
        formulas.add(output);
        return;
      }
      for (Value value : values) {
        results.add(new Result(value.plain(), new Claim.Is(output, PossibleValues.of(value))));
      }
      if (all.orNothing()) {
        results.add(
            new Result("nothing", new Claim.Is(output, PossibleValues.nothing(output.type()))));
      }
    }

    /** What each row that may count gives, and the default row. */
    private static Stream<PossibleValues> results(DecisionResult result) {
      return Stream.concat(
          result.counting().stream().flatMap(firing -> firing.results().stream()),
          result.defaultResults().stream());
    }

    /** The sums from end to end in steps of the smallest unit; none when they are too many. */
    private static List<Value> multiples(DecisionResult result, PossibleValues all) {
      Interval hull = all.values().hull();
      if (!(hull.low() instanceof Value.NumberValue low)
          || !(hull.high() instanceof Value.NumberValue high)) {
        return List.of();
      }
      int decimals =
          results(result)
              .flatMap(one -> one.single().stream())
              .filter(Value.NumberValue.class::isInstance)
              .mapToInt(one -> ((Value.NumberValue) one).number().stripTrailingZeros().scale())
              .reduce(0, Math::max);
      BigDecimal step = BigDecimal.ONE.movePointLeft(decimals);
      List<Value> values = new ArrayList<>();
      for (BigDecimal sum = low.number(); sum.compareTo(high.number()) <= 0; sum = sum.add(step)) {
        if (values.size() == SUMS_AT_MOST) {
          return List.of();
        }
        values.add(Value.of(sum));
      }
      return values;
    }

    /** Every row that may be shown and may not be. */
    void shown(Recommendation advice) {
      Set<String> rankings =
          advice.rankings().stream().map(one -> one.ranking().name()).collect(Collectors.toSet());
      for (DecisionResult result : advice.decisions()) {
        DecisionTable table = result.table();
        boolean votes = table.ranking().filter(rankings::contains).isPresent();
        if (!votes && table.shownAs() == ShownAs.WORKING) {
          continue;
        }
        for (Firing firing : result.counting()) {
          if (firing.standing() == Standing.MAY_DECIDE) {
            results.add(new Result(firing.row().id(), claim(result, firing.row())));
          }
          if (!firing.results().stream().allMatch(PossibleValues::isCertain)) {
            formula(firing.row());
          }
        }
        if (result.mayBeByDefault() && table.otherwise().isPresent()) {
          Row row = table.otherwise().get();
          formula(row);
          if (!result.byDefault()) {
            results.add(new Result(row.id(), new Claim.NoRow(table)));
          }
        }
      }
    }
  }
}
