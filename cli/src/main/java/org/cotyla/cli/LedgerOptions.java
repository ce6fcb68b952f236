package org.cotyla.cli;

import org.cotyla.ledger.Ledger;
import org.cotyla.ledger.LedgerAddress;
import picocli.CommandLine.Option;

/** The ledger that a command works on. */
final class LedgerOptions {

  @Option(
      names = {"-h", "--help"},
      usageHelp = true,
      description = "Show this help and stop.")
  private boolean help;

  @Option(
      names = "--ledger",
      required = true,
      paramLabel = "LEDGER",
      description = "The ledger: a file, or jdbc:postgresql://HOST/DATABASE.")
  private String ledger = "";

  LedgerAddress address() {
    return LedgerAddress.of(ledger);
  }

  Ledger open(Terminal terminal) {
    return Ledger.open(address(), terminal.clock());
  }
}
