package org.cotyla.dmn;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.cotyla.protocol.HitPolicy;
import org.cotyla.protocol.Row;

/** Writes decision tables. Remembers every id, so that none stands twice in the file. */
final class TableWriter {

  /** The columns of annotations, in the order in which they are written. */
  static final List<String> ANNOTATIONS = List.of("id", "because", "source");

  private final XmlOutput xml;
  private final Set<String> ids = new HashSet<>();

  TableWriter(XmlOutput xml) {
    this.xml = xml;
  }

  void write(Node.Table node) {
    TableText table = node.text();
    HitPolicy policy = node.table().hitPolicy();
    xml.open(
        "decisionTable",
        "id",
        node.id() + "-table",
        "hitPolicy",
        policy(policy),
        "aggregation",
        aggregation(policy),
        "outputLabel",
        node.label());
    for (TableText.InputColumn input : table.inputs()) {
      xml.open("input");
      xml.open("inputExpression", "typeRef", input.type());
      xml.text("text", input.expression());
      xml.close().close();
    }
    for (int i = 0; i < table.outputs().size(); i++) {
      output(table, i, policy == HitPolicy.COUNT);
    }
    ANNOTATIONS.forEach(name -> xml.empty("annotation", "name", name));
    table.rules().forEach(this::rule);
    xml.close();
  }

  private void output(TableText table, int place, boolean counts) {
    TableText.OutputColumn output = table.outputs().get(place);
    xml.open("output", "label", output.label(), "name", output.name(), "typeRef", output.type());
    table.defaults().ifPresent(row -> defaults(row.row()));
    if (!output.order().isEmpty()) {
      xml.open("outputValues").text("text", output.order()).close();
    }
    // Without a default the result is nothing, but for a count, which then is 0.
    table
        .defaults()
        .map(row -> row.results().get(place))
        .filter(result -> counts || !result.equals("null"))
        .ifPresent(result -> xml.open("defaultOutputEntry").text("text", result).close());
    xml.close();
  }

  /** The standard has no annotations for default results, so their reason is an extension. */
  private void defaults(Row row) {
    xml.open("extensionElements");
    xml.open("workbook:line", "kind", "default");
    xml.text("workbook:cell", row.because(), "heading", "because");
    xml.text("workbook:cell", WorkbookEntries.keys(row.sources()), "heading", "source");
    xml.close().close();
  }

  private void rule(TableText.Rule rule) {
    xml.open("rule", "id", idOf(rule.row()));
    rule.tests().forEach(test -> xml.open("inputEntry").text("text", test).close());
    rule.results().forEach(result -> xml.open("outputEntry").text("text", result).close());
    List<String> annotations =
        List.of(rule.row().id(), rule.row().because(), WorkbookEntries.keys(rule.row().sources()));
    annotations.forEach(text -> xml.open("annotationEntry").text("text", text).close());
    xml.close();
  }

  /** The row's own id as far as XML allows it. */
  private String idOf(Row row) {
    String plain = "row-" + row.id().replaceAll("[^\\p{L}\\p{Nd}._-]+", "_");
    String unique = plain;
    for (int i = 2; !ids.add(unique); i++) {
      unique = plain + "_" + i;
    }
    return unique;
  }

  private static String policy(HitPolicy policy) {
    return switch (policy) {
      case UNIQUE -> "UNIQUE";
      case ANY -> "ANY";
      case PRIORITY -> "PRIORITY";
      case FIRST -> "FIRST";
      case RULE_ORDER -> "RULE ORDER";
      case OUTPUT_ORDER -> "OUTPUT ORDER";
      case COLLECT, SUM, MINIMUM, MAXIMUM, COUNT -> "COLLECT";
    };
  }

  private static String aggregation(HitPolicy policy) {
    return switch (policy) {
      case SUM -> "SUM";
      case MINIMUM -> "MIN";
      case MAXIMUM -> "MAX";
      case COUNT -> "COUNT";
      default -> "";
    };
  }
}
