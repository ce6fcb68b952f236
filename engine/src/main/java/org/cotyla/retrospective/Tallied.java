package org.cotyla.retrospective;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.cotyla.audit.AgainstRuleOut;
import org.cotyla.audit.AuditTotals;

/**
 * What became of some rows: how many were judged, the totals, and the rows set aside.
 *
 * @param rows how many rows were read
 * @param judged how many of them were judged
 * @param setAside the others, with every reason of each
 * @param totals the judged decisions added up
 * @param againstRuleOuts the first decisions for what was ruled out
 * @param draft the same by the other protocol, when one is compared
 */
record Tallied(
    long rows,
    long judged,
    List<SetAside> setAside,
    AuditTotals totals,
    List<AgainstRuleOut> againstRuleOuts,
    Optional<Draft> draft) {

  /** What another protocol made of the same rows. */
  record Draft(AuditTotals totals, DraftChanges changes) {}

  Tallied {
    setAside = new ArrayList<>(setAside);
  }
}
