package org.cotyla.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.cotyla.ledger.Ledger;
import org.cotyla.ledger.LedgerExport;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Writes a ledger as JSON Lines. */
@Command(
    name = "export",
    description = {
      "Writes a ledger as JSON Lines, one entry a line, for whoever wants to verify it without this"
          + " program."
    },
    footer = {"", "How to verify it with sha256sum, jq and openssl: test-cases/LEDGER.md"})
final class LedgerExportCommand implements Callable<Integer> {

  private final Terminal terminal;

  @Mixin private LedgerOptions ledger = new LedgerOptions();

  @Option(
      names = "--documents",
      description = "Add the kept workbooks and recommendations, each on a line, in base64.")
  private boolean documents;

  @Option(
      names = {"-o", "--output"},
      paramLabel = "FILE",
      description = "Write to this file; standard output when absent.")
  private @Nullable Path output;

  LedgerExportCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    try (Ledger open = ledger.open(terminal)) {
      if (output == null) {
        LedgerExport.write(open, documents, terminal.out());
      } else {
        OutputFile.write(output, out -> LedgerExport.write(open, documents, out));
      }
      return Main.DONE;
    }
  }
}
