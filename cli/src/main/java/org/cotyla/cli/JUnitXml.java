package org.cotyla.cli;

import java.io.StringWriter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;
import org.cotyla.cli.text.Printable;
import org.cotyla.issue.Issue;
import org.cotyla.trial.Difference;
import org.cotyla.trial.Outcome;
import org.cotyla.trial.TrialReport;
import org.cotyla.trial.Tried;

/**
 * Writes what came of cases as JUnit XML, which every build server reads. Without times, so that
 * the same protocol and cases give the same text.
 */
final class JUnitXml {

  private final XMLStreamWriter xml;

  private JUnitXml(XMLStreamWriter xml) {
    this.xml = xml;
  }

  static String write(TrialReport report) {
    StringWriter text = new StringWriter();
    try {
      XMLStreamWriter xml = XMLOutputFactory.newFactory().createXMLStreamWriter(text);
      new JUnitXml(xml).report(report);
      xml.close();
    } catch (XMLStreamException impossible) {
      throw new IllegalStateException(impossible);
    }
    return text.append('\n').toString();
  }

  private void report(TrialReport report) throws XMLStreamException {
    xml.writeStartDocument("UTF-8", "1.0");
    newLine(0);
    xml.writeStartElement("testsuites");
    attribute("name", report.protocol().about().title());
    counts(report.tried());
    Map<String, List<Tried>> suites = new LinkedHashMap<>();
    report
        .tried()
        .forEach(tried -> suites.computeIfAbsent(tried.suite(), k -> new ArrayList<>()).add(tried));
    for (Map.Entry<String, List<Tried>> suite : suites.entrySet()) {
      newLine(1);
      xml.writeStartElement("testsuite");
      attribute("name", suite.getKey());
      counts(suite.getValue());
      for (Tried tried : suite.getValue()) {
        testCase(tried);
      }
      newLine(1);
      xml.writeEndElement();
    }
    newLine(0);
    xml.writeEndElement();
    xml.writeEndDocument();
  }

  private void counts(List<Tried> tried) throws XMLStreamException {
    attribute("tests", String.valueOf(tried.size()));
    attribute("failures", count(tried, Outcome.Failed.class));
    attribute("errors", count(tried, Outcome.Refused.class));
    attribute("skipped", "0");
  }

  private static String count(List<Tried> tried, Class<? extends Outcome> kind) {
    return String.valueOf(tried.stream().filter(one -> kind.isInstance(one.outcome())).count());
  }

  private void testCase(Tried tried) throws XMLStreamException {
    newLine(2);
    if (tried.passed()) {
      xml.writeEmptyElement("testcase");
      names(tried);
      return;
    }
    xml.writeStartElement("testcase");
    names(tried);
    newLine(3);
    if (tried.outcome() instanceof Outcome.Failed failed) {
      List<String> lines = failed.differences().stream().map(Difference::plain).toList();
      problem("failure", lines.get(0), tried.because(), lines);
    } else if (tried.outcome() instanceof Outcome.Refused refused) {
      List<String> lines = refused.issues().stream().map(Issue::plain).toList();
      problem("error", refused.issues().get(0).message(), tried.because(), lines);
    }
    newLine(2);
    xml.writeEndElement();
  }

  private void names(Tried tried) throws XMLStreamException {
    attribute("classname", tried.suite());
    attribute("name", tried.name());
  }

  private void problem(String element, String message, String because, List<String> lines)
      throws XMLStreamException {
    xml.writeStartElement(element);
    attribute("message", message);
    String why = because.isEmpty() ? "" : because + "\n";
    xml.writeCharacters(
        lines.stream().map(JUnitXml::safe).collect(Collectors.joining("\n", safe(why), "")));
    xml.writeEndElement();
  }

  private void attribute(String name, String value) throws XMLStreamException {
    xml.writeAttribute(name, Printable.line(value));
  }

  /** XML has no place for most control characters. */
  private static String safe(String text) {
    return text.lines().map(Printable::line).collect(Collectors.joining("\n"))
        + (text.endsWith("\n") ? "\n" : "");
  }

  private void newLine(int depth) throws XMLStreamException {
    xml.writeCharacters("\n" + "  ".repeat(depth));
  }
}
