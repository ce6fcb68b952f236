package org.cotyla.compare;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import org.cotyla.evaluate.Recommendation;
import org.cotyla.finding.Datum;
import org.cotyla.finding.Datum.Knowledge;
import org.cotyla.finding.Findings;
import org.cotyla.finite.Answer;
import org.cotyla.finite.Representative;
import org.cotyla.name.Names;
import org.cotyla.protocol.Field;
import org.cotyla.value.Interval;
import org.cotyla.value.PossibleValues;
import org.cotyla.value.Value;
import org.cotyla.value.ValueSet;
import org.cotyla.value.ValueType;

/**
 * Complete cases around those in which a decision is known to differ: what is known stays, the rest
 * is drawn. Most of what follows from a difference shows in some of them, which spares a search.
 * The same differences always give the same cases.
 */
final class Samples {

  private static final int EACH = 4;
  private static final int MOST_SEEDS = 12;

  private final Side old;
  private final Side young;
  private final List<Answer.Found> seeds = new ArrayList<>();
  private final List<Answer.Found> found = new ArrayList<>();
  private final List<Answer.Found> asTheyAre = new ArrayList<>();
  private final List<Answer.Found> drawn = new ArrayList<>();

  Samples(Side old, Side young) {
    this.old = old;
    this.young = young;
  }

  /** Adds a case in which something differs, as it is. */
  void addAsItIs(Answer.Found known) {
    asTheyAre.add(known);
  }

  /** Adds a case in which something differs, around which others are drawn. */
  void add(Answer.Found seed) {
    found.add(seed);
    if (seeds.size() < MOST_SEEDS) {
      seeds.add(seed);
    }
  }

  /** The cases in which something was found to differ, as they were found. */
  List<Answer.Found> found() {
    return List.copyOf(found);
  }

  /** The cases with the answers of both protocols. */
  List<Answer.Found> cases() {
    int from = drawn.size() / EACH;
    for (int i = from; i < seeds.size(); i++) {
      for (int j = 0; j < EACH; j++) {
        drawn.add(draw(seeds.get(i), new SplittableRandom(i * 1000L + j), j));
      }
    }
    List<Answer.Found> all = new ArrayList<>(asTheyAre);
    all.addAll(drawn);
    return all;
  }

  private Answer.Found draw(Answer.Found seed, SplittableRandom random, int number) {
    List<Recommendation> answers = new ArrayList<>();
    List<String> stages = young.protocol().about().stages();
    Findings known = seed.findings();
    int stage = stages.indexOf(known.stage());
    // Every second case is taken as late as can be, where most is known.
    int at = number % 2 == 0 ? stage : stages.size() - 1;
    long start = random.nextLong();
    Map<String, PossibleValues> stated = new HashMap<>();
    for (Datum datum : known.data()) {
      if (datum.value().single().isPresent()) {
        stated.put(Names.key(datum.field().name()), datum.value());
      }
    }
    for (Side side : List.of(old, young)) {
      List<Datum> data = new ArrayList<>();
      for (Field field : side.protocol().givenFields()) {
        SplittableRandom own =
            new SplittableRandom(start ^ Names.key(field.name()).hashCode() * 0x9E3779B97F4A7C15L);
        data.add(datum(field, at, stated, side, own));
      }
      answers.add(side.engine().decide(new Findings("", stages.get(at), data, List.of())));
    }
    return new Answer.Found(answers.get(0).findings(), answers);
  }

  private static Datum datum(
      Field field,
      int stage,
      Map<String, PossibleValues> known,
      Side side,
      SplittableRandom random) {
    ValueType type = field.symbol().type();
    if (field.stage() > stage) {
      return new Datum(field, Knowledge.NOT_YET, PossibleValues.nothing(type));
    }
    Optional<PossibleValues> stated =
        Optional.ofNullable(known.get(Names.key(field.name())))
            .filter(value -> value.type() == type)
            .filter(value -> field.allowed().containsAll(value.values()));
    ValueSet all = side.all(field.symbol()).values();
    PossibleValues value = stated.orElseGet(() -> PossibleValues.of(draw(all, random)));
    return new Datum(field, Knowledge.RECORDED, value);
  }

  private static Value draw(ValueSet all, SplittableRandom random) {
    return likely(all, random)
        .filter(all::contains)
        .orElseGet(() -> Representative.sample(all, random));
  }

  /** A value as cases commonly have it; it may lie outside the set. */
  private static Optional<Value> likely(ValueSet all, SplittableRandom random) {
    if (all.isFinite()) {
      List<Value> values = all.values();
      return Optional.of(values.get(random.nextInt(values.size())));
    }
    Interval part = all.parts().get(random.nextInt(all.parts().size()));
    if (part.low() instanceof Value.NumberValue low
        && part.high() instanceof Value.NumberValue high) {
      // Low values are the common ones: the square keeps them so.
      double where = random.nextDouble();
      double number =
          low.number().doubleValue()
              + where * where * high.number().subtract(low.number()).doubleValue();
      return Optional.of(Value.of(BigDecimal.valueOf(number).setScale(0, RoundingMode.HALF_UP)));
    }
    return switch (all.type()) {
      case NUMBER -> Optional.of(Value.of(random.nextInt(100)));
      case DATE -> Optional.of(Value.of(LocalDate.of(2026, 1, 1).plusDays(random.nextInt(366))));
      case TEXT -> Optional.of(Value.of("other"));
      case YES_NO -> Optional.empty();
    };
  }
}
