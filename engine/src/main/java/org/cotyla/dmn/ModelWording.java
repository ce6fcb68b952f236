package org.cotyla.dmn;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.cotyla.expression.Expression;
import org.cotyla.expression.FormulaFunction;
import org.cotyla.expression.StandardFunctions;
import org.cotyla.expression.Symbol;
import org.cotyla.value.Value;

/**
 * Cells as FEEL over the names of the model. Notes which elements the cells need, and each call
 * that FEEL has no function for. Not thread-safe.
 */
final class ModelWording implements Wording {

  private static final Set<String> STANDARD =
      StandardFunctions.all().stream()
          .map(FormulaFunction::name)
          .collect(Collectors.toUnmodifiableSet());

  private final FeelNames names;
  private final Set<Symbol> neverNothing;
  private final Map<Symbol, String> nameOf = new LinkedHashMap<>();
  private final Map<Symbol, String> giverOf = new LinkedHashMap<>();
  private final Map<String, Node.Host> hosts = new LinkedHashMap<>();
  private Set<String> needs = new LinkedHashSet<>();

  /**
   * @param names where names are taken from
   * @param neverNothing what has a value in every case
   */
  ModelWording(FeelNames names, Set<Symbol> neverNothing) {
    this.names = names;
    this.neverNothing = Set.copyOf(neverNothing);
  }

  /** Gives the symbol its name in the model. */
  String define(Symbol symbol, String giver) {
    String name = names.of(symbol.name());
    nameOf.put(symbol, name);
    giverOf.put(symbol, giver);
    return name;
  }

  /** The ids of all elements that were needed since this was last asked. */
  Set<String> takeNeeds() {
    Set<String> taken = needs;
    needs = new LinkedHashSet<>();
    return taken;
  }

  /** What the host works out, in the order of meeting it. */
  List<Node.Host> hosts() {
    return new ArrayList<>(hosts.values());
  }

  @Override
  public String name(Symbol symbol) {
    String name = nameOf.get(symbol);
    String giver = giverOf.get(symbol);
    if (name == null || giver == null) {
      throw new IllegalStateException("`" + symbol.name() + "` is given by nothing");
    }
    needs.add(giver);
    return name;
  }

  @Override
  public String literal(Value value) {
    return value instanceof Value.TextValue text ? quoted(text.text()) : value.literal();
  }

  /** A FEEL string (DMN clause 10.3.1.2, rule 35). */
  static String quoted(String text) {
    return "\""
        + text.replace("\\", "\\\\")
            .replace("\"", "\\\"")
            .replace("\n", "\\n")
            .replace("\r", "\\r")
            .replace("\t", "\\t")
        + "\"";
  }

  @Override
  public String alone(Value value, Symbol input) {
    return literal(value);
  }

  @Override
  public String call(Expression.Call call, Supplier<List<String>> arguments) {
    String function = call.function().name();
    if (STANDARD.contains(function)) {
      return function + "(" + String.join(", ", arguments.get()) + ")";
    }
    Node.Host host = hosts.computeIfAbsent(call.print(), formula -> host(call));
    needs.add(host.id());
    return host.name();
  }

  private Node.Host host(Expression.Call call) {
    String name = names.of(call.function().name() + " " + (hosts.size() + 1));
    return new Node.Host("host-" + (hosts.size() + 1), new HostValue(name, call));
  }

  @Override
  public Expression simplified(Expression formula) {
    return formula;
  }

  @Override
  public List<Expression> guards(Expression part) {
    return NullGuards.of(
        part, call -> !STANDARD.contains(call.function().name()), neverNothing::contains);
  }

  @Override
  public String sameAnswer(String formula) {
    return "? = " + formula;
  }

  @Override
  public String otherThan(String formula) {
    return "? != " + formula;
  }
}
