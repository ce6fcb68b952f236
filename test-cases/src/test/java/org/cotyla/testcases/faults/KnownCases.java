package org.cotyla.testcases.faults;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.cotyla.evaluate.Engine;
import org.cotyla.evaluate.Recommendation;
import org.cotyla.finding.Case;
import org.cotyla.finding.Datum;
import org.cotyla.finding.Findings;
import org.cotyla.finite.Answer;
import org.cotyla.finite.Domain;
import org.cotyla.name.NameIndex;
import org.cotyla.protocol.Field;
import org.cotyla.testcases.house.OrdinaryCase;
import org.cotyla.testcases.house.PlausibleCases;

/** Complete cases with the house protocol's answers; most faults show in some of them. */
final class KnownCases {

  private static final int PLAUSIBLE = 250;
  private static final int DRAWN = 150;
  private static final int ENOUGH = 4;

  private final List<Findings> cases = new ArrayList<>();
  private final List<Recommendation> answers = new ArrayList<>();

  KnownCases(Engine engine) {
    Domain domain = Domain.of(engine.protocol());
    for (long seed = 0; seed < PLAUSIBLE; seed++) {
      OrdinaryCase drawn = PlausibleCases.drawn(seed);
      Case given = Case.of(drawn.findings()).atStage(drawn.isInTheatre() ? "theatre" : "planning");
      Findings stated = engine.evaluate(given).findings();
      // What a plausible case leaves open is drawn.
      keep(engine, Domain.of(engine.protocol(), stated).sample(engine.protocol(), by(seed)));
    }
    for (long seed = 0; seed < DRAWN; seed++) {
      keep(engine, domain.sample(engine.protocol(), by(seed)));
    }
  }

  private static SplittableRandom by(long seed) {
    return new SplittableRandom(seed);
  }

  private void keep(Engine engine, Findings complete) {
    cases.add(complete);
    answers.add(engine.evaluate(complete));
  }

  /** Some cases to which the other protocol gives another answer. */
  List<Answer.Found> differing(Engine other) {
    NameIndex<Field> fields = NameIndex.of(other.protocol().givenFields(), Field::name);
    List<Answer.Found> found = new ArrayList<>();
    for (int i = 0; i < cases.size() && found.size() < ENOUGH; i++) {
      Recommendation was = answers.get(i);
      put(cases.get(i), fields)
          .map(other::evaluate)
          .filter(is -> Results.differ(was, is))
          .ifPresent(is -> found.add(new Answer.Found(was.findings(), List.of(was, is))));
    }
    return found;
  }

  /** The case in the other protocol's fields; nothing when that does not take one of its values. */
  private static Optional<Findings> put(Findings known, NameIndex<Field> fields) {
    List<Datum> data = new ArrayList<>();
    for (Datum datum : known.data()) {
      Optional<Field> field = fields.find(datum.field().name());
      if (field.isEmpty() || !field.get().allowed().containsAll(datum.value().values())) {
        return Optional.empty();
      }
      data.add(new Datum(field.get(), datum.knowledge(), datum.value()));
    }
    return Optional.of(new Findings(known.title(), known.stage(), data, List.of()));
  }
}
