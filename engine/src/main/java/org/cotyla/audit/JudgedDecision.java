package org.cotyla.audit;

import java.time.LocalDate;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * A decision held against what a protocol advised, however both were come by.
 *
 * @param place where it is written down, as "entry 12" of a ledger or "row 7" of a file
 * @param reference the local reference of the case
 * @param day the local day of the decision
 * @param protocolVersion the protocol that advised, by its identifier and version
 * @param standing where the protocol was in its life: in force, draft, superseded, withdrawn, or
 *     not recorded
 * @param role the role of who decided
 * @param judgements one for each ranking; none when nothing had been advised
 * @param groups the value of each decision that the protocol shows in full
 * @param reason why it departs, a word of the house's list and never free text
 * @param because why it departs, in free words; never counted
 * @param missing the data that were missing when it was decided, and whether each might have
 *     changed a first place
 */
public record JudgedDecision(
    String place,
    String reference,
    Optional<LocalDate> day,
    String protocolVersion,
    String standing,
    String role,
    List<Judgement> judgements,
    Map<String, String> groups,
    Optional<String> reason,
    Optional<String> because,
    SortedMap<String, Boolean> missing) {

  /** What stands for something that was not written down. */
  public static final String NOT_RECORDED = "not recorded";

  public JudgedDecision {
    judgements = List.copyOf(judgements);
    groups = Map.copyOf(groups);
    missing = Collections.unmodifiableSortedMap(new TreeMap<>(missing));
  }

  /** The verdict on the whole: the worst of its rankings; nothing when nothing was advised. */
  public Optional<Verdict> whole() {
    for (Verdict verdict :
        List.of(Verdict.RULED_OUT, Verdict.NOT_RANKED, Verdict.ACCEPTABLE, Verdict.FIRST)) {
      if (judgements.stream().anyMatch(judgement -> judgement.verdict() == verdict)) {
        return Optional.of(verdict);
      }
    }
    return Optional.empty();
  }
}
