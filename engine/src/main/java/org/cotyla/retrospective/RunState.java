package org.cotyla.retrospective;

import java.util.List;
import java.util.Optional;
import org.cotyla.audit.AgainstRuleOut;
import org.cotyla.audit.AuditTotals;

/**
 * How far a run has come, so that another can go on from there.
 *
 * @param inputs the digest of what the run was started with: mapping and protocols
 * @param counts what became of the rows so far
 * @param rows the digest of the rows so far, as hexadecimal digits
 * @param setAsideBytes the length of the file of rows set aside
 * @param totals what was judged so far, added up
 * @param againstRuleOuts the first decisions for what was ruled out
 * @param draft the same of the other protocol
 */
record RunState(
    String inputs,
    RunCounts counts,
    String rows,
    long setAsideBytes,
    AuditTotals totals,
    List<AgainstRuleOut> againstRuleOuts,
    Optional<Tallied.Draft> draft) {}
