package org.cotyla.dmn;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.cotyla.expression.Symbol;
import org.cotyla.protocol.Calculation;
import org.cotyla.protocol.DecisionTable;
import org.cotyla.protocol.DecisionTable.Output;
import org.cotyla.protocol.Effect;
import org.cotyla.protocol.Field;
import org.cotyla.protocol.Protocol;
import org.cotyla.protocol.Ranking;
import org.cotyla.protocol.Row;
import org.cotyla.protocol.Vote;

/** From a protocol to the elements of its model, in the order of the workbook. Used once. */
final class ModelBuilder {

  private static final String POINTS = "points";

  private final Protocol protocol;
  private final FeelNames names = new FeelNames();
  private final ModelWording wording;
  private final CellWriter cells;
  private final ModelTypes types = new ModelTypes();
  private final List<Node> nodes = new ArrayList<>();
  private String voteType = "";

  ModelBuilder(Protocol protocol) {
    this.protocol = protocol;
    this.wording = new ModelWording(names, neverNothing(protocol));
    this.cells = new CellWriter(wording);
  }

  /** What a case must state from the first stage on, and constants. */
  private static Set<Symbol> neverNothing(Protocol protocol) {
    return Stream.concat(
            protocol.givenFields().stream().filter(field -> field.stage() == 0).map(Field::symbol),
            protocol.calculations().stream()
                .filter(calculation -> calculation.constant().isPresent())
                .map(Calculation::symbol))
        .collect(Collectors.toSet());
  }

  /** The model's elements and the names of its types. */
  record Built(List<Node> nodes, ModelTypes types) {

    Built {
      nodes = List.copyOf(nodes);
    }
  }

  Built build() {
    protocol.fields().forEach(field -> types.define(field.symbol()));
    protocol.rankings().forEach(ranking -> types.define(ranking.first()));
    defineNames();
    for (Calculation calculation : protocol.calculations()) {
      String name = wording.name(calculation.symbol());
      wording.takeNeeds();
      String text = cells.formula(calculation.expression());
      nodes.add(
          new Node.Reckoned(
              id("calculation", protocol.calculations().indexOf(calculation)),
              name,
              calculation,
              text,
              wording.takeNeeds()));
    }
    for (int i = 0; i < protocol.decisions().size(); i++) {
      add(protocol.decisions().get(i), i);
    }
    for (int i = 0; i < protocol.rankings().size(); i++) {
      add(protocol.rankings().get(i), i);
    }
    List<Node> inputsFirst = new ArrayList<>();
    nodes.stream().filter(Node::isInput).forEach(inputsFirst::add);
    inputsFirst.addAll(wording.hosts());
    nodes.stream().filter(node -> !node.isInput()).forEach(inputsFirst::add);
    return new Built(inputsFirst, types);
  }

  private static String id(String kind, int place) {
    return kind + "-" + (place + 1);
  }

  private static String partId(int table, int output) {
    return "result-" + (table + 1) + "-" + (output + 1);
  }

  /** Every name has its giver before any cell is written, since sheets stand in any order. */
  private void defineNames() {
    int given = 0;
    for (Field field : protocol.givenFields()) {
      String id = id("input", given++);
      nodes.add(new Node.Input(id, wording.define(field.symbol(), id), field));
    }
    for (int i = 0; i < protocol.calculations().size(); i++) {
      wording.define(protocol.calculations().get(i).symbol(), id("calculation", i));
    }
    for (int i = 0; i < protocol.decisions().size(); i++) {
      List<Output> outputs = protocol.decisions().get(i).outputs();
      for (int k = 0; k < outputs.size(); k++) {
        wording.define(
            outputs.get(k).symbol(), outputs.size() == 1 ? id("decision", i) : partId(i, k));
      }
    }
    for (int i = 0; i < protocol.rankings().size(); i++) {
      wording.define(protocol.rankings().get(i).first(), id("first", i));
    }
  }

  private void add(DecisionTable table, int place) {
    List<Output> outputs = table.outputs();
    if (table.votes() || outputs.size() == 1) {
      String name = table.votes() ? names.of(table.name()) : nameOf(outputs.get(0));
      nodes.add(node(id("decision", place), name, table, outputs));
    } else if (table.hitPolicy().isAggregate()) {
      // The standard leaves open what an aggregate over several results is: one table for each.
      for (int k = 0; k < outputs.size(); k++) {
        nodes.add(node(partId(place, k), nameOf(outputs.get(k)), table, outputs.subList(k, k + 1)));
      }
    } else {
      Node.Table whole =
          node(id("decision", place), names.of(table.name() + " results"), table, outputs);
      nodes.add(whole);
      for (int k = 0; k < outputs.size(); k++) {
        Output output = outputs.get(k);
        nodes.add(
            new Node.Part(
                partId(place, k),
                nameOf(output),
                output.symbol(),
                whole.name(),
                Set.of(whole.id())));
      }
    }
  }

  private String nameOf(Output output) {
    String name = wording.name(output.symbol());
    wording.takeNeeds();
    return name;
  }

  private Node.Table node(String id, String name, DecisionTable table, List<Output> outputs) {
    List<TableText.OutputColumn> columns = table.votes() ? voteColumns() : columns(table, outputs);
    wording.takeNeeds();
    TableText text =
        new TableText(
            type(table, columns),
            table.inputs().stream()
                .map(
                    input ->
                        new TableText.InputColumn(
                            wording.name(input.symbol()), types.of(input.symbol())))
                .toList(),
            columns,
            table.rows().stream().map(row -> rule(row, table, outputs)).toList(),
            table.otherwise().map(row -> rule(row, table, outputs)));
    return new Node.Table(id, name, table, outputs, text, wording.takeNeeds());
  }

  private String type(DecisionTable table, List<TableText.OutputColumn> columns) {
    String one = columns.size() == 1 ? columns.get(0).type() : voteOr(table, columns);
    return table.hitPolicy().isList() ? types.listOf(one, table.name()) : one;
  }

  private String voteOr(DecisionTable table, List<TableText.OutputColumn> columns) {
    if (!table.votes()) {
      return types.madeOf(columns, table.name());
    }
    if (voteType.isEmpty()) {
      voteType = types.madeOf(columns, "vote");
    }
    return voteType;
  }

  private TableText.Rule rule(Row row, DecisionTable table, List<Output> outputs) {
    List<String> tests = new ArrayList<>();
    for (int i = 0; i < row.tests().size(); i++) {
      tests.add(cells.test(row.tests().get(i).prepared().test(), table.inputs().get(i).symbol()));
    }
    List<String> results =
        row.vote()
            .map(ModelBuilder::vote)
            .orElseGet(
                () ->
                    outputs.stream()
                        .map(output -> row.results().get(table.outputs().indexOf(output)))
                        .map(result -> cells.formula(result.expression()))
                        .toList());
    return new TableText.Rule(row, tests, results);
  }

  private static List<String> vote(Vote vote) {
    return List.of(
        ModelWording.quoted(vote.option()),
        ModelWording.quoted(vote.effect().word()),
        vote.effect() == Effect.RULE_OUT ? "null" : vote.points().toPlainString());
  }

  private static List<TableText.OutputColumn> voteColumns() {
    return List.of(
        new TableText.OutputColumn("option", "option", "string", ""),
        new TableText.OutputColumn("effect", "effect", "string", ""),
        new TableText.OutputColumn(POINTS, POINTS, "number", ""));
  }

  private List<TableText.OutputColumn> columns(DecisionTable table, List<Output> outputs) {
    List<TableText.OutputColumn> columns = new ArrayList<>();
    for (Output output : outputs) {
      boolean ordered = table.hitPolicy().needsPriorities() && output.symbol().isChoice();
      columns.add(
          new TableText.OutputColumn(
              outputs.size() == 1 ? "" : nameOf(output),
              output.symbol().name(),
              types.of(output.symbol()),
              ordered ? ModelTypes.allowed(output.symbol(), field(output).allowed(), true) : ""));
    }
    return columns;
  }

  private Field field(Output output) {
    return protocol.fields().stream()
        .filter(field -> field.symbol().equals(output.symbol()))
        .findFirst()
        .orElseThrow();
  }

  private void add(Ranking ranking, int place) {
    List<Node.Voice> voices = new ArrayList<>();
    Set<String> needs = new LinkedHashSet<>();
    for (DecisionTable voter : ranking.voters()) {
      Node.Table found =
          nodes.stream()
              .filter(Node.Table.class::isInstance)
              .map(Node.Table.class::cast)
              .filter(node -> node.table().equals(voter))
              .findFirst()
              .orElseThrow();
      voices.add(new Node.Voice(found.name(), voter.hitPolicy().isList()));
      needs.add(found.id());
    }
    String name = names.of(ranking.name() + " ranking");
    nodes.add(new Node.Ranked(id("ranking", place), name, ranking, voices, needs));
    String first = wording.name(ranking.first());
    wording.takeNeeds();
    nodes.add(
        new Node.First(id("first", place), first, ranking, name, Set.of(id("ranking", place))));
  }
}
