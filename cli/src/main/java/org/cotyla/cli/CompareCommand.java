package org.cotyla.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.cotyla.cli.text.ComparisonAnswer;
import org.cotyla.compare.Impact;
import org.cotyla.compare.ImpactRun;
import org.cotyla.compare.ProtocolComparison;
import org.cotyla.compare.ProtocolComparison.Meaning;
import org.cotyla.evaluate.Engine;
import org.cotyla.finite.Effort;
import org.cotyla.json.ComparisonJson;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Says what differs in meaning between two versions of a protocol. */
@Command(
    name = "compare",
    description = {
      "Says what differs in meaning between two versions of a protocol: the findings in which a"
          + " decision gives something else, what follows from that, and which past cases change."
    },
    footer = {
      "",
      "Reordering, restyling, or splitting a row into two that say the same is no difference. 'The"
          + " same in meaning' is only said when it is proven over every case that both protocols"
          + " take.",
      "A CSV library has the names of fields as headings; the columns `stage` and `case` are"
          + " optional.",
      "Exit code 0 whether or not they differ; with --fail-on-difference 1 unless they are proven"
          + " the same."
    })
final class CompareCommand implements Callable<Integer> {

  private final Terminal terminal;

  @Parameters(index = "0", paramLabel = "OLD", description = "The workbook as it was.")
  private Path oldFile = Path.of("");

  @Parameters(index = "1", paramLabel = "NEW", description = "The workbook as it is now.")
  private Path newFile = Path.of("");

  @Option(
      names = {"-h", "--help"},
      usageHelp = true,
      description = "Show this help and stop.")
  private boolean help;

  @Option(
      names = "--library",
      paramLabel = "DIR|CSV",
      description =
          "Past cases: a folder of case files or a table as CSV; the cases that ship when absent.")
  private @Nullable Path library;

  @Option(
      names = "--fail-on-difference",
      description = "Exit code 1 unless the two are proven the same in meaning.")
  private boolean failOnDifference;

  @Mixin private AnswerOptions answer = new AnswerOptions();

  CompareCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() throws IOException {
    Engine before = Engine.of(HouseProtocol.read(oldFile, Optional.empty()));
    Engine after = Engine.of(HouseProtocol.read(newFile, Optional.empty()));
    try (PastCases cases = PastCases.open(library, terminal, before.protocol(), after.protocol());
        Beside<Optional<ImpactRun>> past =
            Beside.start("past cases", () -> cases.run(before, after, terminal))) {
      ProtocolComparison comparison =
          ProtocolComparison.of(
              before,
              after,
              Effort.usual(),
              () -> past.result().map(ImpactRun::examples).orElse(List.of()));
      Optional<Impact> impact = past.result().map(ImpactRun::impact);
      terminal
          .out()
          .print(
              answer.asJson()
                  ? ComparisonJson.write(comparison, impact)
                  : new ComparisonAnswer(answer.width(), answer.style(terminal))
                      .write(comparison, impact, cases.name(), cases.remarks()));
      return exitCode(comparison);
    }
  }

  private int exitCode(ProtocolComparison comparison) {
    boolean differs = comparison.meaning() != Meaning.SAME;
    return failOnDifference && differs ? Main.FAULTS : Main.DONE;
  }
}
