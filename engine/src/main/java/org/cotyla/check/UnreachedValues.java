package org.cotyla.check;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.cotyla.expression.Symbol;
import org.cotyla.finite.Answer;
import org.cotyla.finite.Claim;
import org.cotyla.protocol.DecisionTable;
import org.cotyla.value.PossibleValues;
import org.cotyla.value.Value;

/** Values of a choice that its decision gives in no case. */
final class UnreachedValues {

  private final TableCheck check;

  UnreachedValues(TableCheck check) {
    this.check = check;
  }

  void check() {
    if (check.table().hitPolicy().isList()) {
      return;
    }
    for (DecisionTable.Output output : check.table().outputs()) {
      Symbol symbol = output.symbol();
      List<String> never = new ArrayList<>();
      for (String choice : symbol.choices()) {
        Claim gives = new Claim.Is(symbol, PossibleValues.of(Value.of(choice)));
        if (check.search().find(gives) instanceof Answer.Impossible) {
          never.add(choice);
        }
      }
      if (!never.isEmpty()) {
        String words =
            never.stream().map(word -> "`" + word + "`").collect(Collectors.joining(", "));
        check
            .remarks()
            .note(
                "K141",
                output.at(),
                symbol.name(),
                "no case leads to " + words + " of `" + symbol.name() + "`",
                "take it out of the allowed values, or add the row that gives it");
      }
    }
  }
}
