package org.cotyla.json;

import java.util.Optional;
import org.cotyla.finding.Case;
import org.cotyla.issue.RejectedException;

/**
 * A plan as it was kept: a case, or a whole recommendation, of which the findings are taken.
 *
 * @param plan the case
 * @param origin what the recommendation was made with, when it is one
 */
public record RecordedPlan(Case plan, Optional<Origin> origin) {

  /** The most bytes that the file of a recommendation may have. */
  public static final int MOST_BYTES = 16 << 20;

  /** The protocol that a recommendation was made with. */
  public record Origin(String identifier, String version, String digest) {}

  /**
   * Reads a case or a recommendation from the bytes of a UTF-8 text.
   *
   * @throws RejectedException listing every fault of the file
   */
  public static RecordedPlan read(byte[] json) {
    return RecommendationReader.isRecommendation(json)
        ? new RecommendationReader(json).read()
        : new RecordedPlan(CaseJson.read(json), Optional.empty());
  }
}
