package org.cotyla.testcases.conformance;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.cotyla.value.Value;
import org.w3c.dom.Element;

/**
 * The test cases of a folder of the TCK, and the model that they are for.
 *
 * @param model the model
 * @param results every expected result, in order
 */
record TckTests(DmnModel model, List<Result> results) {

  /** A result that a test case expects of a decision, given inputs. */
  record Result(
      String testCase, String decision, Map<String, FeelValue> inputs, FeelValue expected) {
    String title() {
      return testCase.equals(decision) ? decision : testCase + "/" + decision;
    }
  }

  static TckTests read(Path folder) {
    Path file =
        TckData.list(folder)
            .filter(path -> path.toString().endsWith(".xml"))
            .findFirst()
            .orElseThrow();
    Element root = Xml.root(file);
    String modelName = Xml.text(root, "modelName").orElseThrow().strip();
    List<Result> results = new ArrayList<>();
    for (Element testCase : Xml.children(root, "testCase")) {
      Map<String, FeelValue> inputs = new LinkedHashMap<>();
      for (Element input : Xml.children(testCase, "inputNode")) {
        inputs.put(input.getAttribute("name"), value(input));
      }
      for (Element result : Xml.children(testCase, "resultNode")) {
        FeelValue expected = Xml.child(result, "expected").map(TckTests::value).orElseThrow();
        results.add(
            new Result(testCase.getAttribute("id"), result.getAttribute("name"), inputs, expected));
      }
    }
    return new TckTests(DmnReader.read(folder.resolve(modelName)), results);
  }

  private static FeelValue value(Element holder) {
    Optional<Element> list = Xml.child(holder, "list");
    if (list.isPresent()) {
      boolean isNull = Xml.instance(list.get(), "nil").filter("true"::equals).isPresent();
      return isNull
          ? new FeelValue.Null()
          : new FeelValue.Items(
              Xml.children(list.get(), "item").stream().map(TckTests::value).toList());
    }
    List<Element> components = Xml.children(holder, "component");
    if (!components.isEmpty()) {
      Map<String, FeelValue> parts = new LinkedHashMap<>();
      components.forEach(part -> parts.put(part.getAttribute("name"), value(part)));
      return new FeelValue.Structure(parts);
    }
    return Xml.child(holder, "value").map(TckTests::single).orElse(new FeelValue.Null());
  }

  private static FeelValue single(Element value) {
    if (Xml.instance(value, "nil").filter("true"::equals).isPresent()) {
      return new FeelValue.Null();
    }
    String text = value.getTextContent();
    String type = Xml.instance(value, "type").orElse("string").replaceFirst(".*:", "");
    return switch (type) {
      case "decimal", "double", "integer", "int" ->
          FeelValue.of(Value.of(new BigDecimal(text.strip())));
      case "boolean" -> FeelValue.of(Value.of(Boolean.parseBoolean(text.strip())));
      case "date" -> date(text.strip());
      case "string" -> FeelValue.of(Value.of(text));
      default -> new FeelValue.Foreign(type, text);
    };
  }

  private static FeelValue date(String text) {
    return FeelValue.of(Value.of(LocalDate.parse(text)));
  }
}
