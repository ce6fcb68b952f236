package org.cotyla.cli;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Locale;
import java.util.concurrent.Callable;
import org.cotyla.cli.text.TextAnswer;
import org.cotyla.evaluate.Engine;
import org.cotyla.evaluate.Recommendation;
import org.cotyla.finding.Case;
import org.cotyla.json.RecommendationJson;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

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

  private static final int NARROWEST = 40;
  private static final int WIDEST = 1000;

  private final Terminal terminal;

  @Spec private @Nullable CommandSpec spec;

  @Parameters(
      paramLabel = "CASE",
      description = "The case, as JSON or as a form filled in; - reads standard input.")
  private Path caseFile = Path.of("-");

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
      description = "text or json; json is whole, with every row that fired. Usually text.")
  private Format format = Format.TEXT;

  @Option(
      names = "--trace",
      description = "Add every row that fired, with the values that met its tests.")
  private boolean trace;

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

  RecommendCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    if (spec != null && (width < NARROWEST || width > WIDEST)) {
      throw new ParameterException(
          spec.commandLine(),
          "--width is a number from " + NARROWEST + " to " + WIDEST + ", not " + width);
    }
    Case given = CaseFile.read(caseFile, terminal.in());
    Engine engine = Engine.of(HouseProtocol.read(protocol, terminal.home()));
    Recommendation advice = engine.evaluate(given);
    terminal.out().print(format == Format.JSON ? RecommendationJson.write(advice) : text(advice));
    return advice.faults().isEmpty() ? Main.DONE : Main.FAULTS;
  }

  private String text(Recommendation advice) {
    return new TextAnswer(width, colour.style(terminal.takesColour()))
        .write(advice, LocalDate.now(terminal.clock()), trace);
  }
}
