package org.cotyla.expression;

import java.util.List;
import java.util.Set;
import org.cotyla.value.PossibleValues;
import org.cotyla.value.Value;
import org.cotyla.value.ValueType;

/** The names that the tests of this package use, one or more of every type. */
final class SampleNames {

  static final List<String> GRADES = List.of("mild", "moderate", "3B", "not assessed");

  static final Symbol SIZE = new Symbol("size", 0, ValueType.NUMBER, List.of());
  static final Symbol LIMIT = new Symbol("lower limit", 1, ValueType.NUMBER, List.of());
  static final Symbol DEPTH = new Symbol("Mölnar-line depth", 2, ValueType.NUMBER, List.of());
  static final Symbol ANSWER = new Symbol("answer", 3, ValueType.YES_NO, List.of());
  static final Symbol SECOND_ANSWER = new Symbol("answer 2", 4, ValueType.YES_NO, List.of());
  static final Symbol GRADE = new Symbol("grade", 5, ValueType.TEXT, GRADES);
  static final Symbol OTHER_GRADE = new Symbol("other grade", 6, ValueType.TEXT, GRADES);
  static final Symbol NOTE = new Symbol("note", 7, ValueType.TEXT, List.of());
  static final Symbol DAY = new Symbol("day", 8, ValueType.DATE, List.of());
  static final Symbol OTHER_DAY = new Symbol("other day", 9, ValueType.DATE, List.of());

  /** A house constant: 2 in every case. */
  static final Symbol HOUSE_LINE = new Symbol("house line", 10, ValueType.NUMBER, List.of());

  static final List<Symbol> ALL =
      List.of(
          SIZE,
          LIMIT,
          DEPTH,
          ANSWER,
          SECOND_ANSWER,
          GRADE,
          OTHER_GRADE,
          NOTE,
          DAY,
          OTHER_DAY,
          HOUSE_LINE);

  static final List<FormulaFunction> FUNCTIONS = StandardFunctions.all();
  static final Vocabulary VOCABULARY = new Vocabulary(ALL, FUNCTIONS);
  static final Set<Symbol> CONSTANTS = Set.of(HOUSE_LINE);

  private SampleNames() {}

  static PossibleValues houseLine() {
    return PossibleValues.of(Value.of(2));
  }

  static Scope constants() {
    return symbol -> {
      if (symbol.equals(HOUSE_LINE)) {
        return houseLine();
      }
      throw new IllegalStateException("`" + symbol.name() + "` is not a constant");
    };
  }

  static CellParser parser(Dialect dialect) {
    return new CellParser(VOCABULARY, dialect);
  }

  static CellParser kind() {
    return parser(Dialect.KIND);
  }

  /** A scope in which only the given name is known. */
  static Scope only(Symbol known, PossibleValues value) {
    return symbol -> {
      if (symbol.equals(known)) {
        return value;
      }
      return constants().valueOf(symbol);
    };
  }
}
