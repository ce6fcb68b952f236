package org.cotyla.cli;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.cotyla.cli.text.WhatIfAnswer;
import org.cotyla.evaluate.Engine;
import org.cotyla.explain.Comparison;
import org.cotyla.explain.Supposition;
import org.cotyla.explain.WhatIf;
import org.cotyla.finding.Case;
import org.cotyla.finding.Given;
import org.cotyla.issue.Place;
import org.cotyla.json.WhatIfJson;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Runs a case with some findings supposed otherwise. */
@Command(
    name = "what-if",
    description = {
      "Runs the protocol on a case as it is and with some findings supposed otherwise, and says"
          + " what changes, before and after side by side, and which rows change it."
    },
    footer = {
      "",
      "A change is \"hip centre migration=3.4 cm\", \"rim support=70..80\", \"defect=2A or 2B\", or"
          + " \"field=\" for not known; the unit is the field's own when none stands there.",
      "Marks: + for, - against, x ruled out, ? open, * gone, ! warning.",
      "Exit code 1 also when the protocol contradicts itself on either case; the answer then says"
          + " so."
    })
final class WhatIfCommand implements Callable<Integer> {

  private final Terminal terminal;

  @Spec private CommandSpec spec = CommandSpec.create();

  @Parameters(
      index = "0",
      paramLabel = "CASE",
      description = "The case, as JSON or as a form filled in; - reads standard input.")
  private Path caseFile = Path.of("-");

  @Parameters(
      index = "1..*",
      arity = "1..*",
      paramLabel = "FIELD=VALUE",
      description = "A finding as it is supposed to be.")
  private List<String> changes = List.of();

  @Mixin private CommonOptions common = new CommonOptions();

  @Mixin private AnswerOptions answer = new AnswerOptions();

  WhatIfCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    List<Supposition> suppositions = suppositions();
    Case given = CaseFile.read(caseFile, terminal.in());
    Engine engine = Engine.of(common.readProtocol(terminal.home()));
    WhatIf whatIf = WhatIf.of(engine, given, suppositions);
    terminal.out().print(answer.asJson() ? WhatIfJson.write(whatIf) : text(whatIf));
    Comparison comparison = whatIf.comparison();
    boolean sound = comparison.before().faults().isEmpty() && comparison.after().faults().isEmpty();
    return sound ? Main.DONE : Main.FAULTS;
  }

  private List<Supposition> suppositions() {
    List<Supposition> suppositions = new ArrayList<>();
    List<String> others = new ArrayList<>();
    for (String change : changes) {
      int equals = change.indexOf('=');
      if (equals < 1 || change.substring(0, equals).isBlank()) {
        others.add("`" + change + "`");
      } else {
        suppositions.add(
            supposition(
                change.substring(0, equals).strip(), change.substring(equals + 1).strip(), change));
      }
    }
    if (!others.isEmpty()) {
      throw new ParameterException(
          spec.commandLine(),
          String.join(", ", others)
              + (others.size() == 1 ? " is no change" : " are no changes")
              + ": write \"FIELD=VALUE\" in quotation marks");
    }
    return suppositions;
  }

  private static Supposition supposition(String field, String value, String change) {
    Optional<Given> given =
        value.isEmpty()
            ? Optional.empty()
            : Optional.of(new Given.Written(value, Optional.empty()));
    return new Supposition(field, given, new Place.Whole("change `" + change + "`"));
  }

  private String text(WhatIf whatIf) {
    return new WhatIfAnswer(answer.width(), answer.style(terminal))
        .write(whatIf, LocalDate.now(terminal.clock()));
  }
}
