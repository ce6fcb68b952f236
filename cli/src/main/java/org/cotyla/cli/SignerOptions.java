package org.cotyla.cli;

import java.nio.file.Path;
import org.cotyla.ledger.Signer;
import picocli.CommandLine.Option;

/** Who signs, and with which key. */
final class SignerOptions {

  @Option(
      names = "--as",
      required = true,
      paramLabel = "ROLE",
      description = "The role that signs, as the ledger knows it.")
  private String role = "";

  @Option(
      names = "--key",
      required = true,
      paramLabel = "FILE",
      description = "The private key of the role, as `cotyla make-key` wrote it.")
  private Path key = Path.of("");

  Signer signer() {
    return new Signer(role, KeyFile.read(key));
  }
}
