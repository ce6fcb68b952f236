package org.cotyla.audit;

import java.io.Serializable;
import java.util.List;
import java.util.stream.Stream;

/**
 * A decision for an option that was ruled out: what an auditor needs to open the case and ask. All
 * words; what is not known is empty.
 *
 * @param place where it is written down, as "entry 12" of a ledger or "row 7" of a file
 * @param day the local day of the decision
 * @param first the option that stood first
 * @param ruledOutBy the ids of the rows that ruled it out
 * @param reason why it departs, a word of the house's list
 * @param because why it departs, in free words
 */
public record AgainstRuleOut(
    String place,
    String reference,
    String day,
    String role,
    String ranking,
    String chosen,
    String first,
    List<String> ruledOutBy,
    String reason,
    String because)
    implements Serializable {

  /** At most so many are listed; the totals count all. */
  public static final int MOST = 500;

  public AgainstRuleOut {
    ruledOutBy = List.copyOf(ruledOutBy);
  }

  /** Those of a decision, one for each ranking in which it chose what was ruled out. */
  public static Stream<AgainstRuleOut> of(JudgedDecision decision) {
    return decision.judgements().stream()
        .filter(judgement -> judgement.verdict() == Verdict.RULED_OUT)
        .map(
            judgement ->
                new AgainstRuleOut(
                    decision.place(),
                    decision.reference(),
                    decision.day().map(Object::toString).orElse(""),
                    decision.role(),
                    judgement.ranking(),
                    judgement.chosen(),
                    judgement.first().orElse(""),
                    judgement.ruledOutBy(),
                    decision.reason().orElse(""),
                    decision.because().orElse("")));
  }
}
