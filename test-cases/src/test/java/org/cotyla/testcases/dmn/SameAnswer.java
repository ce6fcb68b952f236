package org.cotyla.testcases.dmn;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.cotyla.dmn.DmnExport;
import org.cotyla.evaluate.DecisionResult;
import org.cotyla.evaluate.Firing;
import org.cotyla.evaluate.RankedOption;
import org.cotyla.evaluate.RankedOption.Availability;
import org.cotyla.evaluate.RankingResult;
import org.cotyla.evaluate.Recommendation;
import org.cotyla.expression.Scope;
import org.cotyla.expression.Symbol;
import org.cotyla.protocol.Calculation;
import org.cotyla.protocol.DecisionTable;
import org.cotyla.protocol.Effect;
import org.cotyla.protocol.Row;
import org.cotyla.protocol.Vote;
import org.cotyla.value.PossibleValues;
import org.kie.dmn.api.core.DMNMessage;
import org.kie.dmn.api.core.DMNResult;

/** Every difference between our answer to a complete case and that of Drools' DMN engine. */
final class SameAnswer {

  private final DmnExport export;
  private final Recommendation advice;
  private final DMNResult theirs;
  private final List<String> differences = new ArrayList<>();

  private SameAnswer(DmnExport export, Recommendation advice, DMNResult theirs) {
    this.export = export;
    this.advice = advice;
    this.theirs = theirs;
  }

  static List<String> differences(DmnExport export, Recommendation advice, DMNResult theirs) {
    SameAnswer same = new SameAnswer(export, advice, theirs);
    theirs.getMessages(DMNMessage.Severity.ERROR).stream()
        .map(message -> "Drools: " + message.getText())
        .forEach(same.differences::add);
    advice.protocol().calculations().forEach(same::calculation);
    advice.decisions().forEach(same::decision);
    advice.rankings().forEach(same::ranking);
    return same.differences;
  }

  private Object result(String name) {
    return theirs.getDecisionResultByName(name).getResult();
  }

  private void compare(String what, Object ours, Object got) {
    if (!same(ours, got)) {
      differences.add(what + ": ours " + ours + ", Drools " + got);
    }
  }

  private static boolean same(Object ours, Object got) {
    if (ours instanceof List<?> list && got instanceof List<?> other) {
      return list.size() == other.size()
          && java.util.stream.IntStream.range(0, list.size())
              .allMatch(i -> same(list.get(i), other.get(i)));
    }
    if (ours instanceof Map<?, ?> map && got instanceof Map<?, ?> other) {
      return map.keySet().equals(other.keySet())
          && map.keySet().stream().allMatch(key -> same(map.get(key), other.get(key)));
    }
    return DroolsModel.same(ours, got);
  }

  private void calculation(Calculation calculation) {
    single(calculation.symbol(), advice.calculations().get(calculation.name()));
  }

  private void single(Symbol symbol, PossibleValues value) {
    compare(symbol.name(), DroolsModel.plain(value), result(export.decision(symbol).orElseThrow()));
  }

  private void decision(DecisionResult result) {
    DecisionTable table = result.table();
    if (table.votes()) {
      List<Map<String, Object>> votes =
          result.counting().stream().map(f -> vote(f.row().vote().orElseThrow())).toList();
      boolean list = table.hitPolicy().isList();
      Object ours = list ? votes : votes.stream().findFirst().orElse(null);
      compare(table.name(), ours, orNone(result(export.table(table)), list));
    } else if (table.hitPolicy().isList()) {
      compare(table.name(), rows(result), orNone(result(export.table(table)), true));
    } else {
      table
          .outputs()
          .forEach(output -> single(output.symbol(), result.outputs().get(output.symbol().name())));
    }
  }

  /**
   * Drools gives null where no row of a list table matches, for which we say an empty list, and the
   * default results by themselves, for which we say a list of one.
   */
  private static Object orNone(Object result, boolean isList) {
    if (!isList || result instanceof List<?>) {
      return result;
    }
    return result == null ? List.of() : List.of(result);
  }

  private static Map<String, Object> vote(Vote vote) {
    Map<String, Object> entries = new LinkedHashMap<>();
    entries.put("option", vote.option());
    entries.put("effect", vote.effect().word());
    entries.put("points", vote.effect() == Effect.RULE_OUT ? null : vote.points());
    return entries;
  }

  private List<Object> rows(DecisionResult result) {
    List<Object> rows = new ArrayList<>();
    for (Firing firing : result.counting()) {
      rows.add(row(result.table(), firing.results()));
    }
    if (rows.isEmpty()) {
      // A default that is nothing is no default, and so no member of the list.
      result
          .table()
          .otherwise()
          .map(otherwise -> defaultRow(result, otherwise))
          .ifPresent(rows::add);
    }
    return rows;
  }

  private Object defaultRow(DecisionResult result, Row otherwise) {
    Scope scope = DroolsModel.scope(advice);
    return row(
        result.table(),
        otherwise.results().stream().map(cell -> cell.expression().evaluate(scope)).toList());
  }

  private Object row(DecisionTable table, List<PossibleValues> results) {
    if (results.size() == 1) {
      return DroolsModel.plain(results.get(0));
    }
    Map<String, Object> entries = new LinkedHashMap<>();
    for (int i = 0; i < results.size(); i++) {
      String name = export.decision(table.outputs().get(i).symbol()).orElseThrow();
      entries.put(name, DroolsModel.plain(results.get(i)));
    }
    return entries;
  }

  private void ranking(RankingResult ranking) {
    String name = ranking.ranking().name();
    single(ranking.ranking().first(), ranking.first());
    if (!(result(export.ranking(name)) instanceof Map<?, ?> context)) {
      differences.add(name + ": Drools gives no ranking");
      return;
    }
    Map<String, BigDecimal> points = new LinkedHashMap<>();
    for (Object standing : (List<?>) context.get("standings")) {
      Map<?, ?> entries = (Map<?, ?>) standing;
      points.put(String.valueOf(entries.get("name")), (BigDecimal) entries.get("points"));
    }
    for (RankedOption option : ranking.options()) {
      compare(
          name + ", points of " + option.name(), option.points().now(), points.get(option.name()));
    }
    compare(name + ", ruled out", names(ranking, true), context.get("ruled out"));
    List<?> available =
        ((List<?>) Objects.requireNonNull(context.get("available")))
            .stream().map(standing -> ((Map<?, ?>) standing).get("name")).toList();
    compare(name + ", order", names(ranking, false), available);
  }

  private static List<String> names(RankingResult ranking, boolean ruledOut) {
    return ranking.options().stream()
        .filter(option -> (option.availability() == Availability.RULED_OUT) == ruledOut)
        .map(RankedOption::name)
        .toList();
  }
}
