package org.cotyla.explain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.cotyla.caseform.SeedlingProtocol;
import org.cotyla.evaluate.Engine;
import org.cotyla.expression.Symbol;
import org.cotyla.finding.Case;
import org.cotyla.issue.RejectedException;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("Why an option has its place")
class WhyTest {

  private static final Engine ENGINE = Engine.of(SeedlingProtocol.protocol());
  private static final Map<String, Object> DEEP =
      Map.of("seed depth", 40, "soil", "clay", "watered", true);

  @Test
  @DisplayName("names every row that counts, the weightiest first, and adds them up")
  void rows() {
    Why why = why(DEEP, "clay pot");
    assertThat(why.votes()).extracting(one -> one.row().id()).containsExactly("PO-2", "PO-5");
    assertThat(why.sum()).isEqualByComparingTo("2");
    assertThat(why.addsUp()).isTrue();
    assertThat(why.votes().get(1).tests())
        .extracting(test -> test.input() + " " + test.value().plain())
        .containsExactly("soil clay");
    assertThat(why.votes().get(1).sources())
        .extracting(source -> source.key() + " " + source.certainty().word())
        .containsExactly("HOUSE house opinion");
  }

  @Test
  @DisplayName("follows what the rows read down to the findings, each node once and in order")
  void premises() {
    Why why = why(DEEP, "peat pot");
    assertThat(why.votes()).extracting(one -> one.row().id()).containsExactly("PO-4");
    assertThat(why.premises().stream().map(premise -> names(premise.names())))
        .containsExactly(List.of("vigour"), List.of("deep line"), List.of("seed depth"));
    Premise.Decided vigour = (Premise.Decided) why.premises().get(0);
    assertThat(vigour.rows()).extracting(row -> row.row().id()).containsExactly("VI-2");
    assertThat(names(vigour.restsOn())).containsExactly("seed depth", "deep line");
  }

  @Test
  @DisplayName("rests a row without tests of its own on what the rows before it fail on")
  void catchAll() {
    Why why = why(Map.of("seed depth", 12, "soil", "loam", "watered", true), "peat pot");
    Premise.Decided vigour = (Premise.Decided) why.premises().get(0);
    assertThat(vigour.rows()).extracting(row -> row.row().id()).containsExactly("VI-4");
    assertThat(names(vigour.restsOn())).containsExactly("root colour", "seed depth", "watered");
  }

  @Test
  @DisplayName("gives every name that a node rests on as a later node")
  void everyNameIsGiven() {
    for (String option : List.of("clay pot", "peat pot", "open ground")) {
      Set<Symbol> asked = new HashSet<>();
      Set<Symbol> given = new HashSet<>();
      for (Premise premise : why(Map.of("soil", "clay"), option).premises()) {
        assertThat(Collections.disjoint(given, premise.restsOn())).isTrue();
        assertThat(given.addAll(premise.names())).isTrue();
        asked.addAll(premise.restsOn());
      }
      assertThat(given).containsAll(asked);
    }
  }

  @Test
  @DisplayName("shows what hangs on open data as possible, with the tests it hangs on")
  void open() {
    Why why = why(Map.of("soil", "loam", "watered", true), "peat pot");
    assertThat(why.votes()).isEmpty();
    assertThat(why.possibleVotes())
        .extracting(one -> one.row().id() + " " + one.openTests().get(0).input())
        .containsExactly("PO-1 vigour", "PO-4 vigour");
    assertThat(why.option().points().plain()).isEqualTo("0 (-1 to 3)");
    assertThat(why.addsUp()).isTrue();
  }

  @Test
  @DisplayName("finds an option however it is spelled, and names the nearest when there is none")
  void names() {
    assertThat(why(DEEP, "CLAY-pot").option().name()).isEqualTo("clay pot");
    assertThatThrownBy(() -> why(DEEP, "clay pit"))
        .isInstanceOf(RejectedException.class)
        .hasMessageContaining("C042")
        .hasMessageContaining("did you mean `clay pot`?");
    assertThatThrownBy(
            () -> AskedOption.find(ENGINE.protocol(), "clay pit", Optional.of("pots and pans")))
        .hasMessageContaining("C042")
        .hasMessageContaining("C044");
  }

  private static Why why(Map<String, Object> findings, String option) {
    return Why.of(ENGINE.evaluate(Case.of(findings)), option);
  }

  private static List<String> names(List<Symbol> symbols) {
    return symbols.stream().map(Symbol::name).toList();
  }
}
