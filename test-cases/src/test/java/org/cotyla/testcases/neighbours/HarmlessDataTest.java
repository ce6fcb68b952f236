package org.cotyla.testcases.neighbours;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Assume;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.PropertyDefaults;
import net.jqwik.api.ShrinkingMode;
import org.cotyla.evaluate.MissingDatum;
import org.cotyla.protocol.Field;
import org.cotyla.testcases.house.Answer;
import org.cotyla.testcases.house.Draw;
import org.cotyla.testcases.house.HardCases;
import org.cotyla.testcases.house.Known;
import org.cotyla.testcases.house.LeansOn;
import org.cotyla.testcases.house.OrdinaryCase;

/** What the protocol says of missing data holds, whatever the data turn out to be. */
@PropertyDefaults(tries = 250, edgeCases = EdgeCasesMode.NONE, shrinking = ShrinkingMode.OFF)
class HarmlessDataTest {

  @Property
  @Label("A datum that is said to be unable to matter does not: no value of it changes a result")
  @LeansOn(value = "HOUSE", known = Known.HOUSE_CHOICE)
  void harmless(@ForAll long seed) {
    Draw draw = new Draw(seed);
    OrdinaryCase whole = HardCases.drawn(seed);
    OrdinaryCase open = withGaps(whole, draw);
    List<Field> harmless =
        open.answer().recommendation().missing().stream()
            .filter(datum -> !datum.mayMatter())
            .map(MissingDatum::datum)
            .map(datum -> datum.field())
            .toList();
    Assume.that(!harmless.isEmpty());
    Field field = draw.oneOf(harmless);
    OrdinaryCase other = whole.with(field.name(), HardCases.value(field, draw));
    List<Object> changed = results(other.answer());
    changed.removeAll(results(whole.answer()));
    assertThat(changed).as("changed by " + field.name()).isEmpty();
  }

  @Property
  @Label("The first place that is certain with data missing stays whatever they turn out to be")
  @LeansOn(value = "HOUSE", known = Known.HOUSE_CHOICE)
  void certainStays(@ForAll long seed) {
    OrdinaryCase whole = HardCases.drawn(seed);
    Answer before = withGaps(whole, new Draw(seed)).answer();
    Answer after = whole.answer();
    for (String ranking : List.of("construct", "bearing")) {
      assertThat(before.result(ranking).first().containsAll(after.result(ranking).first()))
          .as(() -> before.standing(ranking) + " then " + after.standing(ranking))
          .isTrue();
    }
  }

  private static OrdinaryCase withGaps(OrdinaryCase whole, Draw draw) {
    OrdinaryCase open = whole;
    for (String field : new ArrayList<>(whole.findings().keySet())) {
      open = draw.percent(20) ? open.without(field) : open;
    }
    return open;
  }

  /**
   * First places, and what each decision gives that does not merely vote. Which of two rows with
   * the same result gave it is no result.
   */
  private static List<Object> results(Answer answer) {
    List<Object> results = new ArrayList<>();
    results.add(answer.construct());
    results.add(answer.bearing());
    answer.recommendation().decisions().stream()
        .filter(decision -> !decision.table().votes())
        .forEach(
            decision -> {
              results.add(decision.outputs());
              if (decision.table().hitPolicy().isList()) {
                decision.counting().forEach(firing -> results.add(firing.results()));
              }
            });
    return results;
  }
}
