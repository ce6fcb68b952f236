package org.cotyla.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Locale;
import java.util.concurrent.Callable;
import org.cotyla.cli.report.HtmlReport;
import org.cotyla.cli.report.PdfReport;
import org.cotyla.evaluate.Engine;
import org.cotyla.evaluate.Recommendation;
import org.cotyla.finding.Case;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Writes the answer to one case as a page to look at. */
@Command(
    name = "report",
    description = {
      "Runs the protocol on one case and writes the answer as a page with pictures: what is advised"
          + " and why on its first part, then every row, source and open finding."
    },
    footer = {
      "",
      "The page is one file that loads nothing and runs nothing, and prints on A4. It names no"
          + " patient unless the case's title does.",
      "Exit code 1 also when the protocol contradicts itself on the case; the page then says where."
    })
final class ReportCommand implements Callable<Integer> {

  private final Terminal terminal;

  @Spec private CommandSpec spec = CommandSpec.create();

  @Parameters(
      paramLabel = "CASE",
      description = "The case, as JSON or as a form filled in; - reads standard input.")
  private Path caseFile = Path.of("-");

  @Mixin private CommonOptions common = new CommonOptions();

  @Option(
      names = {"-o", "--output"},
      paramLabel = "FILE",
      description = "Write to this file; standard output when absent, which takes no PDF.")
  private @Nullable Path output;

  @Option(
      names = "--format",
      paramLabel = "FORMAT",
      description = "html or pdf. Usually by the end of the file's name, else html.")
  private @Nullable Format format;

  /** What is written. */
  enum Format {
    HTML,
    PDF;

    @Override
    public String toString() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  ReportCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() throws IOException {
    boolean asPdf = chosen() == Format.PDF;
    if (asPdf && output == null) {
      throw new ParameterException(
          spec.commandLine(), "--format pdf needs --output FILE: a PDF is no text");
    }
    Case given = CaseFile.read(caseFile, terminal.in());
    Engine engine = Engine.of(common.readProtocol(terminal.home()));
    Recommendation advice = engine.evaluate(given);
    String page = new HtmlReport(engine).write(advice, LocalDate.now(terminal.clock()));
    if (output == null) {
      terminal.out().print(page);
    } else if (asPdf) {
      OutputFile.write(output, PdfReport.of(page));
    } else {
      OutputFile.write(output, page);
    }
    return advice.faults().isEmpty() ? Main.DONE : Main.FAULTS;
  }

  private Format chosen() {
    if (format != null) {
      return format;
    }
    boolean pdf = output != null && output.toString().toLowerCase(Locale.ROOT).endsWith(".pdf");
    return pdf ? Format.PDF : Format.HTML;
  }
}
