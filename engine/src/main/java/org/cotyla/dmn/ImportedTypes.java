package org.cotyla.dmn;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.cotyla.expression.CellParser;
import org.cotyla.expression.CellTest;
import org.cotyla.expression.Dialect;
import org.cotyla.expression.Expression;
import org.cotyla.expression.ExpressionException;
import org.cotyla.expression.Relation;
import org.cotyla.expression.Symbol;
import org.cotyla.expression.Vocabulary;
import org.cotyla.value.Value;
import org.cotyla.value.ValueType;

/** The types of a file, as far as a workbook has them. Immutable. */
final class ImportedTypes {

  private static final Map<String, ValueType> PLAIN =
      Map.of(
          "number", ValueType.NUMBER,
          "string", ValueType.TEXT,
          "boolean", ValueType.YES_NO,
          "date", ValueType.DATE);

  private final Map<String, XmlElement> byName = new HashMap<>();

  ImportedTypes(List<XmlElement> itemDefinitions) {
    itemDefinitions.forEach(item -> byName.putIfAbsent(item.attribute("name"), item));
  }

  /**
   * A type of the workbook's.
   *
   * @param type the kind of value
   * @param choices the values in order when they are a list of texts, else empty
   * @param allowed the allowed values as a workbook has them; empty for all
   */
  record Kind(ValueType type, List<String> choices, String allowed) {

    /** The word for it on the sheet Fields. */
    String word() {
      return choices.isEmpty() ? type.word() : "choice";
    }
  }

  /** What the type comes to; nothing when it has parts, is unknown, or goes in a circle. */
  Optional<Kind> kind(String typeRef) {
    return kind(typeRef, new HashSet<>());
  }

  private Optional<Kind> kind(String typeRef, Set<String> seen) {
    String name = typeRef.replaceFirst("^(feel:|\\{[^}]*\\})", "");
    XmlElement item = byName.get(name);
    if (item == null || !seen.add(name)) {
      return Optional.ofNullable(PLAIN.get(name)).map(type -> new Kind(type, List.of(), ""));
    }
    Optional<Kind> base = kind(item.child("typeRef").map(XmlElement::text).orElse(""), seen);
    String allowed = item.textOf("allowedValues");
    String tests = allowed.isEmpty() ? item.textOf("typeConstraint") : allowed;
    return base.map(kind -> tests.isEmpty() ? kind : narrowed(kind, tests));
  }

  /** The kind with only the values that meet the tests; an unreadable list changes nothing. */
  static Kind narrowed(Kind kind, String tests) {
    Symbol any = new Symbol("any value", 0, kind.type(), List.of());
    try {
      CellTest test =
          new CellParser(new Vocabulary(List.of(), List.of()), Dialect.STRICT).test(tests, any);
      List<CellTest> parts = test instanceof CellTest.AnyOf list ? list.tests() : List.of(test);
      List<CellTest> values = parts.stream().filter(part -> !isNothing(part)).toList();
      if (kind.type() == ValueType.TEXT) {
        List<String> choices = values.stream().flatMap(part -> text(part).stream()).toList();
        boolean all = choices.size() == values.size() && !choices.isEmpty();
        return all ? new Kind(kind.type(), choices, String.join(", ", choices)) : kind;
      }
      return new Kind(
          kind.type(),
          List.of(),
          values.stream().map(CellTest::print).collect(Collectors.joining(", ")));
    } catch (ExpressionException unreadable) {
      return kind;
    }
  }

  private static boolean isNothing(CellTest test) {
    return test instanceof CellTest.Compared compared
        && compared.endpoint() instanceof Expression.Nothing;
  }

  private static Optional<String> text(CellTest test) {
    boolean isText =
        test instanceof CellTest.Compared compared
            && compared.relation() == Relation.EQUAL
            && compared.endpoint() instanceof Expression.Literal literal
            && literal.value() instanceof Value.TextValue;
    return isText
        ? Optional.of(((Expression.Literal) ((CellTest.Compared) test).endpoint()).value().plain())
        : Optional.empty();
  }
}
