package org.cotyla.cli;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.cotyla.cli.text.LedgerText;
import org.cotyla.expression.FormulaLibrary;
import org.cotyla.ledger.DecisionRecorder;
import org.cotyla.ledger.Entry;
import org.cotyla.ledger.Ledger;
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

  @Mixin private LedgerOptions ledger = new LedgerOptions();

  @Option(
      names = "--case-reference",
      required = true,
      paramLabel = "REF",
      description = "The local reference of the case.")
  private String reference = "";

  @Option(
      names = "--role",
      required = true,
      paramLabel = "ROLE",
      description = "The role of who decided, never a person's name.")
  private String role = "";

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
    LocalDate today = LocalDate.now(terminal.clock());
    try (Ledger open = ledger.open(terminal)) {
      DecisionRecorder recorder = new DecisionRecorder(open, FormulaLibrary.installed(), today);
      Entry entry =
          recorder.decide(
              new DecisionRecorder.Done(
                  reference,
                  Optional.ofNullable(recommendation),
                  day == null ? today : day,
                  role,
                  choices.stream()
                      .map(one -> new DecisionRecorder.Chosen(one.name(), one.value()))
                      .toList(),
                  Optional.ofNullable(reason),
                  Optional.ofNullable(because)));
      terminal.out().print(LedgerText.decided(entry));
      return Main.DONE;
    }
  }
}
