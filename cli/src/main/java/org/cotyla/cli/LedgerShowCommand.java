package org.cotyla.cli;

import java.time.LocalDate;
import java.util.concurrent.Callable;
import org.cotyla.cli.text.LedgerText;
import org.cotyla.ledger.Ledger;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** Shows the state of a ledger. */
@Command(
    name = "show",
    description = {
      "Shows the keys that count, and every protocol with where it is in its life today."
    })
final class LedgerShowCommand implements Callable<Integer> {

  private final Terminal terminal;

  @Mixin private LedgerOptions ledger = new LedgerOptions();

  LedgerShowCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    try (Ledger open = ledger.open(terminal)) {
      terminal.out().print(LedgerText.state(open.governance(), LocalDate.now(terminal.clock())));
      return Main.DONE;
    }
  }
}
