package org.cotyla.cli;

import java.util.concurrent.Callable;
import org.cotyla.ledger.Entry;
import org.cotyla.ledger.Ledger;
import org.cotyla.ledger.Registry;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Withdraws a key. */
@Command(
    name = "withdraw-key",
    description = {
      "Withdraws the key of a role, at once: after a loss, or when the role passes on."
    })
final class LedgerWithdrawKeyCommand implements Callable<Integer> {

  private final Terminal terminal;

  @Mixin private LedgerOptions ledger = new LedgerOptions();

  @Mixin private SignerOptions signer = new SignerOptions();

  @Option(
      names = "--role",
      required = true,
      paramLabel = "ROLE",
      description = "The role whose key is to count no more.")
  private String role = "";

  @Option(
      names = "--because",
      required = true,
      paramLabel = "TEXT",
      description = "Why, in a sentence that names nobody.")
  private String because = "";

  LedgerWithdrawKeyCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    try (Ledger open = ledger.open(terminal)) {
      Entry entry = new Registry(open).withdrawKey(role, because, signer.signer());
      terminal.out().print("Key withdrawn by entry " + entry.sequence() + ".\n");
      return Main.DONE;
    }
  }
}
