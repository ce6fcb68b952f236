package org.cotyla.testcases.conformance;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A DMN file, as far as the TCK's decision tables need it.
 *
 * @param types item definitions by name
 * @param decisions decisions by name
 * @param functions business knowledge models by name; imported ones by {@code import.name}
 */
record DmnModel(
    Map<String, ItemType> types, Map<String, Decision> decisions, Map<String, Function> functions) {

  /** A type: of another type's kind, a list of it, or with components. */
  record ItemType(Optional<String> base, boolean isList, Map<String, ItemType> components) {}

  /** A decision; it may have no logic. */
  record Decision(String name, Optional<String> type, List<String> needs, Optional<Logic> logic) {}

  /** A business knowledge model. */
  record Function(String name, List<Parameter> parameters, Logic body) {}

  /** A parameter of a function. */
  record Parameter(String name, Optional<String> type) {}

  /** What a decision, a function or an entry of a context is worked out by. */
  sealed interface Logic {}

  /** FEEL text, and the type that its value must have when one is named. */
  record Formula(String text, Optional<String> type) implements Logic {}

  /** A call of a function with arguments by name. */
  record Invocation(String function, Map<String, Logic> arguments) implements Logic {}

  /** A boxed context; an entry without name is its result. */
  record Context(List<Entry> entries) implements Logic {}

  /** An entry of a boxed context. */
  record Entry(Optional<String> name, Optional<String> type, Logic logic) {}

  /** Logic that this reader does not know. */
  record Unknown(String kind) implements Logic {}

  /** A decision table. */
  record Table(String hitPolicy, List<Input> inputs, List<Output> outputs, List<Rule> rules)
      implements Logic {}

  /** A column of tests. */
  record Input(String expression, Optional<String> type, Optional<String> allowed) {}

  /** A column of results. */
  record Output(
      Optional<String> name,
      Optional<String> type,
      Optional<String> allowed,
      Optional<String> otherwise) {}

  /** A row. */
  record Rule(List<String> tests, List<String> results) {}
}
