package org.cotyla.testcases.conformance;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.cotyla.testcases.conformance.DmnModel.Context;
import org.cotyla.testcases.conformance.DmnModel.Decision;
import org.cotyla.testcases.conformance.DmnModel.Entry;
import org.cotyla.testcases.conformance.DmnModel.Formula;
import org.cotyla.testcases.conformance.DmnModel.Function;
import org.cotyla.testcases.conformance.DmnModel.Invocation;
import org.cotyla.testcases.conformance.DmnModel.Logic;
import org.cotyla.testcases.conformance.DmnModel.Parameter;
import org.cotyla.testcases.conformance.DmnModel.Table;
import org.cotyla.testcases.conformance.DmnModel.Unknown;

/**
 * Evaluates the decisions of a DMN model: tables and formulas by the engine, and what joins them
 * (contexts, calls by name, lists) here.
 */
final class ModelRun {

  private final DmnModel model;
  private final Types types;
  private final FunctionLibrary functions;

  ModelRun(DmnModel model) {
    this.model = model;
    this.types = new Types(model.types());
    this.functions = new FunctionLibrary(model, types, this::call);
  }

  /** The decision's value when the names have the given values. */
  FeelValue decide(String name, Map<String, FeelValue> inputs) {
    Map<String, FeelValue> known = new LinkedHashMap<>(inputs);
    decideInto(known, name);
    return known.get(name);
  }

  private void decideInto(Map<String, FeelValue> known, String name) {
    Decision decision = model.decisions().get(name);
    if (known.containsKey(name) || decision == null) {
      known.putIfAbsent(name, new FeelValue.Null());
      return;
    }
    decision.needs().forEach(needed -> decideInto(known, needed));
    FeelValue value = decision.logic().map(logic -> run(logic, known)).orElse(new FeelValue.Null());
    known.put(name, types.fit(value, decision.type()));
  }

  private FeelValue run(Logic logic, Map<String, FeelValue> names) {
    if (logic instanceof Formula formula) {
      return types.fit(formula(formula.text().strip(), names), formula.type());
    }
    if (logic instanceof Table table) {
      List<FeelValue> inputs =
          table.inputs().stream().map(input -> formula(input.expression(), names)).toList();
      return new TableRun(table, types, functions.all()).run(inputs, FeelValue.paths(names));
    }
    if (logic instanceof Context context) {
      return context(context, names);
    }
    if (logic instanceof Invocation invocation) {
      Map<String, FeelValue> arguments = new LinkedHashMap<>();
      invocation.arguments().forEach((name, value) -> arguments.put(name, run(value, names)));
      Function function = model.functions().get(invocation.function());
      if (function == null) {
        throw new IllegalStateException("no function `" + invocation.function() + "`");
      }
      return call(function, arguments);
    }
    throw new IllegalStateException("not read: " + ((Unknown) logic).kind());
  }

  private FeelValue context(Context context, Map<String, FeelValue> names) {
    Map<String, FeelValue> known = new LinkedHashMap<>(names);
    Map<String, FeelValue> parts = new LinkedHashMap<>();
    for (Entry entry : context.entries()) {
      FeelValue value = types.fit(run(entry.logic(), known), entry.type());
      if (entry.name().isEmpty()) {
        return value;
      }
      known.put(entry.name().get(), value);
      parts.put(entry.name().get(), value);
    }
    return new FeelValue.Structure(parts);
  }

  private FeelValue call(Function function, List<FeelValue> arguments) {
    Map<String, FeelValue> byName = new LinkedHashMap<>();
    for (int i = 0; i < arguments.size() && i < function.parameters().size(); i++) {
      byName.put(function.parameters().get(i).name(), arguments.get(i));
    }
    return call(function, byName);
  }

  private FeelValue call(Function function, Map<String, FeelValue> arguments) {
    Map<String, FeelValue> names = new LinkedHashMap<>();
    for (Parameter parameter : function.parameters()) {
      FeelValue argument = arguments.getOrDefault(parameter.name(), new FeelValue.Null());
      names.put(parameter.name(), types.fit(argument, parameter.type()));
    }
    return run(function.body(), names);
  }

  private FeelValue formula(String text, Map<String, FeelValue> names) {
    Map<String, FeelValue> paths = FeelValue.paths(names);
    if (paths.containsKey(text)) {
      return paths.get(text);
    }
    Optional<List<String>> list = FeelText.list(text);
    if (list.isPresent()) {
      return new FeelValue.Items(all(list.get(), names));
    }
    Optional<FeelText.Call> call = FeelText.call(text);
    if (call.isPresent() && model.functions().containsKey(call.get().function())) {
      Function function = model.functions().get(call.get().function());
      return call(function, all(call.get().arguments(), names));
    }
    if (call.isPresent() && call.get().function().equals("flatten")) {
      List<FeelValue> flat = new ArrayList<>();
      all(call.get().arguments(), names).forEach(value -> flatten(value, flat));
      return new FeelValue.Items(flat);
    }
    return Formulas.evaluate(text, paths, functions.all());
  }

  private List<FeelValue> all(List<String> texts, Map<String, FeelValue> names) {
    return texts.stream().map(text -> formula(text, names)).toList();
  }

  private static void flatten(FeelValue value, List<FeelValue> into) {
    if (value instanceof FeelValue.Items list) {
      list.items().forEach(item -> flatten(item, into));
    } else {
      into.add(value);
    }
  }
}
