package org.cotyla.dmn;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * One element of a file that was read.
 *
 * @param namespace its namespace
 * @param name its name without a prefix
 * @param attributes its attributes without a prefix
 * @param children the elements in it
 * @param text the text right in it, without space around
 */
record XmlElement(
    String namespace,
    String name,
    Map<String, String> attributes,
    List<XmlElement> children,
    String text) {

  XmlElement {
    attributes = Map.copyOf(attributes);
    children = List.copyOf(children);
  }

  /** The attribute without space around; empty when there is none. */
  String attribute(String key) {
    return attributes.getOrDefault(key, "").strip();
  }

  Stream<XmlElement> children(String childName) {
    return children.stream().filter(child -> child.name().equals(childName));
  }

  Optional<XmlElement> child(String childName) {
    return children(childName).findFirst();
  }

  /** The text of the {@code text} element in the named child; empty when there is none. */
  String textOf(String childName) {
    return child(childName).flatMap(child -> child.child("text")).map(XmlElement::text).orElse("");
  }

  /** What people call it: its label, or its name. */
  String shown() {
    return attribute("label").isEmpty() ? attribute("name") : attribute("label");
  }
}
