package org.cotyla.cli.report;

import java.io.ByteArrayInputStream;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

/** A report read back as XML, for tests. */
record Page(Document document) {

  static Page of(String html) {
    try {
      DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
      factory.setNamespaceAware(true);
      factory.setFeature("http://apache.org/xml/features/nonvalidating/load-external-dtd", false);
      byte[] bytes = html.getBytes(StandardCharsets.UTF_8);
      String read =
          new String(new ByteArrayInputStream(bytes).readAllBytes(), StandardCharsets.UTF_8);
      return new Page(factory.newDocumentBuilder().parse(new InputSource(new StringReader(read))));
    } catch (Exception malformed) {
      throw new AssertionError("the page is not well-formed: " + malformed.getMessage(), malformed);
    }
  }

  List<Element> all(String name) {
    NodeList found = document.getElementsByTagNameNS("*", name);
    List<Element> elements = new ArrayList<>();
    for (int i = 0; i < found.getLength(); i++) {
      elements.add((Element) found.item(i));
    }
    return elements;
  }

  /** The names of all elements, in order. */
  List<String> elements() {
    return all("*").stream().map(Element::getLocalName).toList();
  }

  String text() {
    return document.getDocumentElement().getTextContent().replaceAll("\\s+", " ");
  }
}
