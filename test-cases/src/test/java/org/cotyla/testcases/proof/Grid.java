package org.cotyla.testcases.proof;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.Consumer;
import org.cotyla.finding.Datum;
import org.cotyla.finding.Datum.Knowledge;
import org.cotyla.finding.Findings;
import org.cotyla.protocol.Field;
import org.cotyla.protocol.Protocol;
import org.cotyla.value.PossibleValues;
import org.cotyla.value.Value;

/**
 * Complete cases of a protocol, one for each combination of values that its cells can tell apart,
 * or that many drawn at random when there are too many.
 *
 * @param cases the cases
 * @param whole whether every combination is among them
 */
record Grid(List<Findings> cases, boolean whole) {

  Grid {
    cases = List.copyOf(cases);
  }

  static Grid of(Protocol protocol, int most, Random random) {
    List<List<Value>> axes = protocol.givenFields().stream().map(GridValues::of).toList();
    List<Findings> cases = new ArrayList<>();
    int stages = protocol.about().stages().size();
    double size = axes.stream().mapToDouble(List::size).reduce(stages, (a, b) -> a * b);
    if (size <= most) {
      for (int stage = 0; stage < stages; stage++) {
        int at = stage;
        everywhere(axes, new ArrayList<>(), point -> cases.add(at(protocol, at, point)));
      }
    } else {
      for (int i = 0; i < most; i++) {
        List<Value> point =
            axes.stream().map(axis -> axis.get(random.nextInt(axis.size()))).toList();
        cases.add(at(protocol, random.nextInt(stages), point));
      }
    }
    return new Grid(cases, size <= most);
  }

  private static void everywhere(
      List<List<Value>> axes, List<Value> sofar, Consumer<List<Value>> visit) {
    if (sofar.size() == axes.size()) {
      visit.accept(List.copyOf(sofar));
      return;
    }
    for (Value value : axes.get(sofar.size())) {
      sofar.add(value);
      everywhere(axes, sofar, visit);
      sofar.remove(sofar.size() - 1);
    }
  }

  /** The case at a stage; what is of a later stage is not known yet. */
  static Findings at(Protocol protocol, int stage, List<Value> point) {
    List<Datum> data = new ArrayList<>();
    for (int i = 0; i < point.size(); i++) {
      Field field = protocol.givenFields().get(i);
      data.add(
          field.stage() > stage
              ? new Datum(field, Knowledge.NOT_YET, PossibleValues.nothing(field.symbol().type()))
              : new Datum(field, Knowledge.RECORDED, PossibleValues.of(point.get(i))));
    }
    return new Findings("", protocol.about().stages().get(stage), data, List.of());
  }
}
