package org.cotyla.cli;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.cotyla.cli.text.LedgerText;
import org.cotyla.ledger.Ledger;
import org.cotyla.ledger.ProtocolFile;
import org.cotyla.ledger.Registry;
import org.cotyla.protocol.About;
import org.cotyla.protocol.Status;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Approves a protocol for a role. */
@Command(
    name = "approve",
    description = {
      "Signs the protocol of a workbook for a role and keeps the workbook whole in the ledger. Once"
          + " two roles have signed the same protocol for the same day, it is in force from that day."
    })
final class ApproveCommand implements Callable<Integer> {

  private final Terminal terminal;

  @Parameters(paramLabel = "WORKBOOK", description = "The workbook that is approved.")
  private Path workbook = Path.of("");

  @Mixin private LedgerOptions ledger = new LedgerOptions();

  @Mixin private SignerOptions signer = new SignerOptions();

  @Option(
      names = "--effective-from",
      paramLabel = "DAY",
      description =
          "The first day in force, as 2027-01-31; as the workbook or the first approval says when"
              + " absent.")
  private @Nullable LocalDate from;

  ApproveCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    ProtocolFile file = HouseProtocol.readFile(workbook, Optional.empty());
    try (Ledger open = ledger.open(terminal)) {
      Registry.Approving approving =
          new Registry(open).approve(file, Optional.ofNullable(from), signer.signer());
      About about = file.protocol().about();
      String title = about.title() + ", version " + about.version();
      terminal.out().print(LedgerText.approved(title, file.version(), approving));
      if (about.status() != Status.IN_FORCE && approving.release().isPresent()) {
        terminal
            .err()
            .print(
                "warning: the workbook still calls itself "
                    + about.status().word()
                    + "; set its status to `in force` (the digest stays the same)\n");
      }
      return Main.DONE;
    }
  }
}
