package org.cotyla.cli;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.concurrent.Callable;
import org.cotyla.cli.text.SmallestChangeAnswer;
import org.cotyla.evaluate.Engine;
import org.cotyla.evaluate.Recommendation;
import org.cotyla.explore.Goal;
import org.cotyla.explore.Goals;
import org.cotyla.explore.SmallestChange;
import org.cotyla.finding.Case;
import org.cotyla.json.SmallestChangeJson;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Says which findings would have to be others for another answer. */
@Command(
    name = "smallest-change",
    description = {
      "Says which findings, as few as possible, would have to be others for an option to come"
          + " first or for a decision to come to a value, or proves that there are none."
    },
    footer = {
      "",
      "Findings of the case may be wrong or may change; missing data may turn out to be anything."
          + " Each way is shown with the least move of each number, and was run."
    })
final class SmallestChangeCommand implements Callable<Integer> {

  private static final int MOST_FINDINGS = 3;

  private final Terminal terminal;

  private int findings = 2;

  @Spec private @Nullable CommandSpec command;

  @Parameters(
      index = "0",
      paramLabel = "CASE",
      description = "The case, as JSON or as a form filled in; - reads standard input.")
  private Path caseFile = Path.of("-");

  @Parameters(
      index = "1",
      paramLabel = "WANTED",
      description = "An option, a value of a decision of the first page, or NAME=VALUE.")
  private String wanted = "";

  @Mixin private CommonOptions common = new CommonOptions();

  @Mixin private AnswerOptions answer = new AnswerOptions();

  SmallestChangeCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Option(
      names = "--findings",
      paramLabel = "N",
      description = "How many findings may differ, from 1 to 3. Usually 2.")
  private void setFindings(int number) {
    if (command != null && (number < 1 || number > MOST_FINDINGS)) {
      throw new ParameterException(
          command.commandLine(),
          "--findings is a number from 1 to " + MOST_FINDINGS + ", not " + number);
    }
    findings = number;
  }

  @Override
  public Integer call() {
    Case given = CaseFile.read(caseFile, terminal.in());
    Engine engine = Engine.of(common.readProtocol(terminal.home()));
    Goal goal = Goals.one(engine.protocol(), wanted);
    Recommendation advice = engine.evaluate(given);
    SmallestChange change = SmallestChange.of(engine, advice, goal, findings);
    terminal
        .out()
        .print(
            answer.asJson()
                ? SmallestChangeJson.write(change)
                : new SmallestChangeAnswer(answer.width(), answer.style(terminal))
                    .write(change, LocalDate.now(terminal.clock())));
    return advice.faults().isEmpty() ? Main.DONE : Main.FAULTS;
  }
}
