package org.cotyla.testcases.conformance;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import org.cotyla.expression.FormulaFunction;
import org.cotyla.expression.StandardFunctions;
import org.cotyla.testcases.conformance.DmnModel.Context;
import org.cotyla.testcases.conformance.DmnModel.Entry;
import org.cotyla.testcases.conformance.DmnModel.Formula;
import org.cotyla.testcases.conformance.DmnModel.Function;
import org.cotyla.testcases.conformance.DmnModel.Logic;
import org.cotyla.testcases.conformance.DmnModel.Parameter;
import org.cotyla.testcases.conformance.DmnModel.Table;
import org.cotyla.value.ValueType;

/**
 * The functions that a model's formulas may call: the standard's, and the model's own where all
 * their types are known. The types of results are found out from the functions' bodies.
 */
final class FunctionLibrary {

  private final Types types;
  private final Map<String, FormulaFunction> own = new LinkedHashMap<>();

  FunctionLibrary(
      DmnModel model, Types types, BiFunction<Function, List<FeelValue>, FeelValue> caller) {
    this.types = types;
    int before;
    do {
      before = own.size();
      for (Map.Entry<String, Function> entry : model.functions().entrySet()) {
        if (!own.containsKey(entry.getKey())) {
          typed(entry.getKey(), entry.getValue(), caller)
              .ifPresent(function -> own.put(entry.getKey(), function));
        }
      }
    } while (own.size() > before);
  }

  List<FormulaFunction> all() {
    List<FormulaFunction> all = new ArrayList<>(StandardFunctions.all());
    all.addAll(own.values());
    return all;
  }

  private Optional<FormulaFunction> typed(
      String name, Function function, BiFunction<Function, List<FeelValue>, FeelValue> caller) {
    Map<String, ValueType> names = new LinkedHashMap<>();
    for (Parameter parameter : function.parameters()) {
      parameter.type().flatMap(types::valueType).ifPresent(t -> names.put(parameter.name(), t));
    }
    if (names.size() < function.parameters().size()) {
      return Optional.empty();
    }
    return result(function.body(), names)
        .map(
            type ->
                new ModelFunction(
                    name,
                    List.copyOf(names.values()),
                    type,
                    arguments -> caller.apply(function, arguments)));
  }

  private Optional<ValueType> result(Logic logic, Map<String, ValueType> names) {
    if (logic instanceof Formula formula) {
      return Formulas.type(formula.text(), names, all());
    }
    if (logic instanceof Table table && table.outputs().size() == 1) {
      return TableDraft.outputType(table, 0, types, names, all());
    }
    if (logic instanceof Context context) {
      Map<String, ValueType> known = new LinkedHashMap<>(names);
      Optional<ValueType> last = Optional.empty();
      for (Entry entry : context.entries()) {
        last = entry.type().flatMap(types::valueType).or(() -> result(entry.logic(), known));
        Optional<ValueType> type = last;
        entry.name().ifPresent(name -> type.ifPresent(t -> known.put(name, t)));
      }
      return last;
    }
    return Optional.empty();
  }
}
