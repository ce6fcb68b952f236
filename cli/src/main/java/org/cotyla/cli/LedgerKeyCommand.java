package org.cotyla.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.cotyla.ledger.Entry;
import org.cotyla.ledger.Ledger;
import org.cotyla.ledger.PublicKeyOf;
import org.cotyla.ledger.Registry;
import org.cotyla.ledger.SigningKey;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Vouches for a further key. */
@Command(
    name = "add-key",
    description = {"Vouches for a further key. It counts once two roles with keys have."})
final class LedgerKeyCommand implements Callable<Integer> {

  private final Terminal terminal;

  @Mixin private LedgerOptions ledger = new LedgerOptions();

  @Mixin private SignerOptions signer = new SignerOptions();

  @Option(
      names = "--role",
      required = true,
      paramLabel = "ROLE",
      description = "The role that is to sign with the new key.")
  private String role = "";

  @Option(
      names = "--public-key",
      required = true,
      paramLabel = "FILE",
      description = "The file of the new public key.")
  private Path publicKey = Path.of("");

  LedgerKeyCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    PublicKeyOf key = SigningKey.publicKey(role, KeyFile.read(publicKey));
    try (Ledger open = ledger.open(terminal)) {
      Entry entry = new Registry(open).vouch(key, signer.signer());
      boolean counts = open.governance().key(key.name()).isPresent();
      terminal
          .out()
          .print(
              "Vouched for by entry "
                  + entry.sequence()
                  + (counts ? "; the key counts now.\n" : "; one more role must vouch for it.\n"));
      return Main.DONE;
    }
  }
}
