package org.cotyla.dmn;

/** Writes the diagram that a viewer shows: shapes and edges with their places. */
final class DiagramWriter {

  private final XmlOutput xml;

  DiagramWriter(XmlOutput xml) {
    this.xml = xml;
  }

  void write(Layout layout) {
    xml.open("dmndi:DMNDI");
    xml.open("dmndi:DMNDiagram", "id", "diagram", "name", "Requirements");
    xml.empty("dmndi:Size", "width", text(layout.width()), "height", text(layout.height()));
    layout.boxes().forEach(this::shape);
    layout.lines().forEach(this::edge);
    xml.close().close();
  }

  private void shape(Layout.Box box) {
    xml.open("dmndi:DMNShape", "id", "shape-" + box.id(), "dmnElementRef", box.id());
    xml.empty(
        "dc:Bounds",
        "x",
        text(box.x()),
        "y",
        text(box.y()),
        "width",
        text(box.width()),
        "height",
        text(box.height()));
    xml.close();
  }

  private void edge(Layout.Line line) {
    String requirement = ModelWriter.requirementId(line.need(), line.node());
    xml.open("dmndi:DMNEdge", "id", "edge-" + requirement, "dmnElementRef", requirement);
    line.points()
        .forEach(point -> xml.empty("di:waypoint", "x", text(point.x()), "y", text(point.y())));
    xml.close();
  }

  private static String text(int number) {
    return String.valueOf(number);
  }
}
