package org.cotyla.cli;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.concurrent.Callable;
import org.cotyla.cli.text.LedgerText;
import org.cotyla.ledger.Ledger;
import org.cotyla.ledger.PublicKeyOf;
import org.cotyla.ledger.SigningKey;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Founds a ledger. */
@Command(
    name = "init",
    description = {
      "Founds a ledger with the public keys of the roles that approve protocols: two at least."
    })
final class LedgerInitCommand implements Callable<Integer> {

  private final Terminal terminal;

  @Mixin private LedgerOptions ledger = new LedgerOptions();

  @Option(
      names = "--approver",
      required = true,
      paramLabel = "ROLE=FILE",
      converter = NamedValue.Converter.class,
      description = "A role and the file of its public key; once for each.")
  private List<NamedValue> approvers = List.of();

  LedgerInitCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    List<PublicKeyOf> keys =
        approvers.stream()
            .map(one -> SigningKey.publicKey(one.name(), KeyFile.read(Path.of(one.value()))))
            .toList();
    try (Ledger founded = Ledger.found(ledger.address(), terminal.clock(), keys)) {
      terminal.out().print(LedgerText.state(founded.governance(), LocalDate.now(terminal.clock())));
      return Main.DONE;
    }
  }
}
