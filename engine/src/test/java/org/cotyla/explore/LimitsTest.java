package org.cotyla.explore;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.cotyla.caseform.SeedlingProtocol;
import org.cotyla.evaluate.Engine;
import org.cotyla.evaluate.Recommendation;
import org.cotyla.finding.Case;
import org.cotyla.finding.Datum;
import org.cotyla.finite.Answer;
import org.cotyla.finite.CaseSearch;
import org.cotyla.finite.Domain;
import org.cotyla.finite.Effort;
import org.cotyla.value.Value;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("A limit that a search has met")
class LimitsTest {

  private static final Effort NONE = new Effort(0, 0, 0);
  private static final Effort ENOUGH = new Effort(20_000, 200, 24);

  @Test
  @DisplayName("is said of the conditions under which data matter")
  void conditions() {
    Engine engine = Engine.of(SeedlingProtocol.protocol());
    // Depth and water are open: either matters only while the other leaves a seedling strong.
    Recommendation advice = engine.evaluate(Case.of(Map.of("soil", "loam")));
    WhatMatters matters = WhatMatters.of(engine, advice);
    Conditions all = Conditions.of(engine, matters);
    assertThat(all.conditions()).isNotEmpty();
    assertThat(all.complete()).isTrue();
    Conditions cut = Conditions.of(engine, matters, NONE);
    assertThat(cut.conditions()).isEmpty();
    assertThat(cut.complete()).isFalse();
  }

  @Test
  @DisplayName("is said of a value, which then is not proven to be the nearest")
  void nearest() {
    Engine engine = Engine.of(SeedlingProtocol.protocol());
    Recommendation advice =
        engine.evaluate(Case.of(Map.of("seed depth", 10, "soil", "loam", "watered", true)));
    Goal goal = Goals.one(engine.protocol(), "vigour=weak");
    Datum depth = advice.findings().datum("seed depth").orElseThrow();
    Domain domain = Domain.of(engine.protocol(), advice.findings()).freed(List.of(depth.field()));
    CaseSearch search = CaseSearch.of(engine, domain, ENOUGH);
    Answer.Found found = (Answer.Found) search.find(goal.claim());
    FieldClasses classes = new FieldClasses(engine.protocol());

    Nearest nearest = new Nearest(depth, search, List.of(goal.claim()));
    nearest.find(classes, found);
    assertThat(nearest.line()).contains(Value.of(30));
    assertThat(nearest.isProven()).isTrue();

    CaseSearch limited = CaseSearch.of(engine, domain, NONE);
    Nearest cut = new Nearest(depth, limited, List.of(goal.claim()));
    assertThat(cut.find(classes, found)).isEqualTo(found);
    assertThat(cut.isProven()).isFalse();
  }

  @Test
  @DisplayName("is said of the results among which a datum decides")
  void among() {
    assertThat(amongDays(11).whole()).isTrue();
    assertThat(amongDays(11).among()).hasSize(11);
    assertThat(amongDays(20).whole()).isFalse();
    assertThat(amongDays(20).among()).hasSizeBetween(12, 19);
  }

  /** Among how many results the shade decides when each shade gives another number of days. */
  private static Reach amongDays(int shades) {
    String words =
        IntStream.range(0, shades).mapToObj(i -> "shade " + i).collect(Collectors.joining(", "));
    String rows =
        IntStream.range(0, shades)
            .mapToObj(i -> "DA-" + i + " | shade " + i + " | " + i + " | So many. | HOUSE\n")
            .collect(Collectors.joining());
    Engine engine =
        Engine.of(
            SeedlingProtocol.changed(
                text ->
                    text.replace("none, half, full, half or full", words)
                        .replace("hit policy | C+", "hit policy | U")
                        .replace(" | vigour | days | |", " | shade | days | |")
                        .replaceAll("DA-1 .*\\n", rows)
                        .replaceAll("DA-2 .*\\n", "")));
    WhatMatters matters =
        WhatMatters.of(
            engine,
            engine.evaluate(Case.of(Map.of("seed depth", 10, "soil", "loam", "watered", true))));
    return matters.data().stream()
        .filter(one -> one.datum().field().name().equals("shade"))
        .flatMap(one -> one.reach(new Facet(Facet.Kind.DECISION, "Days under glass")).stream())
        .findFirst()
        .orElseThrow();
  }
}
