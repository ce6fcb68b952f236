package org.cotyla.cli;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
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
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

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

  private static final int NARROWEST = 40;
  private static final int WIDEST = 1000;

  private final Terminal terminal;

  @Spec private @Nullable CommandSpec spec;

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

  @Option(
      names = {"-h", "--help"},
      usageHelp = true,
      description = "Show this help and stop.")
  private boolean help;

  @Option(
      names = "--protocol",
      paramLabel = "FILE",
      description = "The workbook; the house protocol when absent.")
  private @Nullable Path protocol;

  @Option(
      names = "--format",
      paramLabel = "FORMAT",
      description = "text or json; json is whole. Usually text.")
  private Format format = Format.TEXT;

  @Option(
      names = "--width",
      paramLabel = "N",
      description = "The width of the text in characters. Usually 80.")
  private int width = 80;

  @Option(
      names = {"--color", "--colour"},
      paramLabel = "WHEN",
      description = "auto, always or never. Usually auto: on a terminal, unless NO_COLOR is set.")
  private ColourMode colour = ColourMode.AUTO;

  /** How the answer is written. */
  enum Format {
    TEXT,
    JSON;

    @Override
    public String toString() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  ReplanCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    if (spec != null && (width < NARROWEST || width > WIDEST)) {
      throw new ParameterException(
          spec.commandLine(),
          "--width is a number from " + NARROWEST + " to " + WIDEST + ", not " + width);
    }
    String planName = CaseFile.name(planFile);
    String laterName = CaseFile.name(laterFile);
    RecordedPlan plan = in(planName, () -> CaseFile.readPlan(planFile, terminal.in()));
    Case later = in(laterName, () -> CaseFile.read(laterFile, terminal.in()));
    Engine engine = Engine.of(HouseProtocol.read(protocol, terminal.home()));
    Replan replan = Replan.of(engine, plan.plan().in(planName), later.in(laterName));
    terminal.out().print(format == Format.JSON ? json(replan, plan) : text(replan, plan));
    Comparison comparison = replan.comparison();
    boolean sound = comparison.before().faults().isEmpty() && comparison.after().faults().isEmpty();
    return sound ? Main.DONE : Main.FAULTS;
  }

  private static String json(Replan replan, RecordedPlan plan) {
    return ReplanJson.write(replan, plan.origin());
  }

  private String text(Replan replan, RecordedPlan plan) {
    return new ReplanAnswer(width, colour.style(terminal.takesColour()))
        .write(replan, plan.origin(), LocalDate.now(terminal.clock()));
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
