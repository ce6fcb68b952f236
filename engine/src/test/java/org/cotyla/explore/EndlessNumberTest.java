package org.cotyla.explore;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.cotyla.caseform.SeedlingProtocol;
import org.cotyla.evaluate.Engine;
import org.cotyla.evaluate.Recommendation;
import org.cotyla.finding.Case;
import org.cotyla.value.Value;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("Around a number that has no range")
class EndlessNumberTest {

  @Test
  @DisplayName("a line that a formula draws is found on either side, however far from naught")
  void linesOfFormulas() {
    // Strong as long as 15 is not above 20 + seeds / 10, which is so from -50 on.
    Margin high = margin("20 + seeds sown / 10", 15, 100);
    assertThat(high.below().map(Margin.Line::at)).contains(Value.of(-50));
    assertThat(high.above()).isEmpty();
    // Strong as long as 15 is not above 20 - seeds / 10, which is so up to 50.
    Margin low = margin("20 - seeds sown / 10", 15, -100);
    assertThat(low.above().map(Margin.Line::at)).contains(Value.of(50));
    assertThat(low.below()).isEmpty();
  }

  @Test
  @DisplayName("is not said to be proven where every stretch leaves the answer unclear")
  void unclearStretch() {
    Margin unclear = margin("20 + seeds sown - seeds sown", 15, 100);
    assertThat(unclear.below()).isEmpty();
    assertThat(unclear.above()).isEmpty();
    assertThat(unclear.nearest()).isFalse();
  }

  @Test
  @DisplayName("the nearer of two values that would do is taken, also when the other has no end")
  void nearestMove() {
    Engine engine =
        Engine.of(
            SeedlingProtocol.changed(
                text ->
                    text.replace("[0..80] | [2..40]", "- | -")
                        .replace("- | > deep line |", "- | <= -100, >= 10 |")));
    Recommendation advice =
        engine.evaluate(Case.of(Map.of("seed depth", -1, "soil", "loam", "watered", true)));
    SmallestChange change =
        SmallestChange.of(engine, advice, Goals.one(engine.protocol(), "vigour=weak"), 1);
    assertThat(change.sets())
        .flatExtracting(ChangeSet::moves)
        .filteredOn(move -> move.before().field().name().equals("seed depth"))
        .extracting(Move::to)
        .containsExactly(Value.of(10));
  }

  private static Margin margin(String deepLine, int depth, int seeds) {
    Engine engine =
        Engine.of(
            SeedlingProtocol.changed(
                text ->
                    text.replace("number | 1 | [1..500]", "number | 1 | -")
                        .replace("deep line | 30 |", "deep line | " + deepLine + " |")));
    Map<String, Object> findings =
        new HashMap<>(Map.of("soil", "loam", "watered", true, "seed depth", depth));
    findings.put("seeds sown", seeds);
    List<Margin> margins =
        Margins.of(engine, engine.evaluate(Case.of(findings))).margins().stream()
            .filter(one -> one.datum().field().name().equals("seeds sown"))
            .toList();
    assertThat(margins).hasSize(1);
    return margins.get(0);
  }
}
