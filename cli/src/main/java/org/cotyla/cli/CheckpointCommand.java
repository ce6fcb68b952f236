package org.cotyla.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.cotyla.ledger.CheckpointFile;
import org.cotyla.ledger.Entry;
import org.cotyla.ledger.Ledger;
import org.cotyla.ledger.Registry;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Signs the state of a ledger. */
@Command(
    name = "checkpoint",
    description = {
      "Signs the state that a ledger is in, and writes it as a small text to be printed or sent"
          + " elsewhere: with it, nothing up to here can be changed or cut off unseen."
    })
final class CheckpointCommand implements Callable<Integer> {

  private final Terminal terminal;

  @Mixin private LedgerOptions ledger = new LedgerOptions();

  @Mixin private SignerOptions signer = new SignerOptions();

  @Option(
      names = {"-o", "--output"},
      paramLabel = "FILE",
      description = "Write to this file; standard output when absent.")
  private @Nullable Path output;

  CheckpointCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    if (output != null) {
      OutputFile.requireFree(output);
    }
    try (Ledger open = ledger.open(terminal)) {
      Entry entry = new Registry(open).checkpoint(signer.signer());
      String text = CheckpointFile.of(entry, open.governance()).write();
      if (output == null) {
        terminal.out().print(text);
      } else {
        write(output, text);
      }
      return Main.DONE;
    }
  }

  /** The entry stands by now, so the text is never lost: it can be kept from the terminal. */
  private void write(Path file, String text) {
    try {
      OutputFile.write(file, text);
    } catch (FileProblem unwritable) {
      terminal.out().print(text);
      throw unwritable;
    }
  }
}
