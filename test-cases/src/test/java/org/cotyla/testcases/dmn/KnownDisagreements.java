package org.cotyla.testcases.dmn;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.cotyla.evaluate.DecisionResult;
import org.cotyla.evaluate.Firing;
import org.cotyla.evaluate.Recommendation;
import org.cotyla.protocol.HitPolicy;
import org.cotyla.value.PossibleValues;

/**
 * Where Drools' DMN engine 10.1.0 is known to part from the standard or from what the standard
 * leaves open. Random protocols meet all of these; the house protocol meets none.
 */
enum KnownDisagreements {
  /** Drools counts different results where C# counts rows (DMN 1.2 and later, clause 8.2.8). */
  COUNTS_DIFFERENT_RESULTS {
    @Override
    boolean touches(DecisionResult result) {
      List<Firing> counting = result.counting();
      Set<List<PossibleValues>> different = new HashSet<>();
      counting.forEach(firing -> different.add(firing.results()));
      boolean oneColumn =
          java.util.stream.IntStream.range(0, result.table().outputs().size())
              .anyMatch(
                  i ->
                      counting.stream().map(f -> f.results().get(i)).distinct().count()
                          < counting.size());
      return result.table().hitPolicy() == HitPolicy.COUNT
          && (different.size() < counting.size() || oneColumn);
    }
  },

  /** Drools stops where a result that is summed, counted or compared is nothing. */
  STOPS_AT_NOTHING_IN_AN_AGGREGATE {
    @Override
    boolean touches(DecisionResult result) {
      return result.table().hitPolicy().isAggregate() && hasNothing(result);
    }
  },

  /** The standard gives nothing no priority; here it comes last, in Drools where it stands. */
  ORDERS_NOTHING_OTHERWISE {
    @Override
    boolean touches(DecisionResult result) {
      return result.table().hitPolicy().needsPriorities() && hasNothing(result);
    }
  };

  abstract boolean touches(DecisionResult result);

  private static boolean hasNothing(DecisionResult result) {
    return result.firings().stream()
        .flatMap(firing -> firing.results().stream())
        .anyMatch(PossibleValues::isNothing);
  }

  /** Whether any decision of the advice is touched, so that it and what follows may differ. */
  boolean touches(Recommendation advice) {
    return advice.decisions().stream().anyMatch(this::touches);
  }

  static boolean any(Recommendation advice) {
    return List.of(values()).stream().anyMatch(known -> known.touches(advice));
  }
}
