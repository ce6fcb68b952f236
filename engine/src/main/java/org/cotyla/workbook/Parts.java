package org.cotyla.workbook;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import javax.xml.XMLConstants;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/**
 * The XML parts of an archive. A part is only here when it starts as XML does and declares no
 * document type, so nothing that is read later can reach another file.
 */
final class Parts {

  /** Takes what is wanted from one part. */
  interface Reading<T> {
    T from(XMLStreamReader xml) throws XMLStreamException;
  }

  private final Refusal refusal;
  private final XMLInputFactory factory = safeFactory();
  private final Map<String, byte[]> xmlParts = new HashMap<>();

  private final Set<String> names;

  Parts(Archive.Unpacked archive, Refusal refusal) {
    this.refusal = refusal;
    this.names = archive.names();
    archive
        .xml()
        .forEach(
            (name, bytes) -> {
              if (startsAsXml(name, bytes)) {
                xmlParts.put(name, bytes);
              }
            });
  }

  private static XMLInputFactory safeFactory() {
    // The JDK's own reader, whatever else the host program has on its class path.
    XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
    factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
    factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
    factory.setProperty(XMLConstants.ACCESS_EXTERNAL_DTD, "");
    return factory;
  }

  /** The names of all parts, those that are not XML among them. */
  Set<String> names() {
    return names;
  }

  boolean has(String name) {
    return xmlParts.containsKey(name.toLowerCase(Locale.ROOT));
  }

  /** What is wanted from the part, or nothing when there is no such part. */
  <T> Optional<T> readIfThere(String name, Reading<T> reading) {
    return has(name) ? Optional.of(read(name, reading)) : Optional.empty();
  }

  <T> T read(String name, Reading<T> reading) {
    byte[] part = xmlParts.get(name.toLowerCase(Locale.ROOT));
    if (part == null) {
      throw refusal.damaged("its part `" + TidyText.shortened(TidyText.of(name)) + "` is missing");
    }
    try {
      XMLStreamReader xml = factory.createXMLStreamReader(XmlText.of(part));
      try {
        return reading.from(xml);
      } finally {
        xml.close();
      }
    } catch (XMLStreamException | IllegalArgumentException | IndexOutOfBoundsException damaged) {
      // The latter two: a number that is none, or that points to nothing.
      throw unreadable(name);
    }
  }

  private RuntimeException unreadable(String name) {
    return refusal.damaged("its part `" + TidyText.shortened(name) + "` cannot be read");
  }

  static boolean mayBeXml(String name, byte[] bytes) {
    if (name.endsWith(".xml") || name.endsWith(".rels") || name.endsWith(".vml")) {
      return true;
    }
    // '<' in any encoding comes within a byte order mark and some white space.
    for (int i = 0; i < Math.min(bytes.length, 64); i++) {
      if (bytes[i] == '<') {
        return true;
      }
    }
    return false;
  }

  private boolean startsAsXml(String name, byte[] bytes) {
    try {
      XMLStreamReader xml = factory.createXMLStreamReader(XmlText.of(bytes));
      try {
        int event = xml.getEventType();
        while (event != XMLStreamConstants.START_ELEMENT) {
          if (event == XMLStreamConstants.DTD) {
            throw refusal.because(
                "W013",
                "a part of the file declares a document type: `" + TidyText.shortened(name) + "`",
                "no spreadsheet program writes that; do not trust the file");
          }
          event = xml.next();
        }
        return true;
      } finally {
        xml.close();
      }
    } catch (XMLStreamException notXml) {
      return false;
    }
  }
}
