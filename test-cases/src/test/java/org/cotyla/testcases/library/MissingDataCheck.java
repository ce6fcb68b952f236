package org.cotyla.testcases.library;

import java.util.List;
import java.util.Optional;
import org.cotyla.evaluate.MissingDatum;
import org.cotyla.evaluate.Recommendation;

/** Holds what a case leaves out against what is expected to hang on it. */
final class MissingDataCheck {

  private MissingDataCheck() {}

  /** Whether the key was about missing data; differences are added as sentences. */
  static boolean hold(
      Recommendation recommendation, String key, List<String> fields, List<String> differences) {
    switch (key) {
      case "may matter", "cannot matter", "may change first place", "cannot change first place" ->
          fields.forEach(field -> hold(recommendation, key, field, differences));
      default -> {
        return false;
      }
    }
    return true;
  }

  private static void hold(
      Recommendation recommendation, String key, String field, List<String> differences) {
    Optional<MissingDatum> missing =
        recommendation.missing().stream()
            .filter(datum -> datum.datum().field().name().equals(field))
            .findFirst();
    if (missing.isEmpty()) {
      differences.add("`" + field + "` is not missing in this case");
      return;
    }
    MissingDatum datum = missing.get();
    boolean first = !datum.mayChangeFirst().isEmpty();
    boolean asExpected =
        switch (key) {
          case "may matter" -> datum.mayMatter();
          case "cannot matter" -> !datum.mayMatter();
          case "may change first place" -> first;
          default -> !first;
        };
    if (!asExpected) {
      differences.add(
          "`"
              + field
              + "` was expected under `"
              + key
              + "`, but it may change the first place of "
              + datum.mayChangeFirst()
              + " and the decisions "
              + datum.mayChange());
    }
  }
}
