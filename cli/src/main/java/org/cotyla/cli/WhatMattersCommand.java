package org.cotyla.cli;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.concurrent.Callable;
import org.cotyla.cli.text.WhatMattersAnswer;
import org.cotyla.evaluate.Engine;
import org.cotyla.evaluate.Recommendation;
import org.cotyla.explore.Conditions;
import org.cotyla.explore.Margins;
import org.cotyla.explore.WhatMatters;
import org.cotyla.finding.Case;
import org.cotyla.json.WhatMattersJson;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Says which missing data and which measured numbers the answer hangs on. */
@Command(
    name = "what-matters",
    description = {
      "Says of each datum that is missing whether it can change the answer, and of each number"
          + " how close it stands to a line at which the answer changes."
    },
    footer = {
      "",
      "A datum can change a result when two cases that differ in it alone come to different"
          + " results; where none can, that is proven over all values.",
      "Marks: ! can change a first option or a decision of the first page, ? other or undecided,"
          + " * proven to change nothing that is shown.",
      "With nearly nothing known this can take minutes."
    })
final class WhatMattersCommand implements Callable<Integer> {

  private final Terminal terminal;

  @Parameters(
      paramLabel = "CASE",
      description = "The case, as JSON or as a form filled in; - reads standard input.")
  private Path caseFile = Path.of("-");

  @Mixin private CommonOptions common = new CommonOptions();

  @Mixin private AnswerOptions answer = new AnswerOptions();

  WhatMattersCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    Case given = CaseFile.read(caseFile, terminal.in());
    Engine engine = Engine.of(common.readProtocol(terminal.home()));
    Recommendation advice = engine.evaluate(given);
    WhatMatters matters = WhatMatters.of(engine, advice);
    Conditions conditions = Conditions.of(engine, matters);
    Margins margins = Margins.of(engine, advice);
    terminal
        .out()
        .print(
            answer.asJson()
                ? WhatMattersJson.write(matters, conditions, margins)
                : new WhatMattersAnswer(answer.width(), answer.style(terminal))
                    .write(matters, conditions, margins, LocalDate.now(terminal.clock())));
    return advice.faults().isEmpty() ? Main.DONE : Main.FAULTS;
  }
}
