package org.cotyla.compile;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.cotyla.draft.Text;
import org.cotyla.expression.Symbol;
import org.cotyla.expression.Vocabulary;
import org.cotyla.issue.CellRef;
import org.cotyla.issue.Issues;
import org.cotyla.name.Names;
import org.cotyla.name.NearestWord;
import org.cotyla.protocol.Demand;
import org.cotyla.protocol.DemandWord;
import org.cotyla.protocol.Field;
import org.cotyla.protocol.Option;

/** What a safeguard demands: the cells under {@code must} and {@code what}. */
final class DemandCompiler {

  private static final String HOW_TO_HOLD =
      "write a name, a colon and a test, as `some name: < 30`";

  private final Vocabulary vocabulary;
  private final List<Field> fields;
  private final Map<String, List<Option>> rankings;
  private final WrittenResults results;
  private final RowCompiler rows;
  private final OutputRules outputs;
  private final Issues issues;

  DemandCompiler(
      Vocabulary vocabulary,
      List<Field> fields,
      Map<String, List<Option>> rankings,
      WrittenResults results,
      RowCompiler rows,
      OutputRules outputs,
      Issues issues) {
    this.vocabulary = vocabulary;
    this.fields = fields;
    this.rankings = rankings;
    this.results = results;
    this.rows = rows;
    this.outputs = outputs;
    this.issues = issues;
  }

  Optional<Demand> compile(Text must, Text what) {
    Optional<DemandWord> word = DemandWord.of(must.text());
    if (word.isEmpty()) {
      issues.error(
          "W200",
          must.at(),
          must.isBlank()
              ? "the safeguard demands nothing"
              : "`" + must.text() + "` is not a demand of a safeguard",
          NearestWord.help(must.text(), DemandWord.words()));
      return Optional.empty();
    }
    if (what.isNone()) {
      issues.error(
          "W201",
          what.at(),
          "nothing stands here that must " + word.get().word(),
          help(word.get()));
      return Optional.empty();
    }
    return switch (word.get()) {
      case NEVER_COME_FIRST ->
          option(what).map(found -> new Demand.NeverFirst(found.ranking, found.option, what.at()));
      case BE_RULED_OUT ->
          option(what).map(found -> new Demand.RuledOut(found.ranking, found.option, what.at()));
      case BE_SHOWN -> shown(what);
      case HOLD -> holds(what);
    };
  }

  private static String help(DemandWord word) {
    return switch (word) {
      case NEVER_COME_FIRST, BE_RULED_OUT -> "name an option of the sheet Options";
      case BE_SHOWN -> "write the id of a row, or the exact text of a result";
      case HOLD -> HOW_TO_HOLD;
    };
  }

  private record Found(String ranking, String option) {}

  private Optional<Found> option(Text what) {
    List<String> names = new ArrayList<>();
    for (Map.Entry<String, List<Option>> ranking : rankings.entrySet()) {
      for (Option option : ranking.getValue()) {
        if (Names.key(option.name()).equals(Names.key(what.text()))) {
          return Optional.of(new Found(ranking.getKey(), option.name()));
        }
        names.add(option.name());
      }
    }
    issues.error(
        "W202",
        what.at(),
        "`" + what.text() + "` is not an option",
        NearestWord.help(what.text(), names));
    return Optional.empty();
  }

  private Optional<Demand> shown(Text what) {
    Optional<Demand> row =
        results
            .row(what.text())
            .map(found -> new Demand.RowCounts(found.decision(), found.id(), what.at()));
    if (row.isPresent()) {
      return row;
    }
    List<WrittenResults.Entry> entries = results.entries(what.text());
    if (entries.size() == 1) {
      WrittenResults.Entry entry = entries.get(0);
      return vocabulary
          .symbol(entry.output())
          .map(output -> new Demand.TextShown(entry.decision(), output, what.text(), what.at()));
    }
    if (entries.isEmpty()) {
      issues.error(
          "W203",
          what.at(),
          "`" + what.text() + "` is neither the id of a row nor the text of a result",
          NearestWord.to(what.text(), results.all())
              .map(nearest -> "did you mean `" + nearest + "`?")
              .or(() -> Optional.of(help(DemandWord.BE_SHOWN))));
    } else {
      issues.error(
          "W204",
          what.at(),
          "`"
              + what.text()
              + "` is a result of several decisions: "
              + String.join(
                  ", ", entries.stream().map(WrittenResults.Entry::decision).distinct().toList()),
          "write the id of the row that is meant");
    }
    return Optional.empty();
  }

  private Optional<Demand> holds(Text what) {
    int colon = what.text().indexOf(':');
    if (colon < 0) {
      issues.error(
          "W205", what.at(), "`" + what.text() + "` is not a name and a test", HOW_TO_HOLD);
      return Optional.empty();
    }
    String name = what.text().substring(0, colon).strip();
    Optional<Symbol> symbol = vocabulary.symbol(name);
    if (symbol.isEmpty()) {
      issues.error(
          "W154",
          what.at(),
          "`" + name + "` is neither a field, a calculation nor a decision's result",
          NearestWord.to(name, vocabulary.names())
              .map(nearest -> "did you mean `" + nearest + "`?"));
      return Optional.empty();
    }
    return holds(symbol.get(), new Text(what.text().substring(colon + 1), what.at()));
  }

  private Optional<Demand> holds(Symbol symbol, Text test) {
    CellRef at = test.at();
    boolean given =
        fields.stream().anyMatch(field -> field.isGiven() && field.symbol().equals(symbol));
    if (given) {
      issues.error(
          "W206",
          at,
          "`" + symbol.name() + "` is given by the case, so no protocol can hold it",
          "test it under `when`, and demand something that the protocol gives");
      return Optional.empty();
    }
    if (outputs.isListOutput(symbol)) {
      issues.error(
          "W154",
          at,
          "`" + symbol.name() + "` is a list, which no test can read",
          "demand that one of its entries must `" + DemandWord.BE_SHOWN.word() + "`");
      return Optional.empty();
    }
    Optional<Demand> demand = rows.test(test, symbol).map(sound -> new Demand.Holds(symbol, sound));
    demand.ifPresent(
        sound ->
            outputs.reportListsRead(((Demand.Holds) sound).test().prepared().references(), at));
    return demand;
  }
}
