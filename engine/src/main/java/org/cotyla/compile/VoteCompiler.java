package org.cotyla.compile;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.cotyla.draft.DecisionDraft;
import org.cotyla.draft.RowDraft;
import org.cotyla.draft.Text;
import org.cotyla.expression.CellParser;
import org.cotyla.expression.Expression;
import org.cotyla.expression.ExpressionException;
import org.cotyla.expression.Symbol;
import org.cotyla.issue.Issues;
import org.cotyla.name.NameIndex;
import org.cotyla.name.NearestWord;
import org.cotyla.protocol.Effect;
import org.cotyla.protocol.Option;
import org.cotyla.protocol.Vote;
import org.cotyla.value.Value;
import org.cotyla.value.ValueType;

/** The columns option, effect and points of a sheet that votes. */
final class VoteCompiler {

  private static final List<String> COLUMNS = List.of("option", "effect", "points");
  private static final String POINTS =
      "points are a number above 0 or a house constant; the effect says for or against";

  private final List<String> optionNames;
  private final NameIndex<Option> options;
  private final int option;
  private final int effect;
  private final int points;
  private final Issues issues;

  private VoteCompiler(List<Option> options, List<Integer> places, Issues issues) {
    this.optionNames = options.stream().map(Option::name).toList();
    this.options = NameIndex.of(options, Option::name);
    this.option = places.get(0);
    this.effect = places.get(1);
    this.points = places.get(2);
    this.issues = issues;
  }

  /** The votes of a sheet, or nothing when it has not exactly the three columns. */
  static Optional<VoteCompiler> of(DecisionDraft draft, List<Option> options, Issues issues) {
    List<Integer> places = new ArrayList<>();
    NameIndex<Integer> columns =
        NameIndex.of(
            java.util.stream.IntStream.range(0, draft.then().size()).boxed().toList(),
            index -> draft.then().get(index).text());
    COLUMNS.forEach(column -> columns.find(column).ifPresent(places::add));
    if (places.size() != COLUMNS.size() || draft.then().size() != COLUMNS.size()) {
      issues.error(
          "W158",
          draft.name().at(),
          "`" + draft.name().text() + "` votes, so its then columns must be option, effect, points",
          "it has: " + String.join(", ", draft.then().stream().map(Text::text).toList()));
      return Optional.empty();
    }
    return Optional.of(new VoteCompiler(options, places, issues));
  }

  Optional<Vote> vote(RowDraft draft, CellParser parser, Map<Symbol, Value> constants) {
    Optional<Option> chosen = option(draft.results().get(option));
    Optional<Effect> known = effect(draft.results().get(effect));
    if (chosen.isEmpty() || known.isEmpty()) {
      return Optional.empty();
    }
    Text cell = draft.results().get(points);
    if (known.get() == Effect.RULE_OUT) {
      if (!cell.isNone()) {
        issues.error(
            "W166",
            cell.at(),
            "a row that rules out gives no points, but `" + cell.text() + "` stands here",
            "write -");
        return Optional.empty();
      }
      return Optional.of(new Vote(chosen.get().name(), Effect.RULE_OUT, BigDecimal.ZERO));
    }
    return points(cell, parser, constants)
        .map(given -> new Vote(chosen.get().name(), known.get(), given));
  }

  private Optional<Option> option(Text cell) {
    Optional<Option> chosen = options.find(cell.text());
    if (chosen.isEmpty()) {
      issues.error(
          "W164",
          cell.at(),
          "`" + cell.text() + "` is not an option of this ranking",
          NearestWord.help(cell.text(), optionNames));
    }
    return chosen;
  }

  private Optional<Effect> effect(Text cell) {
    Optional<Effect> known = Effect.of(cell.text());
    if (known.isEmpty()) {
      issues.error(
          "W165",
          cell.at(),
          "`" + cell.text() + "` is not an effect",
          NearestWord.help(cell.text(), Effect.words()));
    }
    return known;
  }

  private Optional<BigDecimal> points(Text cell, CellParser parser, Map<Symbol, Value> constants) {
    try {
      Expression given = parser.formula(cell.text());
      Optional<Value> value =
          constants.keySet().containsAll(given.references())
              ? given.evaluate(CalculationCompiler.scope(constants)).single()
              : Optional.empty();
      if (value.orElse(null) instanceof Value.NumberValue number && number.number().signum() > 0) {
        return Optional.of(number.number());
      }
      issues.error("W166", cell.at(), "`" + cell.text() + "` is not a number of points", POINTS);
    } catch (ExpressionException faulty) {
      issues.error("W166", cell.at(), faulty.line(), help(cell, faulty, parser, constants));
    }
    return Optional.empty();
  }

  /** The advice of the fault, of which names only constants of numbers are worth suggesting. */
  private static String help(
      Text cell, ExpressionException faulty, CellParser parser, Map<Symbol, Value> constants) {
    List<Symbol> numbers =
        constants.keySet().stream().filter(name -> name.type() == ValueType.NUMBER).toList();
    Optional<String> help = faulty.help();
    try {
      parser.knowing(numbers).formula(cell.text());
    } catch (ExpressionException again) {
      help = again.line().equals(faulty.line()) ? again.help() : help;
    }
    return help.orElse(POINTS);
  }
}
