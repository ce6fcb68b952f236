package org.cotyla.cli;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.cotyla.cli.text.LedgerStanding;
import org.cotyla.cli.text.TextAnswer;
import org.cotyla.evaluate.Engine;
import org.cotyla.evaluate.MissingDatum;
import org.cotyla.evaluate.Recommendation;
import org.cotyla.explore.WhatMatters;
import org.cotyla.finding.Case;
import org.cotyla.json.RecommendationJson;
import org.cotyla.ledger.Ledger;
import org.cotyla.ledger.Recorder;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Runs a protocol on one case. */
@Command(
    name = "recommend",
    description = {
      "Runs the protocol on one case and says what it recommends, why, what is ruled out, what is"
          + " missing and whether that matters."
    },
    footer = {
      "",
      "Marks: + speaks for, - speaks against, x ruled out, ? open, ! warning. For an empty case"
          + " file: cotyla blank-case",
      "Exit code 1 also when the protocol contradicts itself on the case; the answer then says"
          + " where."
    })
final class RecommendCommand implements Callable<Integer> {

  private final Terminal terminal;

  @Parameters(
      paramLabel = "CASE",
      description = "The case, as JSON or as a form filled in; - reads standard input.")
  private Path caseFile = Path.of("-");

  @Mixin private CommonOptions common = new CommonOptions();

  @Mixin private AnswerOptions answer = new AnswerOptions();

  @Mixin private RecordingOptions recording = new RecordingOptions();

  @Option(
      names = "--trace",
      description = "Add every row that fired, with the values that met its tests.")
  private boolean trace;

  RecommendCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    Case given = CaseFile.read(caseFile, terminal.in());
    if (recording.isAsked()) {
      return recorded(given);
    }
    Engine engine = Engine.of(common.readProtocol(terminal.home()));
    Recommendation advice = engine.evaluate(given);
    return answer(advice, matters(engine, advice), Optional.empty());
  }

  private int recorded(Case given) {
    try (Ledger ledger = recording.open(terminal)) {
      Recorder recorder = new Recorder(ledger, common.readProtocolFile(terminal.home()));
      LocalDate today = LocalDate.now(terminal.clock());
      Recorder.Recorded recorded = recorder.recommend(recording.reference(), given, today);
      return answer(
          recorded.recommendation(),
          Optional.empty(),
          Optional.of(RecordingOptions.standing(ledger, recorded, today)));
    }
  }

  /** Looked for only where it is soon found, and where something may matter at all. */
  private Optional<WhatMatters> matters(Engine engine, Recommendation advice) {
    boolean asked = !answer.asJson() && advice.missing().stream().anyMatch(MissingDatum::mayMatter);
    return asked && WhatMatters.isQuick(advice)
        ? Optional.of(WhatMatters.of(engine, advice))
        : Optional.empty();
  }

  private int answer(
      Recommendation advice, Optional<WhatMatters> matters, Optional<LedgerStanding> standing) {
    LocalDate today = LocalDate.now(terminal.clock());
    if (answer.asJson()) {
      terminal.out().print(RecommendationJson.write(advice));
      RecordingOptions.besideJson(terminal, advice.protocol().about(), today, standing);
    } else {
      terminal
          .out()
          .print(
              new TextAnswer(answer.width(), answer.style(terminal), standing)
                  .write(advice, matters, today, trace));
    }
    return advice.faults().isEmpty() ? Main.DONE : Main.FAULTS;
  }
}
