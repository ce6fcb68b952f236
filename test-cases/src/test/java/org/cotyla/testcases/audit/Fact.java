package org.cotyla.testcases.audit;

import java.time.LocalDate;
import java.util.Optional;
import org.cotyla.ledger.Choice;

/** What the generator knows of one decision, without asking the ledger. */
record Fact(
    String reference,
    LocalDate day,
    String role,
    String life,
    String construct,
    Choice.Stood stood,
    Choice.Stood bearing,
    Optional<String> reason,
    Optional<LocalDate> event,
    LocalDate end,
    int missing,
    boolean advised) {}
