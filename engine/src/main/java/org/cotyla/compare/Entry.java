package org.cotyla.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.cotyla.expression.Symbol;
import org.cotyla.protocol.DecisionTable;
import org.cotyla.protocol.Row;
import org.cotyla.value.PossibleValues;
import org.cotyla.value.Value;
import org.cotyla.value.ValueType;

/** What a row gives, in words that are equal when it gives the same. */
record Entry(DecisionTable table, Row row, Side side) {

  private static final String NOTHING = "nothing";

  String words() {
    List<String> words = new ArrayList<>();
    for (int i = 0; i < table.outputs().size(); i++) {
      Symbol output = table.outputs().get(i).symbol();
      words.add(named(table, output, words(i, output)));
    }
    return String.join("; ", words);
  }

  static String nothing(DecisionTable table) {
    List<String> words = new ArrayList<>();
    table.outputs().forEach(output -> words.add(named(table, output.symbol(), NOTHING)));
    return String.join("; ", words);
  }

  /** A text that could be read as something else is written in quotes. */
  private String unmistakable(Value value) {
    String plain = value.plain();
    boolean mistakable =
        plain.isEmpty()
            || plain.equals(NOTHING)
            || plain.startsWith("`")
            || (table.outputs().size() > 1 && plain.contains(";"));
    return value.type() == ValueType.TEXT && mistakable ? value.literal() : plain;
  }

  private static String named(DecisionTable table, Symbol output, String value) {
    return table.outputs().size() == 1 ? value : output.name() + " " + value;
  }

  private String words(int output, Symbol symbol) {
    Optional<PossibleValues> constant = side.constants().of(row.results().get(output).expression());
    if (constant.isEmpty()) {
      String formula = side.meaning(row.results().get(output).expression()).substring(2);
      boolean unsteady = side.isUnsteady(row.results().get(output).expression());
      return "`" + formula + "`" + (unsteady ? side.number() == 0 ? " before" : " now" : "");
    }
    String unit = side.unit(symbol);
    return constant
        .get()
        .single()
        .map(value -> unmistakable(value) + (unit.isEmpty() ? "" : " " + unit))
        .orElse(NOTHING);
  }
}
