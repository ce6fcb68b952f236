package org.cotyla.cli;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.cotyla.cli.text.Printable;
import org.cotyla.dmn.DmnExport;
import org.cotyla.protocol.Protocol;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Writes a protocol as a DMN model. */
@Command(
    name = "export-dmn",
    description = {
      "Writes a protocol as a DMN 1.5 model with a diagram: every decision table, calculation and"
          + " ranking, with the ids, reasons and sources of its rows."
    },
    footer = {
      "",
      "A function that FEEL does not have becomes input data that says what to work out for it."
          + " Decision support for licensed clinicians stands in the model, too: whoever runs it"
          + " elsewhere answers for that."
    })
final class ExportDmnCommand implements Callable<Integer> {

  private static final Path STANDARD_OUTPUT = Path.of("-");

  private final Terminal terminal;

  @Option(
      names = {"-h", "--help"},
      usageHelp = true,
      description = "Show this help and stop.")
  private boolean help;

  @Parameters(
      index = "0",
      arity = "0..1",
      paramLabel = "WORKBOOK",
      description = "The workbook; the house protocol when absent.")
  private @Nullable Path workbook;

  @Option(
      names = {"-o", "--output"},
      required = true,
      paramLabel = "FILE",
      description = "Write to this file; - for standard output.")
  private Path output = STANDARD_OUTPUT;

  ExportDmnCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    Protocol protocol = HouseProtocol.read(workbook, terminal.home());
    DmnExport export = DmnExport.of(protocol);
    if (output.equals(STANDARD_OUTPUT)) {
      terminal.out().print(new String(export.bytes(), StandardCharsets.UTF_8));
      return Main.DONE;
    }
    OutputFile.write(output, export.bytes());
    terminal.out().print(Printable.line(said(protocol, export)) + "\n");
    return Main.DONE;
  }

  private String said(Protocol protocol, DmnExport export) {
    int hosts = export.hostValues().size();
    String written =
        "written: "
            + output.getFileName()
            + ", with "
            + protocol.decisions().size()
            + " decision tables";
    return hosts == 0
        ? written
        : written + "; " + hosts + " inputs are values for the host to work out";
  }
}
