package org.cotyla.cli.text;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.cotyla.evaluate.Firing;
import org.cotyla.evaluate.Standing;
import org.cotyla.expression.Symbol;
import org.cotyla.protocol.HitPolicy;
import org.cotyla.protocol.Row;
import org.cotyla.value.PossibleValues;
import org.cotyla.value.Truth;

/** A row's tests with the values that met them, in words. */
final class TestWords {

  private final KnownValues known;

  TestWords(KnownValues known) {
    this.known = known;
  }

  /**
   * All that say something: {@code defect class = 3A; contact = 45 %, meets < floor (floor = 50)}.
   */
  String all(Firing firing) {
    List<String> words = new ArrayList<>();
    for (int i = 0; i < firing.row().tests().size(); i++) {
      Row.Test test = firing.row().tests().get(i);
      if (!test.prepared().isAnything()) {
        words.add(one(firing, i, test));
      }
    }
    boolean later = firing.table().hitPolicy() == HitPolicy.FIRST && firing.row().position() > 0;
    if (!later) {
      return words.isEmpty() ? "whatever the findings" : String.join("; ", words);
    }
    boolean decides = firing.standing() == Standing.DECIDES;
    String before = decides ? "no row before it matches" : "unless a row before it matches";
    return words.isEmpty()
        ? before + " " + inputs(firing)
        : String.join("; ", words) + "; " + before;
  }

  /** What the rows before it were tested on. */
  private String inputs(Firing firing) {
    List<String> words = new ArrayList<>();
    for (int i = 0; i < firing.table().inputs().size(); i++) {
      Symbol input = firing.table().inputs().get(i).symbol();
      words.add(input.name() + " = " + known.inWords(input, firing.seen().get(i)));
    }
    return words.stream().distinct().collect(Collectors.joining("; ", "(", ")"));
  }

  /** Those that hang on open data: {@code contact is < floor (floor = 50 %), not stated}. */
  String open(Firing firing) {
    List<String> words = new ArrayList<>();
    for (int i = 0; i < firing.row().tests().size(); i++) {
      if (firing.truths().get(i) == Truth.OPEN) {
        Row.Test test = firing.row().tests().get(i);
        Symbol input = firing.table().inputs().get(i).symbol();
        String now = known.inWords(input, firing.seen().get(i));
        words.add(
            input.name()
                + " meets "
                + plain(test)
                + known.endpointValues(test)
                + " (it is "
                + now
                + ")");
      }
    }
    return Words.and(words);
  }

  private String one(Firing firing, int place, Row.Test test) {
    Symbol input = firing.table().inputs().get(place).symbol();
    PossibleValues seen = firing.seen().get(place);
    String value = input.name() + " = " + known.inWords(input, seen);
    boolean nothing = seen.isNothing() && test.text().strip().equals("null");
    boolean saysTheSame =
        nothing || seen.single().filter(one -> one.plain().equals(plain(test))).isPresent();
    String meets = firing.truths().get(place) == Truth.OPEN ? ", may meet " : ", meets ";
    return saysTheSame ? value : value + meets + plain(test) + known.endpointValues(test);
  }

  /** A test that is one quoted word says the same without its quotation marks. */
  static String plain(Row.Test test) {
    return plain(test.text());
  }

  static String plain(String test) {
    boolean quoted = test.length() > 2 && test.startsWith("\"") && test.endsWith("\"");
    boolean one = quoted && test.indexOf('"', 1) == test.length() - 1;
    return one ? test.substring(1, test.length() - 1) : test;
  }
}
