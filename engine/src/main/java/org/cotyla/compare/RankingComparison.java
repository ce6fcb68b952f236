package org.cotyla.compare;

import java.util.List;
import java.util.Optional;
import org.cotyla.finite.Answer;

/**
 * One ranking in two protocols.
 *
 * @param name the ranking's name, as the new protocol has it
 * @param verdict whether points, rule-outs and the first place are the same
 * @param first whether the option that comes first is the same
 * @param changes which option comes first instead of which, one example each
 * @param more whether there are more such changes than are listed
 * @param note what else must be said
 */
public record RankingComparison(
    String name,
    Verdict verdict,
    Verdict first,
    List<FirstChange> changes,
    boolean more,
    Optional<String> note) {

  /**
   * Another option comes first.
   *
   * @param was the option in the old protocol; nothing when all are ruled out
   * @param now the option in the new protocol
   * @param example a case in which it does
   */
  public record FirstChange(String was, String now, Answer.Found example) {}

  public RankingComparison {
    changes = List.copyOf(changes);
  }
}
