package org.cotyla.dmn;

import java.io.ByteArrayInputStream;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import javax.xml.stream.Location;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.cotyla.issue.Issues;
import org.cotyla.issue.Place;
import org.cotyla.issue.RejectedException;

/**
 * Reads a DMN file, which is untrusted: no document type, no entity but the five of XML, and no
 * more than the limits below. Used once.
 */
final class XmlInput {

  static final int FILE_BYTES = 16 << 20;
  private static final int ELEMENTS = 400_000;
  private static final int DEPTH = 100;
  private static final int TEXT = 32_767;

  private final String file;
  private final Deque<Open> open = new ArrayDeque<>();
  private int elements;

  private XmlInput(String file) {
    this.file = file;
  }

  /** An element whose end was not met yet. */
  private record Open(
      String namespace,
      String name,
      Map<String, String> attributes,
      List<XmlElement> children,
      StringBuilder text) {}

  /**
   * The root element.
   *
   * @throws RejectedException when the file is no XML or beyond a limit
   */
  static XmlElement read(String file, byte[] bytes) {
    return new XmlInput(file).read(bytes);
  }

  private XmlElement read(byte[] bytes) {
    if (bytes.length == 0) {
      throw refused("the file is empty", "give a DMN file");
    }
    if (bytes.length > FILE_BYTES) {
      throw refused("the file is larger than 16 MiB, the most that is read", "");
    }
    XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
    factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
    factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
    factory.setProperty(XMLInputFactory.IS_REPLACING_ENTITY_REFERENCES, false);
    factory.setXMLResolver(
        (publicId, systemId, base, namespace) -> {
          throw new XMLStreamException("nothing outside the file is read");
        });
    try {
      return read(factory.createXMLStreamReader(new ByteArrayInputStream(bytes)));
    } catch (XMLStreamException notXml) {
      throw refused("the file is not sound XML" + at(notXml.getLocation()), "");
    }
  }

  private static String at(Location location) {
    return location == null || location.getLineNumber() < 1
        ? ""
        : ": it breaks off or goes wrong at line " + location.getLineNumber();
  }

  private XmlElement read(XMLStreamReader xml) throws XMLStreamException {
    while (xml.hasNext()) {
      switch (xml.next()) {
        case XMLStreamConstants.DTD ->
            throw refused(
                "the file declares a document type, which no DMN file needs",
                "do not trust the file");
        case XMLStreamConstants.ENTITY_REFERENCE ->
            throw refused(
                "the file uses an entity that XML does not have", "do not trust the file");
        case XMLStreamConstants.START_ELEMENT -> start(xml);
        case XMLStreamConstants.CHARACTERS, XMLStreamConstants.CDATA, XMLStreamConstants.SPACE ->
            text(xml);
        case XMLStreamConstants.END_ELEMENT -> {
          XmlElement ended = end();
          if (open.isEmpty()) {
            finish(xml);
            return ended;
          }
          open.element().children().add(ended);
        }
        default -> {
          // Comments and processing instructions say nothing.
        }
      }
    }
    throw refused("the file holds no element", "give a DMN file");
  }

  /** Reads on to the end, since what follows the root can still be wrong. */
  private static void finish(XMLStreamReader xml) throws XMLStreamException {
    while (xml.hasNext()) {
      xml.next();
    }
  }

  private void start(XMLStreamReader xml) {
    if (++elements > ELEMENTS) {
      throw refused("the file has more than 400,000 elements, the most that is read", "");
    }
    if (open.size() >= DEPTH) {
      throw refused("the file's elements are nested more than 100 deep, the most that is read", "");
    }
    Map<String, String> attributes = new HashMap<>();
    for (int i = 0; i < xml.getAttributeCount(); i++) {
      String owner = xml.getAttributeNamespace(i);
      String value = limited(xml.getAttributeValue(i));
      // The standard's own attributes bear no prefix; those that do are somebody else's.
      if (owner == null || owner.isEmpty()) {
        attributes.put(xml.getAttributeLocalName(i), value);
      }
    }
    String namespace = xml.getNamespaceURI();
    open.push(
        new Open(
            namespace == null ? "" : namespace,
            xml.getLocalName(),
            attributes,
            new ArrayList<>(),
            new StringBuilder()));
  }

  private void text(XMLStreamReader xml) {
    if (!open.isEmpty()) {
      StringBuilder text = open.element().text();
      text.append(xml.getTextCharacters(), xml.getTextStart(), xml.getTextLength());
    }
  }

  private XmlElement end() {
    Open ended = open.pop();
    return new XmlElement(
        ended.namespace(),
        ended.name(),
        ended.attributes(),
        ended.children(),
        limited(ended.text().toString().strip()));
  }

  private String limited(String text) {
    if (text.length() > TEXT) {
      throw refused(
          "a text in the file is longer than 32,767 characters, the most that a cell holds", "");
    }
    return text;
  }

  private RejectedException refused(String message, String help) {
    Issues issues = new Issues();
    Place place = new Place.Whole(file);
    if (help.isEmpty()) {
      issues.error("D001", place, message);
    } else {
      issues.error("D001", place, message, help);
    }
    return new RejectedException(issues.list());
  }
}
