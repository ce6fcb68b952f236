package org.cotyla.compile;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.cotyla.draft.DecisionDraft;
import org.cotyla.draft.RowDraft;
import org.cotyla.draft.Text;
import org.cotyla.expression.Symbol;
import org.cotyla.expression.Vocabulary;
import org.cotyla.issue.CellRef;
import org.cotyla.issue.Issues;
import org.cotyla.name.Names;
import org.cotyla.name.NearestWord;
import org.cotyla.protocol.DecisionTable;
import org.cotyla.protocol.DecisionTable.Input;
import org.cotyla.protocol.DecisionTable.Output;
import org.cotyla.protocol.HitPolicy;
import org.cotyla.protocol.Option;
import org.cotyla.protocol.Row;
import org.cotyla.protocol.ShownAs;

/** The decision sheets. Remembers every row id, so that none is used twice. */
final class DecisionCompiler {

  private static final String DEFAULT = "default";

  private final Vocabulary vocabulary;
  private final OutputRules outputs;
  private final Map<String, List<Option>> rankings;
  private final RowCompiler rows;
  private final Issues issues;
  private final Map<String, CellRef> ids = new HashMap<>();
  private final Map<String, CellRef> names = new HashMap<>();

  DecisionCompiler(
      Vocabulary vocabulary,
      OutputRules outputs,
      Map<String, List<Option>> rankings,
      RowCompiler rows,
      Issues issues) {
    this.vocabulary = vocabulary;
    this.outputs = outputs;
    this.rankings = rankings;
    this.rows = rows;
    this.issues = issues;
  }

  DecisionTable compile(DecisionDraft draft) {
    name(draft.name());
    if (draft.asks().isNone()) {
      issues.error(
          "W151",
          draft.asks().at(),
          "decision `" + draft.name().text() + "` does not say what it asks");
    }
    HitPolicy policy = hitPolicy(draft.hitPolicy());
    Optional<String> ranking = ranking(draft.ranks());
    List<Optional<Input>> when = draft.when().stream().map(this::input).toList();
    Optional<VoteCompiler> votes =
        ranking.flatMap(
            name -> VoteCompiler.of(draft, rankings.getOrDefault(name, List.of()), issues));
    List<Optional<Output>> then =
        draft.ranks().isNone() ? outputs.columns(draft, policy) : List.of();
    if (ranking.isPresent() && (policy.isAggregate() || policy.needsPriorities())) {
      issues.error(
          "W159",
          draft.hitPolicy().at(),
          "a sheet that votes cannot have the hit policy " + policy.letters(),
          "use C, or U, A or F when only one row may speak");
    }
    List<Row> sound = new ArrayList<>();
    Optional<Row> otherwise = Optional.empty();
    boolean counted = policy == HitPolicy.SUM || policy == HitPolicy.COUNT;
    for (RowDraft row : draft.rows()) {
      boolean isDefault = isDefault(row.id().text());
      id(row.id(), isDefault);
      Optional<Row> compiled = rows.compile(row, sound.size(), when, then, votes, counted);
      if (isDefault) {
        otherwise = otherwise(row, compiled, otherwise, draft);
      } else {
        compiled.ifPresent(sound::add);
      }
    }
    if (draft.rows().isEmpty()) {
      issues.error("W170", draft.name().at(), "decision `" + draft.name().text() + "` has no rows");
    }
    return new DecisionTable(
        draft.name().text(),
        draft.asks().text(),
        policy,
        ranking,
        shownAs(draft.shownAs()),
        when.stream().flatMap(Optional::stream).toList(),
        then.stream().flatMap(Optional::stream).toList(),
        sound,
        otherwise,
        draft.name().at());
  }

  private void name(Text name) {
    if (name.isBlank()) {
      issues.error("W110", name.at(), "the decision has no name");
      return;
    }
    CellRef earlier = names.putIfAbsent(Names.key(name.text()), name.at());
    if (earlier != null) {
      issues.error(
          "W111",
          name.at(),
          "the decision name `" + name.text() + "` is already used at " + earlier.plain());
    }
  }

  /** Takes an id, which must be new unless it is that of a default row. */
  void id(Text id, boolean isDefault) {
    if (id.isBlank()) {
      issues.error("W160", id.at(), "the row has no id", "give it an id that was never used");
      return;
    }
    CellRef earlier = isDefault ? null : ids.putIfAbsent(Names.key(id.text()), id.at());
    if (earlier != null) {
      issues.error(
          "W161",
          id.at(),
          "row id `" + id.text() + "` is already used at " + earlier.plain(),
          "give one of the two an id that was never used");
    }
  }

  static boolean isDefault(String id) {
    return Names.key(id).equals(DEFAULT);
  }

  /** Where the id stands, whichever way it is written there; nothing when no row has it. */
  Optional<CellRef> usedAt(String id) {
    return Optional.ofNullable(ids.get(Names.key(id)));
  }

  private Optional<Row> otherwise(
      RowDraft draft, Optional<Row> compiled, Optional<Row> earlier, DecisionDraft decision) {
    if (earlier.isPresent()) {
      issues.error("W169", draft.id().at(), "the sheet has two default rows");
    }
    if (!decision.ranks().isNone()) {
      issues.error("W169", draft.id().at(), "a sheet that votes has no default row");
    }
    for (Text test : draft.tests()) {
      if (!test.isNone()) {
        issues.error(
            "W169", test.at(), "the default row has a test `" + test.text() + "`", "write -");
      }
    }
    return compiled;
  }

  private HitPolicy hitPolicy(Text cell) {
    Optional<HitPolicy> policy = HitPolicy.of(cell.text());
    if (policy.isEmpty()) {
      issues.error(
          "W150",
          cell.at(),
          "`" + cell.text() + "` is not a hit policy",
          "expected one of: " + String.join(", ", HitPolicy.allLetters()));
    }
    return policy.orElse(HitPolicy.UNIQUE);
  }

  private Optional<String> ranking(Text cell) {
    if (cell.isNone()) {
      return Optional.empty();
    }
    Optional<String> known =
        rankings.keySet().stream()
            .filter(name -> Names.key(name).equals(Names.key(cell.text())))
            .findFirst();
    if (known.isEmpty()) {
      issues.error(
          "W152",
          cell.at(),
          "`" + cell.text() + "` is not a ranking of the sheet Options",
          NearestWord.help(cell.text(), rankings.keySet()));
    }
    return known;
  }

  private ShownAs shownAs(Text cell) {
    if (cell.isNone()) {
      return ShownAs.WORKING;
    }
    Optional<ShownAs> known = ShownAs.of(cell.text());
    if (known.isEmpty()) {
      issues.error(
          "W153",
          cell.at(),
          "`" + cell.text() + "` is not a way to show a decision",
          NearestWord.help(cell.text(), ShownAs.words()));
    }
    return known.orElse(ShownAs.WORKING);
  }

  /** What a column of tests reads, or nothing when there is no such name, which is reported. */
  Optional<Input> input(Text cell) {
    Optional<Symbol> symbol = vocabulary.symbol(cell.text());
    if (symbol.isEmpty()) {
      issues.error(
          "W154",
          cell.at(),
          "`" + cell.text() + "` is neither a field, a calculation nor a decision's result",
          NearestWord.to(cell.text(), vocabulary.names())
              .map(nearest -> "did you mean `" + nearest + "`?"));
    }
    boolean isList = symbol.isPresent() && outputs.isListOutput(symbol.get());
    if (isList) {
      issues.error(
          "W154",
          cell.at(),
          "`" + cell.text() + "` is a list, which no test can read",
          "test the findings that lead to it");
    }
    return isList ? Optional.empty() : symbol.map(known -> new Input(known, cell.at()));
  }
}
