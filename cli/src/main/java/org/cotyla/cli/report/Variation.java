package org.cotyla.cli.report;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.cotyla.evaluate.AnswerScope;
import org.cotyla.evaluate.Engine;
import org.cotyla.expression.Expression;
import org.cotyla.finding.Datum;
import org.cotyla.finding.Datum.Knowledge;
import org.cotyla.finding.Findings;
import org.cotyla.protocol.Field;
import org.cotyla.value.PossibleValues;
import org.cotyla.value.Value;

/** Runs a case again and again with one finding changed, and notes what a formula comes to. */
record Variation(Engine engine, Findings findings) {

  /** One run: the finding's value, and what the formula came to. */
  record Result(BigDecimal given, PossibleValues result) {}

  List<Result> of(Field field, List<BigDecimal> values, Expression formula) {
    List<Result> results = new ArrayList<>();
    for (BigDecimal value : values) {
      if (field.allowed().contains(Value.of(value))) {
        Findings changed = with(field, Value.of(value));
        AnswerScope answer = AnswerScope.of(engine.evaluate(changed));
        results.add(new Result(value, formula.evaluate(answer)));
      }
    }
    return results;
  }

  private Findings with(Field field, Value value) {
    List<Datum> data =
        findings.data().stream()
            .map(
                datum ->
                    datum.field().equals(field)
                        ? new Datum(field, Knowledge.RECORDED, PossibleValues.of(value))
                        : datum)
            .toList();
    return new Findings(findings.title(), findings.stage(), data, findings.remarks());
  }
}
