package org.cotyla.compile;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import org.cotyla.draft.Line;
import org.cotyla.draft.Text;
import org.cotyla.expression.CellParser;
import org.cotyla.expression.Dialect;
import org.cotyla.expression.ExpressionException;
import org.cotyla.expression.Scope;
import org.cotyla.expression.Symbol;
import org.cotyla.expression.Vocabulary;
import org.cotyla.issue.Issues;
import org.cotyla.name.NameIndex;
import org.cotyla.name.Names;
import org.cotyla.name.NearestWord;
import org.cotyla.protocol.Field;
import org.cotyla.unit.Units;
import org.cotyla.value.Value;
import org.cotyla.value.ValueSet;
import org.cotyla.value.ValueType;

/** The Fields sheet. */
final class FieldCompiler {

  private static final String CHOICE = "choice";
  private static final Map<String, ValueType> TYPES =
      Map.of(
          "number",
          ValueType.NUMBER,
          CHOICE,
          ValueType.TEXT,
          "yes/no",
          ValueType.YES_NO,
          "text",
          ValueType.TEXT,
          "date",
          ValueType.DATE);
  private static final List<String> TYPE_WORDS =
      List.of("number", CHOICE, "yes/no", "text", "date");
  private static final Pattern PLAIN_NUMBER = Pattern.compile("[0-9]{1,9}(\\.[0-9]{1,9})?");
  private static final List<String> KINDS = List.of("given", "derived");

  private final List<String> stages;
  private final NameRules names;
  private final References references;
  private final Issues issues;

  FieldCompiler(List<String> stages, NameRules names, References references, Issues issues) {
    this.stages = stages;
    this.names = names;
    this.references = references;
    this.issues = issues;
  }

  List<Field> compile(List<Line> lines) {
    List<Field> fields = new ArrayList<>();
    for (Line line : lines) {
      if (names.accept(line.get("name"), "the field")) {
        fields.add(field(line, fields.size()));
      }
    }
    return fields;
  }

  private Field field(Line line, int index) {
    String name = line.get("name").text();
    String type = word(line.get("type"), TYPE_WORDS, "W115", "type", "text");
    ValueType valueType = TYPES.getOrDefault(type, ValueType.TEXT);
    List<String> choices = type.equals(CHOICE) ? choices(line.get("allowed"), name) : List.of();
    Symbol symbol = new Symbol(name, index, valueType, choices);
    Text meaning = line.get("meaning");
    if (meaning.isNone()) {
      issues.error("W120", meaning.at(), "field `" + name + "` has no meaning");
    }
    return new Field(
        symbol,
        word(line.get("kind"), KINDS, "W114", "kind", "given").equals("given"),
        unit(line.get("unit"), valueType),
        allowed(line.get("allowed"), symbol),
        usual(line.get("usual"), symbol),
        stage(line.get("stage")),
        line.get("group").isNone() ? "" : line.get("group").text(),
        meaning.text(),
        references.keys(line.get("source"), "field `" + name + "`"),
        measurementError(line, symbol, name),
        line.get("name").at());
  }

  private String word(Text cell, List<String> valid, String code, String what, String otherwise) {
    Optional<String> known = NameIndex.of(valid, word -> word).find(cell.text());
    if (known.isEmpty()) {
      issues.error(
          code,
          cell.at(),
          "`" + cell.text() + "` is not a " + what + " of field",
          NearestWord.help(cell.text(), valid));
    }
    return known.orElse(otherwise);
  }

  private String unit(Text cell, ValueType type) {
    if (cell.isNone() || cell.text().equals("1")) {
      return "";
    }
    if (type != ValueType.NUMBER) {
      issues.error("W116", cell.at(), "`" + cell.text() + "` is a unit, but only a number has one");
      return "";
    }
    if (!Units.isKnown(cell.text())) {
      issues.error(
          "W116",
          cell.at(),
          "`" + cell.text() + "` is not a unit of UCUM",
          "for example mm, cm, mg/L, %, deg, a (years); capitals matter");
    }
    return cell.text();
  }

  private List<String> choices(Text cell, String name) {
    List<String> choices = new ArrayList<>();
    if (cell.isNone()) {
      issues.error("W117", cell.at(), "choice `" + name + "` has no allowed values");
      return List.of("-");
    }
    for (String part : cell.text().split(",")) {
      String choice = part.strip();
      boolean twice = choices.stream().anyMatch(c -> Names.key(c).equals(Names.key(choice)));
      if (choice.isEmpty() || Names.key(choice).isEmpty()) {
        issues.error("W117", cell.at(), "an allowed value of `" + name + "` is empty");
      } else if (twice) {
        issues.error(
            "W117", cell.at(), "`" + choice + "` stands twice in the values of `" + name + "`");
      } else {
        choices.add(choice);
      }
    }
    return choices;
  }

  private ValueSet allowed(Text cell, Symbol symbol) {
    if (symbol.isChoice()) {
      return ValueSet.of(ValueType.TEXT, symbol.choices().stream().map(Value::of).toList());
    }
    return range(cell, symbol, "W117", "allowed").orElse(ValueSet.all(symbol.type()));
  }

  private Optional<ValueSet> usual(Text cell, Symbol symbol) {
    return range(cell, symbol, "W118", "usual");
  }

  /** A range is written as a test without names. */
  private Optional<ValueSet> range(Text cell, Symbol symbol, String code, String what) {
    if (cell.isNone()) {
      return Optional.empty();
    }
    CellParser parser = new CellParser(new Vocabulary(List.of(), List.of()), Dialect.KIND);
    try {
      Optional<ValueSet> range =
          parser.test(cell.text(), symbol).region(symbol.type(), Scope.empty());
      if (range.isPresent() && !range.get().isEmpty()) {
        return range;
      }
      issues.error(
          code,
          cell.at(),
          "`" + cell.text() + "` leaves `" + symbol.name() + "` no " + what + " value");
    } catch (ExpressionException faulty) {
      issues.error(
          code,
          cell.at(),
          what + " values of `" + symbol.name() + "`: " + faulty.line(),
          Optional.of(faulty.help().orElse("write an interval, as [0..120]")));
    }
    return Optional.empty();
  }

  private Optional<BigDecimal> measurementError(Line line, Symbol symbol, String name) {
    Text cell = line.get("measurement error");
    if (cell.isNone()) {
      return Optional.empty();
    }
    if (symbol.type() != ValueType.NUMBER) {
      issues.error(
          "W124",
          cell.at(),
          "`" + name + "` has a measurement error, but only a number has one",
          "clear the cell, or write -");
      return Optional.empty();
    }
    if (!PLAIN_NUMBER.matcher(cell.text()).matches()) {
      issues.error(
          "W124",
          cell.at(),
          "`" + cell.text() + "` is not a measurement error",
          "write a number from 0 up, in the field's unit, or - for none");
      return Optional.empty();
    }
    return Optional.of(new BigDecimal(cell.text()));
  }

  private int stage(Text cell) {
    if (cell.isNone()) {
      return 0;
    }
    Optional<String> known = NameIndex.of(stages, stage -> stage).find(cell.text());
    if (known.isEmpty()) {
      issues.error(
          "W119",
          cell.at(),
          "`" + cell.text() + "` is not a stage of this protocol",
          NearestWord.help(cell.text(), stages));
    }
    return known.map(stages::indexOf).orElse(0);
  }
}
