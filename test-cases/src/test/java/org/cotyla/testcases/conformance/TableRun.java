package org.cotyla.testcases.conformance;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.cotyla.compile.ProtocolCompiler;
import org.cotyla.evaluate.DecisionResult;
import org.cotyla.evaluate.Engine;
import org.cotyla.evaluate.Fault;
import org.cotyla.evaluate.Firing;
import org.cotyla.expression.Dialect;
import org.cotyla.expression.FormulaFunction;
import org.cotyla.finding.Case;
import org.cotyla.finding.Datum;
import org.cotyla.finding.Findings;
import org.cotyla.finding.FindingsReader;
import org.cotyla.finding.Given;
import org.cotyla.issue.Issue;
import org.cotyla.issue.Issues;
import org.cotyla.protocol.Protocol;
import org.cotyla.testcases.conformance.DmnModel.Input;
import org.cotyla.testcases.conformance.DmnModel.Table;
import org.cotyla.value.PossibleValues;
import org.cotyla.value.Value;
import org.cotyla.value.ValueType;

/** Runs one decision table of the TCK in the engine: compiled, and fired against one case. */
final class TableRun {

  private final Table table;
  private final Types types;
  private final Collection<FormulaFunction> functions;

  TableRun(Table table, Types types, Collection<FormulaFunction> functions) {
    this.table = table;
    this.types = types;
    this.functions = functions;
  }

  /**
   * What the table gives.
   *
   * @param inputs the value of each input column's expression
   * @param paths what names and paths in cells stand for
   */
  FeelValue run(List<FeelValue> inputs, Map<String, FeelValue> paths) {
    Map<String, FeelValue> given = new LinkedHashMap<>();
    List<String> columns = new ArrayList<>();
    for (int i = 0; i < inputs.size(); i++) {
      String expression = table.inputs().get(i).expression();
      columns.add(paths.containsKey(expression) ? expression : "input " + (i + 1));
      given.put(columns.get(i), inputs.get(i));
    }
    String cells = cells();
    paths.forEach(
        (name, value) -> {
          if (value instanceof FeelValue.Single && cells.contains(name)) {
            given.putIfAbsent(name, value);
          }
        });
    Map<String, ValueType> givenTypes = new LinkedHashMap<>();
    given.forEach((name, value) -> givenTypes.put(name, type(name, value, columns)));
    TableDraft draft = new TableDraft(table, types, givenTypes, columns, functions);
    Engine engine = Engine.of(compiled(draft));
    DecisionResult result =
        engine
            .evaluate(findings(engine.protocol(), given))
            .decision(TableDraft.DECISION)
            .orElseThrow();
    return value(result, draft);
  }

  private String cells() {
    return table.rules().stream()
        .flatMap(rule -> Stream.concat(rule.tests().stream(), rule.results().stream()))
        .collect(Collectors.joining("\n"));
  }

  private ValueType type(String name, FeelValue value, List<String> columns) {
    if (value instanceof FeelValue.Single single) {
      return single.value().type();
    }
    if (value instanceof FeelValue.Null) {
      Input input = table.inputs().get(columns.indexOf(name));
      return input.type().flatMap(types::valueType).orElse(ValueType.TEXT);
    }
    throw new OutOfScopeException(
        value instanceof FeelValue.Foreign foreign
            ? OutOfScope.type(foreign.type())
            : "tables over lists or contexts");
  }

  private Protocol compiled(TableDraft draft) {
    Issues issues = new Issues();
    return new ProtocolCompiler(functions, Dialect.STRICT)
        .compile(draft.draft(), issues)
        .orElseThrow(
            () ->
                new IllegalStateException(
                    issues.list().stream()
                        .map(Issue::toString)
                        .collect(Collectors.joining("\n", "not compiled:\n", ""))));
  }

  /** The findings that are given; what is null is nothing, not missing. */
  private static Findings findings(Protocol protocol, Map<String, FeelValue> given) {
    Map<String, Given> stated = new LinkedHashMap<>();
    given.forEach(
        (name, value) -> {
          if (value instanceof FeelValue.Single single) {
            stated.put(name, stated(single.value()));
          }
        });
    Findings read = new FindingsReader(protocol).read(Case.of(stated));
    List<Datum> data =
        read.data().stream()
            .map(
                datum ->
                    stated.containsKey(datum.field().name())
                        ? datum
                        : new Datum(
                            datum.field(),
                            Datum.Knowledge.NOT_YET,
                            PossibleValues.nothing(datum.field().symbol().type())))
            .toList();
    return new Findings(read.title(), read.stage(), data, read.remarks());
  }

  private static Given stated(Value value) {
    if (value instanceof Value.NumberValue number) {
      return Given.of(number.number());
    }
    if (value instanceof Value.YesNoValue answer) {
      return Given.of(answer.yes());
    }
    return value instanceof Value.DateValue date ? Given.of(date.date()) : Given.of(value.plain());
  }

  private FeelValue value(DecisionResult result, TableDraft draft) {
    if (!result.faults().isEmpty()) {
      throw new IllegalStateException(
          result.faults().stream().map(Fault::plain).collect(Collectors.joining("; ")));
    }
    if (result.table().hitPolicy().isList()) {
      return new FeelValue.Items(
          result.counting().stream().map(firing -> together(firing, draft)).toList());
    }
    boolean nothing = result.byDefault() && result.table().otherwise().isEmpty();
    List<PossibleValues> outputs = List.copyOf(result.outputs().values());
    return nothing && outputs.size() > 1 ? new FeelValue.Null() : together(outputs, draft);
  }

  private static FeelValue together(Firing firing, TableDraft draft) {
    if (!firing.certain()) {
      throw new IllegalStateException("row `" + firing.row().id() + "` is only possible");
    }
    return together(firing.results(), draft);
  }

  private static FeelValue together(List<PossibleValues> outputs, TableDraft draft) {
    if (outputs.size() == 1) {
      return FeelValue.of(outputs.get(0));
    }
    Map<String, FeelValue> parts = new LinkedHashMap<>();
    for (int i = 0; i < outputs.size(); i++) {
      parts.put(draft.outputName(i), FeelValue.of(outputs.get(i)));
    }
    return new FeelValue.Structure(parts);
  }
}
