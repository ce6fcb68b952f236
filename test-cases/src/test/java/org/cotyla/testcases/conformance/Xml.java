package org.cotyla.testcases.conformance;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.SAXException;

/** Reads an XML file without looking outside it, and walks its elements by local name. */
final class Xml {

  private static final String SCHEMA_INSTANCE = XMLConstants.W3C_XML_SCHEMA_INSTANCE_NS_URI;

  private Xml() {}

  static Element root(Path file) {
    try {
      DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
      factory.setNamespaceAware(true);
      factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
      factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
      return factory.newDocumentBuilder().parse(file.toFile()).getDocumentElement();
    } catch (ParserConfigurationException | SAXException | IOException unreadable) {
      throw new IllegalStateException("cannot read " + file.getFileName(), unreadable);
    }
  }

  static List<Element> children(Element parent) {
    NodeList nodes = parent.getChildNodes();
    return IntStream.range(0, nodes.getLength())
        .mapToObj(nodes::item)
        .filter(Element.class::isInstance)
        .map(Element.class::cast)
        .toList();
  }

  static List<Element> children(Element parent, String name) {
    return children(parent).stream().filter(child -> child.getLocalName().equals(name)).toList();
  }

  static Optional<Element> child(Element parent, String name) {
    return children(parent, name).stream().findFirst();
  }

  /** The text of the child of that name. */
  static Optional<String> text(Element parent, String name) {
    return child(parent, name).map(Element::getTextContent);
  }

  /** The FEEL text inside the child of that name. */
  static Optional<String> feel(Element parent, String name) {
    return child(parent, name).flatMap(child -> text(child, "text"));
  }

  static Optional<String> attribute(Element element, String name) {
    return Optional.of(element.getAttribute(name)).filter(value -> !value.isEmpty());
  }

  /** An attribute of XML Schema's instance namespace, as {@code xsi:type}. */
  static Optional<String> instance(Element element, String name) {
    return Optional.of(element.getAttributeNS(SCHEMA_INSTANCE, name))
        .filter(value -> !value.isEmpty());
  }
}
