package org.cotyla.cli;

import java.time.LocalDate;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.cotyla.ledger.DecisionRecorder;
import org.cotyla.ledger.Entry;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Records what came of a decision. */
@Command(
    name = "record-outcome",
    description = {
      "Records what came of a decision later, in a word of the protocol's list of outcomes."
    })
final class RecordOutcomeCommand implements Callable<Integer> {

  private final Terminal terminal;

  @Mixin private AboutCaseOptions about = new AboutCaseOptions();

  @Option(
      names = "--outcome",
      required = true,
      paramLabel = "OUTCOME",
      description = "What happened, in a word of the protocol's list.")
  private String outcome = "";

  @Option(
      names = "--on",
      required = true,
      paramLabel = "DAY",
      description = "The day of it, as 2027-01-31.")
  private @Nullable LocalDate day;

  @Option(
      names = "--decision",
      paramLabel = "ENTRY",
      description = "The decision, by its entry; the case's last when absent.")
  private @Nullable Long decision;

  RecordOutcomeCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    Entry entry =
        about.write(
            terminal,
            (recorder, today) ->
                recorder.outcome(
                    new DecisionRecorder.CameOf(
                        about.reference(),
                        Optional.ofNullable(decision),
                        day == null ? today : day,
                        outcome,
                        about.role())));
    terminal.out().print("Outcome recorded as entry " + entry.sequence() + ".\n");
    return Main.DONE;
  }
}
