package org.cotyla.cli;

import java.nio.file.Path;
import java.util.Optional;
import org.cotyla.ledger.ProtocolFile;
import org.cotyla.protocol.Protocol;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** What every command takes: its help, and the protocol that it works with. */
final class CommonOptions {

  @Option(
      names = {"-h", "--help"},
      usageHelp = true,
      description = "Show this help and stop.")
  private boolean help;

  @Option(
      names = "--protocol",
      paramLabel = "FILE",
      description = "The workbook; the house protocol when absent.")
  private @Nullable Path protocol;

  ProtocolFile readProtocolFile(Optional<Path> home) {
    return HouseProtocol.readFile(protocol, home);
  }

  Protocol readProtocol(Optional<Path> home) {
    return HouseProtocol.read(protocol, home);
  }
}
