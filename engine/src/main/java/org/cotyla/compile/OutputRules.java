package org.cotyla.compile;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.cotyla.draft.DecisionDraft;
import org.cotyla.draft.Text;
import org.cotyla.expression.Symbol;
import org.cotyla.issue.CellRef;
import org.cotyla.issue.Issues;
import org.cotyla.name.NameIndex;
import org.cotyla.name.NearestWord;
import org.cotyla.protocol.Calculation;
import org.cotyla.protocol.DecisionTable;
import org.cotyla.protocol.DecisionTable.Output;
import org.cotyla.protocol.Field;
import org.cotyla.protocol.HitPolicy;
import org.cotyla.protocol.Row;
import org.cotyla.value.ValueType;

/**
 * Which derived field each decision gives: each exactly one, and of a type that its hit policy
 * allows.
 */
final class OutputRules {

  private final NameIndex<Field> fields;
  private final List<String> derivedNames;
  private final Map<String, CellRef> givenBy = new HashMap<>();
  private final Set<String> lists = new HashSet<>();
  private final Issues issues;

  OutputRules(List<Field> fields, List<DecisionDraft> decisions, Issues issues) {
    this.fields = NameIndex.of(fields, Field::name);
    this.derivedNames = fields.stream().filter(field -> !field.isGiven()).map(Field::name).toList();
    this.issues = issues;
    decisions.forEach(this::rememberLists);
  }

  private void rememberLists(DecisionDraft draft) {
    boolean isList =
        draft.ranks().isNone()
            && HitPolicy.of(draft.hitPolicy().text()).filter(HitPolicy::isList).isPresent();
    if (isList) {
      draft.then().stream()
          .flatMap(cell -> fields.find(cell.text()).stream())
          .forEach(field -> lists.add(field.name()));
    }
  }

  boolean isListOutput(Symbol symbol) {
    return lists.contains(symbol.name());
  }

  List<Optional<Output>> columns(DecisionDraft draft, HitPolicy policy) {
    if (draft.then().isEmpty()) {
      issues.error(
          "W155", draft.name().at(), "decision `" + draft.name().text() + "` has no then column");
    }
    List<Optional<Output>> columns = new ArrayList<>();
    boolean ordered = false;
    for (Text cell : draft.then()) {
      Optional<Field> field = derived(cell);
      field.ifPresent(known -> check(known, cell, policy));
      ordered |= field.filter(known -> known.symbol().isChoice()).isPresent();
      columns.add(field.map(known -> new Output(known.symbol(), cell.at())));
    }
    if (policy.needsPriorities() && !ordered) {
      issues.error(
          "W167",
          draft.hitPolicy().at(),
          "hit policy " + policy.letters() + " needs a result with an order of priority",
          "make one result a choice whose allowed values stand in order, highest first");
    }
    return columns;
  }

  private Optional<Field> derived(Text cell) {
    Optional<Field> field = fields.find(cell.text());
    if (field.isEmpty()) {
      issues.error(
          "W155",
          cell.at(),
          "`" + cell.text() + "` is not a field",
          NearestWord.help(cell.text(), derivedNames));
      return field;
    }
    if (field.get().isGiven()) {
      issues.error(
          "W155",
          cell.at(),
          "`" + cell.text() + "` is given by the case, so no decision can give it",
          "make its kind derived in the sheet Fields");
    }
    return field;
  }

  private void check(Field field, Text cell, HitPolicy policy) {
    CellRef earlier = givenBy.putIfAbsent(field.name(), cell.at());
    if (earlier != null) {
      issues.error(
          "W156",
          cell.at(),
          "`" + field.name() + "` is already given at " + earlier.plain(),
          "each derived field is the result of exactly one decision");
    }
    boolean sum = policy == HitPolicy.SUM || policy == HitPolicy.COUNT;
    boolean order = policy == HitPolicy.MINIMUM || policy == HitPolicy.MAXIMUM;
    ValueType type = field.symbol().type();
    boolean wrong =
        (sum && type != ValueType.NUMBER)
            || (order && (field.symbol().isChoice() || type == ValueType.YES_NO));
    if (wrong) {
      issues.error(
          "W168",
          cell.at(),
          "hit policy " + policy.letters() + " cannot work on `" + field.name() + "`",
          "its type must be number");
    }
  }

  /** Reports every list that a formula or a test's endpoint reads. */
  void reportListsRead(List<Calculation> calculations, List<DecisionTable> decisions) {
    for (Calculation calculation : calculations) {
      reportListsRead(calculation.needs(), calculation.at());
    }
    Stream<Row> rows =
        decisions.stream()
            .flatMap(table -> Stream.concat(table.rows().stream(), table.otherwise().stream()));
    rows.forEach(
        row -> {
          row.tests()
              .forEach(test -> reportListsRead(test.prepared().test().references(), test.at()));
          row.results()
              .forEach(result -> reportListsRead(result.expression().references(), result.at()));
        });
  }

  void reportListsRead(Set<Symbol> names, CellRef at) {
    names.stream()
        .filter(this::isListOutput)
        .forEach(
            list ->
                issues.error(
                    "W154",
                    at,
                    "`" + list.name() + "` is a list, which no formula can read",
                    "use the findings that lead to it"));
  }

  /** Reports every derived field that no decision gives. */
  void reportUngiven(List<Field> all) {
    for (Field field : all) {
      if (!field.isGiven() && !givenBy.containsKey(field.name())) {
        issues.error(
            "W157",
            field.at(),
            "`" + field.name() + "` is derived, but no decision gives it",
            "add it as a then column, or make its kind given");
      }
    }
  }
}
