package org.cotyla.dmn;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayDeque;
import java.util.Deque;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;

/**
 * Writes indented XML into memory, the same bytes each time. Names carry their prefix. Used once.
 */
final class XmlOutput {

  private static final String SUBSTITUTE = "\ufffd";

  private final ByteArrayOutputStream bytes = new ByteArrayOutputStream();
  private final XMLStreamWriter writer;
  private final Deque<Boolean> hasChildren = new ArrayDeque<>();

  XmlOutput() {
    try {
      writer =
          XMLOutputFactory.newDefaultFactory()
              .createXMLStreamWriter(bytes, StandardCharsets.UTF_8.name());
      writer.writeStartDocument(StandardCharsets.UTF_8.name(), "1.0");
    } catch (XMLStreamException impossible) {
      throw inMemory(impossible);
    }
  }

  /** Opens an element; attributes are name and value in turn, and an empty value is left out. */
  XmlOutput open(String name, String... attributes) {
    try {
      newLine();
      mark();
      writer.writeStartElement(name);
      attributes(attributes);
      hasChildren.push(false);
      return this;
    } catch (XMLStreamException impossible) {
      throw inMemory(impossible);
    }
  }

  XmlOutput close() {
    try {
      boolean indented = hasChildren.pop();
      if (indented) {
        newLine();
      }
      writer.writeEndElement();
      return this;
    } catch (XMLStreamException impossible) {
      throw inMemory(impossible);
    }
  }

  /** An element without content. */
  XmlOutput empty(String name, String... attributes) {
    try {
      newLine();
      mark();
      writer.writeEmptyElement(name);
      attributes(attributes);
      return this;
    } catch (XMLStreamException impossible) {
      throw inMemory(impossible);
    }
  }

  /** An element with a text. */
  XmlOutput text(String name, String text, String... attributes) {
    try {
      newLine();
      mark();
      writer.writeStartElement(name);
      attributes(attributes);
      writer.writeCharacters(allowed(text));
      writer.writeEndElement();
      return this;
    } catch (XMLStreamException impossible) {
      throw inMemory(impossible);
    }
  }

  byte[] bytes() {
    try {
      writer.writeCharacters("\n");
      writer.writeEndDocument();
      writer.close();
      return bytes.toByteArray();
    } catch (XMLStreamException impossible) {
      throw inMemory(impossible);
    }
  }

  private void attributes(String... attributes) throws XMLStreamException {
    for (int i = 0; i < attributes.length; i += 2) {
      if (!attributes[i + 1].isEmpty()) {
        writer.writeAttribute(attributes[i], allowed(attributes[i + 1]));
      }
    }
  }

  private void mark() {
    if (!hasChildren.isEmpty()) {
      hasChildren.pop();
      hasChildren.push(true);
    }
  }

  private void newLine() throws XMLStreamException {
    writer.writeCharacters("\n" + "  ".repeat(hasChildren.size()));
  }

  /** XML 1.0 has no place for control characters, whatever a text holds. */
  private static String allowed(String text) {
    return text.replaceAll(
        "[^\\x09\\x0A\\x20-\\uD7FF\\uE000-\\uFFFD\\x{10000}-\\x{10FFFF}]", SUBSTITUTE);
  }

  private static IllegalStateException inMemory(XMLStreamException failed) {
    return new IllegalStateException("XML could not be written into memory", failed);
  }
}
