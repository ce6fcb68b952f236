package org.cotyla.cli;

import java.time.LocalDate;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.cotyla.ledger.Entry;
import org.cotyla.ledger.Ledger;
import org.cotyla.ledger.Registry;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Takes a released protocol out of force. */
@Command(
    name = "withdraw",
    description = {
      "Takes a released protocol out of force at once. One role is enough; what it replaced does not"
          + " come back by itself."
    })
final class WithdrawCommand implements Callable<Integer> {

  private final Terminal terminal;

  @Parameters(paramLabel = "IDENTIFIER", description = "The protocol's identifier.")
  private String identifier = "";

  @Option(
      names = "--protocol-version",
      paramLabel = "VERSION",
      description = "Its version; the one released last when absent.")
  private @Nullable String version;

  @Option(
      names = "--because",
      required = true,
      paramLabel = "TEXT",
      description = "Why, in a sentence that names nobody.")
  private String because = "";

  @Mixin private LedgerOptions ledger = new LedgerOptions();

  @Mixin private SignerOptions signer = new SignerOptions();

  WithdrawCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    try (Ledger open = ledger.open(terminal)) {
      Entry entry =
          new Registry(open)
              .withdraw(
                  identifier,
                  Optional.ofNullable(version),
                  LocalDate.now(terminal.clock()),
                  because,
                  signer.signer());
      terminal.out().print("Withdrawn by entry " + entry.sequence() + ".\n");
      return Main.DONE;
    }
  }
}
