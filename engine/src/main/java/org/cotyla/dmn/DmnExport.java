package org.cotyla.dmn;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.cotyla.expression.Symbol;
import org.cotyla.protocol.DecisionTable;
import org.cotyla.protocol.Field;
import org.cotyla.protocol.Protocol;

/**
 * A protocol as a DMN 1.5 model: the same bytes for the same protocol, with a diagram, the row ids,
 * reasons and sources as annotations, and everything else that the workbook says. Immutable.
 */
public final class DmnExport {

  private final Protocol protocol;
  private final ModelBuilder.Built built;

  private DmnExport(Protocol protocol) {
    this.protocol = protocol;
    this.built = new ModelBuilder(protocol).build();
  }

  public static DmnExport of(Protocol protocol) {
    return new DmnExport(protocol);
  }

  /** The model's file. */
  public byte[] bytes() {
    return new ModelWriter(protocol, built).write();
  }

  /** What FEEL cannot work out, so that whoever runs the model must give it. */
  public List<HostValue> hostValues() {
    return built.nodes().stream()
        .filter(Node.Host.class::isInstance)
        .map(node -> ((Node.Host) node).value())
        .toList();
  }

  /** The name in the model of each field that a case states. */
  public Map<Field, String> inputs() {
    return built.nodes().stream()
        .filter(Node.Input.class::isInstance)
        .map(Node.Input.class::cast)
        .collect(Collectors.toUnmodifiableMap(Node.Input::field, Node.Input::name));
  }

  /** The name in the model of what works the symbol out, be it a calculation or a decision. */
  public Optional<String> decision(Symbol symbol) {
    return built.nodes().stream().filter(node -> gives(node, symbol)).map(Node::name).findFirst();
  }

  private static boolean gives(Node node, Symbol symbol) {
    if (node instanceof Node.Reckoned reckoned) {
      return reckoned.calculation().symbol().equals(symbol);
    }
    if (node instanceof Node.Table table) {
      return table.outputs().size() == 1 && table.outputs().get(0).symbol().equals(symbol);
    }
    return node instanceof Node.Part part
        ? part.output().equals(symbol)
        : node instanceof Node.First first && first.ranking().first().equals(symbol);
  }

  /** The name in the model of the table, or of the first when it stands there as several. */
  public String table(DecisionTable table) {
    return built.nodes().stream()
        .filter(node -> node instanceof Node.Table found && found.table().equals(table))
        .map(Node::name)
        .findFirst()
        .orElseThrow();
  }

  /** The name in the model of the ranking with its sums. */
  public String ranking(String ranking) {
    return built.nodes().stream()
        .filter(node -> node instanceof Node.Ranked found && found.ranking().name().equals(ranking))
        .map(Node::name)
        .findFirst()
        .orElseThrow();
  }
}
