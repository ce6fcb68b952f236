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
      List<String> undecided = new ArrayList<>();
      String why = "";
      for (String choice : symbol.choices()) {
        Claim gives = new Claim.Is(symbol, PossibleValues.of(Value.of(choice)));
        Answer answer = check.search().find(gives);
        if (answer instanceof Answer.Impossible) {
          never.add(choice);
        } else if (answer instanceof Answer.Undecided open) {
          undecided.add(choice);
          why = open.why();
        }
      }
      if (!never.isEmpty()) {
        check
            .remarks()
            .note(
                "K141",
                output.at(),
                symbol.name(),
                "no case leads to " + words(never) + " of `" + symbol.name() + "`",
                "take it out of the allowed values, or add the row that gives it");
      }
      if (!undecided.isEmpty()) {
        check
            .remarks()
            .note(
                "K142",
                output.at(),
                symbol.name(),
                "whether a case leads to "
                    + words(undecided)
                    + " of `"
                    + symbol.name()
                    + "` is undecided: "
                    + why);
      }
    }
  }

  private static String words(List<String> values) {
    return values.stream().map(word -> "`" + word + "`").collect(Collectors.joining(", "));
  }
}
