package org.cotyla.compile;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.cotyla.draft.Line;
import org.cotyla.draft.Text;
import org.cotyla.expression.CellParser;
import org.cotyla.expression.Dialect;
import org.cotyla.expression.Expression;
import org.cotyla.expression.ExpressionException;
import org.cotyla.expression.Symbol;
import org.cotyla.expression.Vocabulary;
import org.cotyla.issue.Issues;
import org.cotyla.protocol.Calculation;
import org.cotyla.unit.Units;
import org.cotyla.value.PossibleValues;
import org.cotyla.value.Value;
import org.cotyla.value.ValueType;

/** The Calculations sheet: formulas, and which of them are constants. */
final class CalculationCompiler {

  /** How long a chain of names may be whose types follow from each other; numbers need none. */
  private static final int ROUNDS_AT_MOST = 100;

  private final List<Line> lines;
  private final NamedThings names;
  private final Dialect dialect;
  private final References references;
  private final Issues issues;

  CalculationCompiler(
      List<Line> lines, NamedThings names, Dialect dialect, References references, Issues issues) {
    this.lines = lines;
    this.names = names;
    this.dialect = dialect;
    this.references = references;
    this.issues = issues;
  }

  /** The vocabulary in which every calculation has the type that its formula gives. */
  Vocabulary vocabulary() {
    Map<String, ValueType> types = new LinkedHashMap<>();
    lines.forEach(line -> types.put(line.get("name").text(), ValueType.NUMBER));
    for (int round = 0; round < ROUNDS_AT_MOST; round++) {
      CellParser parser = new CellParser(names.with(types), dialect);
      boolean changed = false;
      for (Line line : lines) {
        Optional<ValueType> type = parse(parser, line, new Issues()).map(Expression::type);
        if (type.isPresent() && type.get() != types.get(line.get("name").text())) {
          types.put(line.get("name").text(), type.get());
          changed = true;
        }
      }
      if (!changed) {
        break;
      }
    }
    return names.with(types);
  }

  /** Forwards, then backwards: chains are mostly written in one of the two ways. */
  private static <T> List<T> inTurn(List<T> list, int round) {
    List<T> turned = new ArrayList<>(list);
    if (round % 2 > 0) {
      Collections.reverse(turned);
    }
    return turned;
  }

  List<Calculation> compile(Vocabulary vocabulary) {
    CellParser parser = new CellParser(vocabulary, dialect);
    Map<Symbol, Expression> formulas = new LinkedHashMap<>();
    Map<Symbol, Line> places = new HashMap<>();
    for (Line line : lines) {
      Symbol symbol = vocabulary.symbol(line.get("name").text()).orElseThrow();
      parse(parser, line, issues).ifPresent(formula -> formulas.put(symbol, formula));
      places.put(symbol, line);
    }
    Map<Symbol, Value> constants = constants(formulas);
    List<Calculation> calculations = new ArrayList<>();
    formulas.forEach(
        (symbol, formula) ->
            calculations.add(
                calculation(
                    symbol, formula, places.getOrDefault(symbol, lines.get(0)), constants)));
    return calculations;
  }

  private Optional<Expression> parse(CellParser parser, Line line, Issues into) {
    Text cell = line.get("expression");
    try {
      return Optional.of(parser.formula(cell.text()));
    } catch (ExpressionException faulty) {
      into.error("W140", cell.at(), faulty.line(), faulty.help());
      return Optional.empty();
    }
  }

  private static Map<Symbol, Value> constants(Map<Symbol, Expression> formulas) {
    Map<Symbol, Value> constants = new HashMap<>();
    List<Map.Entry<Symbol, Expression>> entries = List.copyOf(formulas.entrySet());
    boolean found = true;
    for (int round = 0; found; round++) {
      found = false;
      for (Map.Entry<Symbol, Expression> entry : inTurn(entries, round)) {
        boolean ready =
            !constants.containsKey(entry.getKey())
                && constants.keySet().containsAll(entry.getValue().references());
        if (ready) {
          Optional<Value> value = entry.getValue().evaluate(scope(constants)).single();
          value.ifPresent(known -> constants.put(entry.getKey(), known));
          found |= value.isPresent();
        }
      }
    }
    return constants;
  }

  static org.cotyla.expression.Scope scope(Map<Symbol, Value> constants) {
    return symbol -> {
      Value value = constants.get(symbol);
      if (value == null) {
        throw new IllegalStateException("`" + symbol.name() + "` is not a constant");
      }
      return PossibleValues.of(value);
    };
  }

  private Calculation calculation(
      Symbol symbol, Expression formula, Line line, Map<Symbol, Value> constants) {
    Text unit = line.get("unit");
    boolean hasUnit = !unit.isNone() && !unit.text().equals("1");
    if (hasUnit && !Units.isKnown(unit.text())) {
      issues.error(
          "W116",
          unit.at(),
          "`" + unit.text() + "` is not a unit of UCUM",
          "for example mm, cm, mg/L, %, deg, a (years); capitals matter");
    }
    if (hasUnit && symbol.type() != ValueType.NUMBER) {
      issues.error(
          "W141",
          line.get("expression").at(),
          "`"
              + line.get("expression").text()
              + "` gives a "
              + symbol.type().word()
              + ", but the calculation has the unit "
              + unit.text(),
          "write a number; if a spreadsheet program made a date of it, give the cell the format"
              + " Text");
    }
    Text meaning = line.get("meaning");
    if (meaning.isNone()) {
      issues.error("W120", meaning.at(), "calculation `" + symbol.name() + "` has no meaning");
    }
    return new Calculation(
        symbol,
        formula,
        hasUnit ? unit.text() : "",
        meaning.text(),
        references.keys(line.get("source"), "calculation `" + symbol.name() + "`"),
        Optional.ofNullable(constants.get(symbol)),
        line.get("name").at(),
        line.get("expression").at());
  }
}
