package org.cotyla.compile;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.cotyla.draft.RowDraft;
import org.cotyla.draft.Text;
import org.cotyla.expression.CellParser;
import org.cotyla.expression.CellTest;
import org.cotyla.expression.Expression;
import org.cotyla.expression.ExpressionException;
import org.cotyla.expression.PreparedTest;
import org.cotyla.expression.Symbol;
import org.cotyla.issue.Issues;
import org.cotyla.protocol.DecisionTable.Input;
import org.cotyla.protocol.DecisionTable.Output;
import org.cotyla.protocol.Row;
import org.cotyla.protocol.Vote;
import org.cotyla.value.Value;

/** One row of a decision sheet: its tests, its results, its reason and its sources. */
final class RowCompiler {

  private final CellParser parser;
  private final Map<Symbol, Value> constants;
  private final TestRemarks remarks;
  private final References references;
  private final Issues issues;

  RowCompiler(
      CellParser parser,
      Map<Symbol, Value> constants,
      TestRemarks remarks,
      References references,
      Issues issues) {
    this.parser = parser;
    this.constants = constants;
    this.remarks = remarks;
    this.references = references;
    this.issues = issues;
  }

  /**
   * The row, or nothing when a cell of it is faulty.
   *
   * @param counted whether results are added up or counted, so that none is a value by itself
   */
  Optional<Row> compile(
      RowDraft draft,
      int position,
      List<Optional<Input>> inputs,
      List<Optional<Output>> outputs,
      Optional<VoteCompiler> votes,
      boolean counted) {
    boolean sound = reason(draft);
    List<Row.Test> tests = new ArrayList<>();
    for (int i = 0; i < inputs.size(); i++) {
      Text cell = draft.tests().get(i);
      inputs.get(i).flatMap(input -> test(cell, input.symbol())).ifPresent(tests::add);
    }
    List<Row.Result> results = new ArrayList<>();
    for (int i = 0; i < outputs.size(); i++) {
      Text cell = draft.results().get(i);
      outputs
          .get(i)
          .flatMap(output -> result(cell, output.symbol(), counted))
          .ifPresent(results::add);
    }
    Optional<Vote> vote = votes.flatMap(compiler -> compiler.vote(draft, parser, constants));
    sound &= tests.size() == inputs.size() && results.size() == outputs.size();
    sound &= votes.isEmpty() || vote.isPresent();
    List<String> keys = references.keys(draft.sources(), "row `" + draft.id().text() + "`");
    Row row =
        new Row(
            draft.id().text(),
            position,
            tests,
            results,
            vote,
            draft.because().text(),
            keys,
            draft.id().at());
    return sound ? Optional.of(row) : Optional.empty();
  }

  private boolean reason(RowDraft draft) {
    if (draft.because().isNone()) {
      issues.error(
          "W123",
          draft.because().at(),
          "row `" + draft.id().text() + "` has no because",
          "give its reason in one sentence");
      return false;
    }
    return true;
  }

  /** The test in a cell under the input, or nothing when it is faulty, which is reported. */
  Optional<Row.Test> test(Text cell, Symbol input) {
    try {
      CellTest test = parser.test(cell.text(), input);
      PreparedTest prepared =
          PreparedTest.of(
              test, input.type(), CalculationCompiler.scope(constants), constants.keySet());
      remarks.check(cell, input, prepared);
      return Optional.of(new Row.Test(cell.text(), prepared, cell.at()));
    } catch (ExpressionException faulty) {
      issues.error("W162", cell.at(), faulty.line(), faulty.help());
      return Optional.empty();
    }
  }

  private Optional<Row.Result> result(Text cell, Symbol output, boolean counted) {
    try {
      Expression result = parser.result(cell.text(), output);
      remarks.unit(cell, output, result);
      if (!counted) {
        remarks.result(cell, output, result, constants);
      }
      return Optional.of(new Row.Result(cell.text(), result, cell.at()));
    } catch (ExpressionException faulty) {
      issues.error("W163", cell.at(), faulty.line(), faulty.help());
      return Optional.empty();
    }
  }
}
