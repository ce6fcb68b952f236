package org.cotyla.dmn;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.cotyla.protocol.Field;
import org.cotyla.protocol.Protocol;
import org.cotyla.protocol.Ranking;
import org.cotyla.protocol.Source;

/** Writes the model: types, input data, decisions, sources. Used once. */
final class ModelWriter {

  private static final List<String> DESCRIBED =
      List.of("meaning", "unit", "usual", "stage", "group", "shown as", "source");

  private final Protocol protocol;
  private final ModelBuilder.Built built;
  private final XmlOutput xml = new XmlOutput();
  private final TableWriter tables = new TableWriter(xml);
  private final Map<String, String> sourceIds = new LinkedHashMap<>();

  ModelWriter(Protocol protocol, ModelBuilder.Built built) {
    this.protocol = protocol;
    this.built = built;
    for (Source source : protocol.sources()) {
      sourceIds.put(source.key(), "source-" + (sourceIds.size() + 1));
    }
  }

  byte[] write() {
    xml.open(
        "definitions",
        "xmlns",
        Namespaces.MODEL,
        "xmlns:feel",
        Namespaces.FEEL,
        "xmlns:dmndi",
        Namespaces.DIAGRAM,
        "xmlns:dc",
        Namespaces.BOUNDS,
        "xmlns:di",
        Namespaces.SHAPES,
        "xmlns:workbook",
        Namespaces.WORKBOOK,
        "id",
        "definitions",
        "name",
        protocol.about().title().isEmpty() ? "protocol" : protocol.about().title(),
        "namespace",
        "urn:cotyla:protocol:" + slug(protocol.about().identifier()),
        "exporter",
        "cotyla");
    xml.text("description", protocol.about().caution());
    xml.open("extensionElements");
    entries("protocol", WorkbookEntries.of(protocol.about()));
    protocol.changes().forEach(change -> entries("change", WorkbookEntries.of(change)));
    xml.close();
    types();
    built.nodes().forEach(this::element);
    protocol.sources().forEach(this::source);
    new DiagramWriter(xml).write(Layout.of(built.nodes()));
    return xml.close().bytes();
  }

  private static String slug(String identifier) {
    return identifier.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9._-]+", "-");
  }

  private void entries(String kind, Map<String, String> entries) {
    xml.open("workbook:line", "kind", kind);
    entries.forEach(
        (heading, text) -> {
          if (!text.isEmpty()) {
            xml.text("workbook:cell", text, "heading", heading);
          }
        });
    xml.close();
  }

  private void extension(String kind, Map<String, String> entries) {
    xml.open("extensionElements");
    entries(kind, entries);
    xml.close();
  }

  private void types() {
    for (Field field : protocol.fields()) {
      Map<String, String> entries = WorkbookEntries.of(field, protocol.about());
      xml.open("itemDefinition", "name", built.types().of(field.symbol()), "label", field.name());
      extension("field", entries);
      xml.text("typeRef", ModelTypes.plain(field.symbol().type()));
      // What a case states at the first stage is never nothing; anything else may be.
      boolean orNothing = !field.isGiven() || field.stage() > 0;
      allowed(ModelTypes.allowed(field.symbol(), field.allowed(), orNothing));
      xml.close();
    }
    for (Ranking ranking : protocol.rankings()) {
      xml.open("itemDefinition", "name", built.types().of(ranking.first()));
      xml.text("typeRef", "string");
      allowed(RankingWriter.names(ranking) + ", null");
      xml.close();
    }
    for (ModelTypes.Composed type : built.types().composed()) {
      composed(type);
    }
  }

  private void composed(ModelTypes.Composed type) {
    if (!type.listOf().isEmpty()) {
      xml.open("itemDefinition", "name", type.name(), "isCollection", "true");
      xml.text("typeRef", type.listOf());
    } else {
      xml.open("itemDefinition", "name", type.name());
      for (TableText.OutputColumn component : type.components()) {
        xml.open("itemComponent", "name", component.name());
        xml.text("typeRef", component.type());
        xml.close();
      }
    }
    xml.close();
  }

  private void allowed(String tests) {
    if (!tests.isEmpty()) {
      xml.open("allowedValues").text("text", tests).close();
    }
  }

  private void element(Node node) {
    if (node instanceof Node.Input input) {
      xml.open("inputData", named(node));
      Map<String, String> entries = WorkbookEntries.of(input.field(), protocol.about());
      described(WorkbookEntries.described(entries, DESCRIBED));
      variable(node, built.types().of(input.field().symbol()));
    } else if (node instanceof Node.Host host) {
      xml.open("inputData", named(node));
      described(
          "Worked out by the host, since FEEL has no such function. Give here the value of: "
              + host.value().formula());
      extension("host", Map.of("expression", host.value().formula()));
      variable(node, ModelTypes.plain(host.value().call().type()));
    } else {
      decision(node);
    }
    xml.close();
  }

  private static String[] named(Node node) {
    return new String[] {"id", node.id(), "name", node.name(), "label", node.label()};
  }

  private void described(String text) {
    if (!text.isEmpty()) {
      xml.text("description", text);
    }
  }

  private void variable(Node node, String type) {
    xml.empty("variable", "name", node.name(), "typeRef", type);
  }

  private void decision(Node node) {
    xml.open("decision", named(node));
    if (node instanceof Node.Reckoned reckoned) {
      Map<String, String> entries = WorkbookEntries.of(reckoned.calculation());
      described(WorkbookEntries.described(entries, DESCRIBED));
      extension("calculation", entries);
      variable(node, ModelTypes.plain(reckoned.calculation().symbol().type()));
      requirements(node, new LinkedHashSet<>(reckoned.calculation().sources()));
      literal(reckoned.text());
    } else if (node instanceof Node.Table table) {
      Map<String, String> entries = WorkbookEntries.of(table.table());
      extension("decision", entries);
      xml.text("question", table.table().asks());
      variable(node, table.text().type());
      Set<String> sources = new LinkedHashSet<>();
      table.text().rules().forEach(rule -> sources.addAll(rule.row().sources()));
      requirements(node, sources);
      tables.write(table);
    } else if (node instanceof Node.Part part) {
      extension("part", Map.of("of", part.tableName()));
      variable(node, built.types().of(part.output()));
      requirements(node, Set.of());
      literal(part.tableName() + "." + part.name());
    } else if (node instanceof Node.Ranked ranked) {
      ranking(ranked);
    } else if (node instanceof Node.First first) {
      described("The option that comes first; nothing when all are ruled out.");
      extension("first", Map.of("ranking", first.ranking().name()));
      variable(node, built.types().of(first.ranking().first()));
      requirements(node, Set.of());
      literal(first.rankingName() + ".first");
    }
  }

  private void ranking(Node.Ranked ranked) {
    described(
        "The points of each option: those in favour less those against. Options that are not ruled"
            + " out come first, by their points; ties stand in the order of the options.");
    xml.open("extensionElements");
    ranked.ranking().options().stream()
        .map(option -> WorkbookEntries.of(ranked.ranking(), option))
        .forEach(entries -> entries("option", entries));
    xml.close();
    variable(ranked, "");
    Set<String> sources = new LinkedHashSet<>();
    ranked.ranking().options().forEach(option -> sources.addAll(option.sources()));
    requirements(ranked, sources);
    new RankingWriter(xml).write(ranked);
  }

  private void requirements(Node node, Set<String> sources) {
    for (String need : node.needs()) {
      boolean isInput = built.nodes().stream().anyMatch(n -> n.id().equals(need) && n.isInput());
      xml.open("informationRequirement", "id", requirementId(need, node.id()));
      xml.empty(isInput ? "requiredInput" : "requiredDecision", "href", "#" + need);
      xml.close();
    }
    for (String source : sources) {
      xml.open("authorityRequirement");
      xml.empty("requiredAuthority", "href", "#" + sourceIds.get(source));
      xml.close();
    }
  }

  static String requirementId(String need, String node) {
    return need + "-for-" + node;
  }

  private void literal(String text) {
    xml.open("literalExpression").text("text", text).close();
  }

  private void source(Source source) {
    Map<String, String> entries = WorkbookEntries.of(source);
    xml.open(
        "knowledgeSource", "id", sourceIds.getOrDefault(source.key(), ""), "name", source.key());
    xml.text("description", source.citation());
    extension("source", entries);
    xml.text("type", source.certainty().word());
    xml.close();
  }
}
