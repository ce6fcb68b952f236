package org.cotyla.cli;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import org.cotyla.cli.text.LedgerStanding;
import org.cotyla.cli.text.ReplanAnswer;
import org.cotyla.evaluate.Engine;
import org.cotyla.explain.Comparison;
import org.cotyla.explain.Replan;
import org.cotyla.finding.Case;
import org.cotyla.issue.Issue;
import org.cotyla.issue.Place;
import org.cotyla.issue.RejectedException;
import org.cotyla.json.RecordedPlan;
import org.cotyla.json.ReplanJson;
import org.cotyla.ledger.Ledger;
import org.cotyla.ledger.Recorder;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Runs a planned case again with what was found later. */
@Command(
    name = "replan",
    description = {
      "Lays what was found at a later stage over a planned case, runs the protocol on both, and"
          + " says what changes since the plan and which rows change it."
    },
    footer = {
      "",
      "A finding that both files state is taken from the second. When that states no stage, it is"
          + " the one after the plan's.",
      "Marks: + new, - gone, x ruled out, ? open, ! warning.",
      "Exit code 1 also when the protocol contradicts itself on either case; the answer then says"
          + " so."
    })
final class ReplanCommand implements Callable<Integer> {

  private final Terminal terminal;

  @Parameters(
      index = "0",
      paramLabel = "PLAN",
      description =
          "The planned case as JSON or as a form filled in, or a recommendation on it as JSON.")
  private Path planFile = Path.of("");

  @Parameters(
      index = "1",
      paramLabel = "THEATRE",
      description = "What was found since, as a case with these findings.")
  private Path laterFile = Path.of("");

  @Mixin private CommonOptions common = new CommonOptions();

  @Mixin private AnswerOptions answer = new AnswerOptions();

  @Mixin private RecordingOptions recording = new RecordingOptions();

  ReplanCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    String planName = CaseFile.name(planFile);
    String laterName = CaseFile.name(laterFile);
    RecordedPlan plan = in(planName, () -> CaseFile.readPlan(planFile, terminal.in()));
    Case later = in(laterName, () -> CaseFile.read(laterFile, terminal.in()));
    Case planned = plan.plan().in(planName);
    Case found = later.in(laterName);
    if (recording.isAsked()) {
      return recorded(plan, planned, found);
    }
    Engine engine = Engine.of(common.readProtocol(terminal.home()));
    return answer(Replan.of(engine, planned, found), plan, Optional.empty());
  }

  private int recorded(RecordedPlan plan, Case planned, Case found) {
    try (Ledger ledger = recording.open(terminal)) {
      Recorder recorder = new Recorder(ledger, common.readProtocolFile(terminal.home()));
      LocalDate today = LocalDate.now(terminal.clock());
      Recorder.RecordedReplan replan =
          recorder.replan(recording.reference(), planned, found, today);
      return answer(
          replan.replan(),
          plan,
          Optional.of(RecordingOptions.standing(ledger, replan.recorded(), today)));
    }
  }

  private int answer(Replan replan, RecordedPlan plan, Optional<LedgerStanding> standing) {
    LocalDate today = LocalDate.now(terminal.clock());
    if (answer.asJson()) {
      terminal.out().print(ReplanJson.write(replan, plan.origin()));
      RecordingOptions.besideJson(
          terminal, replan.comparison().after().protocol().about(), today, standing);
    } else {
      terminal
          .out()
          .print(
              new ReplanAnswer(answer.width(), answer.style(terminal), standing)
                  .write(replan, plan.origin(), today));
    }
    Comparison comparison = replan.comparison();
    boolean sound = comparison.before().faults().isEmpty() && comparison.after().faults().isEmpty();
    return sound ? Main.DONE : Main.FAULTS;
  }

  /** Two files are read, so each fault says in which it is. */
  private static <T> T in(String file, Supplier<T> reading) {
    try {
      return reading.get();
    } catch (RejectedException rejected) {
      List<Issue> placed = rejected.issues().stream().map(issue -> in(file, issue)).toList();
      throw new RejectedException(placed);
    }
  }

  private static Issue in(String file, Issue issue) {
    Place place = issue.place();
    return place instanceof Place.Whole
        ? issue
        : new Issue(
            issue.code(),
            issue.severity(),
            new Place.InFile(file, place),
            issue.message(),
            issue.help());
  }
}
