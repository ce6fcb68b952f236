package org.cotyla.trial;

import java.util.Optional;
import org.cotyla.evaluate.MissingDatum;
import org.cotyla.evaluate.Recommendation;
import org.cotyla.protocol.ExpectWord;

/** Holds what a case leaves out against what should hang on it. */
final class MissingDataCheck {

  private MissingDataCheck() {}

  static Optional<Difference> hold(Recommendation answer, ExpectWord word, String field) {
    Optional<MissingDatum> missing =
        answer.missing().stream()
            .filter(datum -> datum.datum().field().name().equals(field))
            .findFirst();
    if (missing.isEmpty()) {
      return Optional.of(Difference.of(word.word(), field, "it is not missing in this case"));
    }
    MissingDatum datum = missing.get();
    boolean first = !datum.mayChangeFirst().isEmpty();
    boolean asExpected =
        switch (word) {
          case MAY_MATTER -> datum.mayMatter();
          case CANNOT_MATTER -> !datum.mayMatter();
          case MAY_CHANGE_FIRST_PLACE -> first;
          default -> !first;
        };
    return asExpected
        ? Optional.empty()
        : Optional.of(Difference.of(word.word(), field, whatHangs(datum)));
  }

  private static String whatHangs(MissingDatum datum) {
    return datum.mayMatter()
        ? "it may change the first place of "
            + datum.mayChangeFirst()
            + " and the decisions "
            + datum.mayChange()
        : "nothing hangs on it";
  }
}
