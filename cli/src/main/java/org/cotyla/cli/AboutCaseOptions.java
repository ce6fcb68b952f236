package org.cotyla.cli;

import java.time.LocalDate;
import org.cotyla.expression.FormulaLibrary;
import org.cotyla.ledger.DecisionRecorder;
import org.cotyla.ledger.Entry;
import org.cotyla.ledger.Ledger;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** In which ledger something is written down about a case, about which, and by whom. */
final class AboutCaseOptions {

  @Mixin private LedgerOptions ledger = new LedgerOptions();

  @Option(
      names = "--case-reference",
      required = true,
      paramLabel = "REF",
      description = "The local reference of the case.")
  private String reference = "";

  @Option(
      names = "--role",
      required = true,
      paramLabel = "ROLE",
      description = "The role of who decided or reports, never a person's name.")
  private String role = "";

  /** Something to write down. */
  interface Writing {
    Entry by(DecisionRecorder recorder, LocalDate today);
  }

  /** Writes it down in the ledger. */
  Entry write(Terminal terminal, Writing writing) {
    LocalDate today = LocalDate.now(terminal.clock());
    try (Ledger open = ledger.open(terminal)) {
      return writing.by(new DecisionRecorder(open, FormulaLibrary.installed(), today), today);
    }
  }

  String reference() {
    return reference;
  }

  String role() {
    return role;
  }
}
