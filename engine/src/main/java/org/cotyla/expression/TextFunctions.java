package org.cotyla.expression;

import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.function.BiPredicate;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import org.cotyla.value.Value;
import org.cotyla.value.ValueType;

/** The built-in functions of FEEL on texts (DMN clause 10.3.4.3), and the text of any value. */
final class TextFunctions {

  private TextFunctions() {}

  static List<FormulaFunction> all() {
    return List.of(
        new FiniteFunction(
            "string",
            List.of(ValueType.TEXT),
            true,
            ValueType.TEXT,
            values -> Value.of(asText(values.get(0)))),
        question("starts with", String::startsWith),
        question("ends with", String::endsWith),
        question("contains", String::contains),
        ofText("string length", ValueType.NUMBER, text -> Value.of(length(text))),
        changed("upper case", text -> text.toUpperCase(Locale.ROOT)),
        changed("lower case", text -> text.toLowerCase(Locale.ROOT)));
  }

  private static FormulaFunction question(String name, BiPredicate<String, String> formula) {
    return new FiniteFunction(
        name,
        Collections.nCopies(2, ValueType.TEXT),
        false,
        ValueType.YES_NO,
        texts -> Value.of(formula.test(texts.get(0).plain(), texts.get(1).plain())));
  }

  private static FormulaFunction changed(String name, UnaryOperator<String> formula) {
    return ofText(name, ValueType.TEXT, text -> Value.of(formula.apply(text)));
  }

  private static FormulaFunction ofText(
      String name, ValueType result, Function<String, Value> formula) {
    return new FiniteFunction(
        name, List.of(ValueType.TEXT), false, result, texts -> formula.apply(texts.get(0).plain()));
  }

  /** The standard's text of a value, in which true and false are not yes and no. */
  private static String asText(Value value) {
    return value instanceof Value.YesNoValue answer
        ? Boolean.toString(answer.yes())
        : value.plain();
  }

  /** Characters are counted as Unicode counts them, not as two halves. */
  private static long length(String text) {
    return text.codePointCount(0, text.length());
  }
}
