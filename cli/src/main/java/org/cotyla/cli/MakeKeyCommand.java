package org.cotyla.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.cotyla.ledger.PublicKeyOf;
import org.cotyla.ledger.SigningKey;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Makes a pair of keys to sign with. */
@Command(
    name = "make-key",
    description = {
      "Makes a pair of Ed25519 keys: FILE holds the private key, which only its owner can read, and"
          + " FILE.pub the public one, which goes to whoever keeps the ledger."
    })
final class MakeKeyCommand implements Callable<Integer> {

  private final Terminal terminal;

  @Option(
      names = {"-h", "--help"},
      usageHelp = true,
      description = "Show this help and stop.")
  private boolean help;

  @Option(
      names = "--role",
      required = true,
      paramLabel = "ROLE",
      description = "The role that will sign with it, never a person's name.")
  private String role = "";

  @Option(
      names = {"-o", "--output"},
      required = true,
      paramLabel = "FILE",
      description = "Write the private key here, and the public key to FILE.pub.")
  private Path output = Path.of("");

  MakeKeyCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    SigningKey key = SigningKey.make();
    PublicKeyOf known = SigningKey.publicKey(role, key.publicPem());
    Path publicFile = output.resolveSibling(output.getFileName() + ".pub");
    if (Files.exists(publicFile)) {
      throw FileProblem.exists(publicFile);
    }
    KeyFile.writePrivate(output, key.privatePem());
    OutputFile.write(publicFile, key.publicPem());
    terminal
        .out()
        .print(
            "Role         %s\nPrivate key  %s\nPublic key   %s\nName\n  %s\nWhoever has the private key signs as this role: keep it where only you are.\n"
                .formatted(role, output, publicFile, known.name()));
    return Main.DONE;
  }
}
