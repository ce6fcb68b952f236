package org.cotyla.explore;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import org.cotyla.evaluate.Engine;
import org.cotyla.evaluate.Recommendation;
import org.cotyla.finding.Datum;
import org.cotyla.finite.Representative;
import org.cotyla.protocol.Field;
import org.cotyla.value.Value;
import org.cotyla.value.ValueSet;

/** Pairs of cases drawn by lot that differ in one datum: the same pairs every time. */
final class Trials {

  private final Engine engine;
  private final Recommendation advice;
  private final Field field;
  private final int pairs;

  Trials(Engine engine, Recommendation advice, Field field, int pairs) {
    this.engine = engine;
    this.advice = advice;
    this.field = field;
    this.pairs = pairs;
  }

  /** The first two cases drawn that come to different results in this part. */
  Optional<Reach.Witness> differing(Facet facet) {
    SplittableRandom random = new SplittableRandom(1);
    for (int i = 0; i < pairs; i++) {
      Map<String, ValueSet> filled = filled(random);
      Recommendation one = answer(filled, random);
      Recommendation other = answer(filled, random);
      String oneResult = FacetWords.of(one, facet);
      String otherResult = FacetWords.of(other, facet);
      if (!oneResult.equals(otherResult)) {
        return Optional.of(new Reach.Witness(one, oneResult, other, otherResult));
      }
    }
    return Optional.empty();
  }

  private Map<String, ValueSet> filled(SplittableRandom random) {
    Map<String, ValueSet> filled = new HashMap<>();
    for (Datum datum : advice.findings().data()) {
      ValueSet values = datum.value().values();
      if (!values.isEmpty() && values.single().isEmpty()) {
        filled.put(datum.field().name(), ValueSet.of(Representative.sample(values, random)));
      }
    }
    return filled;
  }

  private Recommendation answer(Map<String, ValueSet> filled, SplittableRandom random) {
    ValueSet values =
        advice.findings().datum(field.name()).map(Datum::value).orElseThrow().values();
    Value drawn = Representative.sample(values, random);
    Map<String, ValueSet> whole = new HashMap<>(filled);
    whole.put(field.name(), ValueSet.of(drawn));
    return engine.evaluate(Changed.with(advice.findings(), whole));
  }
}
