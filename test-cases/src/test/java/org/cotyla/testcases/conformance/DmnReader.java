package org.cotyla.testcases.conformance;

import java.nio.file.Path;
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
import org.cotyla.testcases.conformance.DmnModel.Input;
import org.cotyla.testcases.conformance.DmnModel.Invocation;
import org.cotyla.testcases.conformance.DmnModel.ItemType;
import org.cotyla.testcases.conformance.DmnModel.Logic;
import org.cotyla.testcases.conformance.DmnModel.Output;
import org.cotyla.testcases.conformance.DmnModel.Parameter;
import org.cotyla.testcases.conformance.DmnModel.Rule;
import org.cotyla.testcases.conformance.DmnModel.Table;
import org.cotyla.testcases.conformance.DmnModel.Unknown;
import org.w3c.dom.Element;

/** Reads DMN files. */
final class DmnReader {

  private final Element root;
  private final Map<String, String> namesById = new LinkedHashMap<>();

  private DmnReader(Element root) {
    this.root = root;
    for (Element decision : Xml.children(root, "decision")) {
      namesById.put(decision.getAttribute("id"), decision.getAttribute("name"));
    }
  }

  /** The model in the file, with what it imports from files beside it. */
  static DmnModel read(Path file) {
    Element root = Xml.root(file);
    DmnModel model = new DmnReader(root).model();
    for (Element imported : Xml.children(root, "import")) {
      String prefix = imported.getAttribute("name") + ".";
      TckData.list(file.getParent())
          .filter(other -> other.toString().endsWith(".dmn") && !other.equals(file))
          .filter(other -> isNamed(Xml.root(other), imported.getAttribute("namespace")))
          .map(DmnReader::read)
          .forEach(
              other -> {
                other.types().forEach((name, type) -> model.types().put(prefix + name, type));
                other.functions().forEach((name, f) -> model.functions().put(prefix + name, f));
              });
    }
    return model;
  }

  private static boolean isNamed(Element root, String namespace) {
    return root.getAttribute("namespace").equals(namespace);
  }

  private DmnModel model() {
    Map<String, ItemType> types = new LinkedHashMap<>();
    Map<String, Decision> decisions = new LinkedHashMap<>();
    Map<String, Function> functions = new LinkedHashMap<>();
    for (Element child : Xml.children(root)) {
      String name = child.getAttribute("name");
      switch (child.getLocalName()) {
        case "itemDefinition" -> types.put(name, type(child));
        case "decision" -> decisions.put(name, decision(child));
        case "businessKnowledgeModel" ->
            Xml.child(child, "encapsulatedLogic")
                .ifPresent(body -> functions.put(name, function(name, body)));
        default -> {
          // Input data need no reading: the tests name them.
        }
      }
    }
    return new DmnModel(types, decisions, functions);
  }

  private static ItemType type(Element element) {
    Map<String, ItemType> components = new LinkedHashMap<>();
    for (Element component : Xml.children(element, "itemComponent")) {
      components.put(component.getAttribute("name"), type(component));
    }
    boolean isList = Boolean.parseBoolean(element.getAttribute("isCollection"));
    return new ItemType(Xml.text(element, "typeRef").map(String::strip), isList, components);
  }

  private Decision decision(Element element) {
    List<String> needs = new ArrayList<>();
    for (Element requirement : Xml.children(element, "informationRequirement")) {
      Xml.child(requirement, "requiredDecision")
          .map(needed -> namesById.get(needed.getAttribute("href").replaceFirst(".*#", "")))
          .ifPresent(needs::add);
    }
    Optional<String> type =
        Xml.child(element, "variable").flatMap(variable -> Xml.attribute(variable, "typeRef"));
    return new Decision(element.getAttribute("name"), type, needs, logicIn(element));
  }

  private Function function(String name, Element body) {
    List<Parameter> parameters =
        Xml.children(body, "formalParameter").stream()
            .map(p -> new Parameter(p.getAttribute("name"), Xml.attribute(p, "typeRef")))
            .toList();
    return new Function(name, parameters, logicIn(body).orElse(new Unknown("nothing")));
  }

  /** The first child that is logic. */
  private Optional<Logic> logicIn(Element parent) {
    return Xml.children(parent).stream().flatMap(child -> logic(child).stream()).findFirst();
  }

  private Optional<Logic> logic(Element element) {
    return switch (element.getLocalName()) {
      case "literalExpression" ->
          Xml.text(element, "text")
              .<Logic>map(text -> new Formula(text, Xml.attribute(element, "typeRef")))
              .or(() -> unknown("no text"));
      case "decisionTable" -> Optional.of(table(element));
      case "context" -> Optional.of(context(element));
      case "invocation" -> Optional.of(invocation(element));
      case "functionDefinition", "relation", "list", "conditional", "for", "every", "some" ->
          unknown("boxed " + element.getLocalName());
      default -> Optional.empty();
    };
  }

  private static Optional<Logic> unknown(String kind) {
    return Optional.of(new Unknown(kind));
  }

  private Context context(Element element) {
    List<Entry> entries = new ArrayList<>();
    for (Element entry : Xml.children(element, "contextEntry")) {
      Optional<Element> variable = Xml.child(entry, "variable");
      entries.add(
          new Entry(
              variable.map(v -> v.getAttribute("name")),
              variable.flatMap(v -> Xml.attribute(v, "typeRef")),
              logicIn(entry).orElse(new Unknown("nothing"))));
    }
    return new Context(entries);
  }

  private Invocation invocation(Element element) {
    Map<String, Logic> arguments = new LinkedHashMap<>();
    for (Element binding : Xml.children(element, "binding")) {
      String parameter = Xml.child(binding, "parameter").orElseThrow().getAttribute("name");
      arguments.put(parameter, logicIn(binding).orElse(new Formula("null", Optional.empty())));
    }
    String function = Xml.feel(element, "literalExpression").orElse("").strip();
    return new Invocation(function, arguments);
  }

  private static Table table(Element element) {
    List<Input> inputs = new ArrayList<>();
    for (Element input : Xml.children(element, "input")) {
      Element expression = Xml.child(input, "inputExpression").orElseThrow();
      inputs.add(
          new Input(
              Xml.text(expression, "text").orElse("").strip(),
              Xml.attribute(expression, "typeRef"),
              Xml.feel(input, "inputValues")));
    }
    List<Output> outputs = new ArrayList<>();
    for (Element output : Xml.children(element, "output")) {
      outputs.add(
          new Output(
              Xml.attribute(output, "name"),
              Xml.attribute(output, "typeRef"),
              Xml.feel(output, "outputValues"),
              Xml.feel(output, "defaultOutputEntry")));
    }
    List<Rule> rules = new ArrayList<>();
    for (Element rule : Xml.children(element, "rule")) {
      rules.add(new Rule(entries(rule, "inputEntry"), entries(rule, "outputEntry")));
    }
    String policy = Xml.attribute(element, "hitPolicy").orElse("UNIQUE");
    String aggregation = Xml.attribute(element, "aggregation").map(a -> " " + a).orElse("");
    return new Table(policy + aggregation, inputs, outputs, rules);
  }

  private static List<String> entries(Element rule, String name) {
    return Xml.children(rule, name).stream()
        .map(entry -> Xml.text(entry, "text").orElse(""))
        .toList();
  }
}
