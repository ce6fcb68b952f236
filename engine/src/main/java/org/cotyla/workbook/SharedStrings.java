package org.cotyla.workbook;

import java.util.ArrayList;
import java.util.List;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/** The texts of a workbook, each stored once and tidied once. */
final class SharedStrings {

  private SharedStrings() {}

  static List<String> from(XMLStreamReader xml) throws XMLStreamException {
    List<String> strings = new ArrayList<>();
    while (xml.hasNext()) {
      if (xml.next() == XMLStreamConstants.START_ELEMENT && xml.getLocalName().equals("si")) {
        strings.add(TidyText.unescaped(richText(xml, "si")));
      }
    }
    return strings;
  }

  /** The text of all runs up to the end of the element, without the phonetic guide. */
  static String richText(XMLStreamReader xml, String until) throws XMLStreamException {
    StringBuilder text = new StringBuilder();
    boolean phonetic = false;
    while (xml.hasNext()) {
      int event = xml.next();
      if (event == XMLStreamConstants.START_ELEMENT) {
        phonetic |= xml.getLocalName().equals("rPh");
        if (xml.getLocalName().equals("t")) {
          String run = xml.getElementText();
          text.append(phonetic ? "" : run);
        }
      } else if (event == XMLStreamConstants.END_ELEMENT) {
        phonetic &= !xml.getLocalName().equals("rPh");
        if (xml.getLocalName().equals(until)) {
          break;
        }
      }
    }
    return text.toString();
  }
}
