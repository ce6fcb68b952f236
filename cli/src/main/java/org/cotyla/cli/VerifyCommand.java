package org.cotyla.cli;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.cotyla.cli.text.VerificationText;
import org.cotyla.expression.FormulaLibrary;
import org.cotyla.ledger.CheckpointFile;
import org.cotyla.ledger.Ledger;
import org.cotyla.ledger.Verification;
import org.cotyla.ledger.VerificationJson;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Proves that a ledger is what was written. */
@Command(
    name = "verify",
    description = {
      "Walks a ledger from its first entry: the chain of digests, the signatures, and every"
          + " recommendation by running it again with the workbook and findings of its day."
    },
    footer = {"", "Exit code 1 when anything does not hold."})
final class VerifyCommand implements Callable<Integer> {

  private final Terminal terminal;

  @Mixin private LedgerOptions ledger = new LedgerOptions();

  @Option(
      names = "--checkpoint",
      paramLabel = "FILE",
      description = "A checkpoint that was kept elsewhere; without one, a missing end cannot show.")
  private @Nullable Path checkpoint;

  @Option(
      names = "--chain-only",
      description = "Run no recommendation again: far quicker, and proves less.")
  private boolean chainOnly;

  @Mixin private AnswerOptions answer = new AnswerOptions();

  VerifyCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    Optional<CheckpointFile> kept =
        Optional.ofNullable(checkpoint).map(file -> CheckpointFile.read(KeyFile.read(file)));
    try (Ledger open = ledger.open(terminal)) {
      Verification verification =
          Verification.of(open, FormulaLibrary.installed(), kept, !chainOnly);
      terminal
          .out()
          .print(
              answer.asJson()
                  ? VerificationJson.write(verification, kept.isPresent())
                  : new VerificationText(answer.width(), answer.style(terminal))
                      .write(verification, kept.isPresent()));
      return verification.holds() ? Main.DONE : Main.FAULTS;
    }
  }
}
