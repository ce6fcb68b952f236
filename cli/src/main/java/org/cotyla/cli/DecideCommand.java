package org.cotyla.cli;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.cotyla.cli.text.LedgerText;
import org.cotyla.ledger.DecisionRecorder;
import org.cotyla.ledger.Entry;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Records what was done. */
@Command(
    name = "decide",
    description = {
      "Records what was done in a case, beside the recommendation that was there. Whether it follows"
          + " or departs is worked out."
    })
final class DecideCommand implements Callable<Integer> {

  private final Terminal terminal;

  @Mixin private AboutCaseOptions about = new AboutCaseOptions();

  @Option(
      names = "--choice",
      required = true,
      paramLabel = "RANKING=OPTION",
      converter = NamedValue.Converter.class,
      description =
          "What was chosen, once for each ranking: \"construct=cup-cage\"; `not listed` when it is"
              + " none of the options.")
  private List<NamedValue> choices = List.of();

  @Option(
      names = "--reason",
      paramLabel = "REASON",
      description = "When it departs: a reason of the protocol's list.")
  private @Nullable String reason;

  @Option(
      names = "--because",
      paramLabel = "TEXT",
      description = "Why, in a sentence or two. Name nobody: it can never be taken out again.")
  private @Nullable String because;

  @Option(
      names = "--on",
      paramLabel = "DAY",
      description = "The day on which it was done, as 2027-01-31; today when absent.")
  private @Nullable LocalDate day;

  @Option(
      names = "--recommendation",
      paramLabel = "ENTRY",
      description = "The recommendation, by its entry; the case's last when absent.")
  private @Nullable Long recommendation;

  DecideCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    Entry entry =
        about.write(
            terminal,
            (recorder, today) ->
                recorder.decide(
                    new DecisionRecorder.Done(
                        about.reference(),
                        Optional.ofNullable(recommendation),
                        day == null ? today : day,
                        about.role(),
                        choices.stream()
                            .map(one -> new DecisionRecorder.Chosen(one.name(), one.value()))
                            .toList(),
                        Optional.ofNullable(reason),
                        Optional.ofNullable(because))));
    terminal.out().print(LedgerText.decided(entry));
    return Main.DONE;
  }
}
