package org.cotyla.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.cotyla.workbook.WorkbookText;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Prints a workbook as text. */
@Command(
    name = "show",
    description = {
      "Prints a workbook as text for version control: a line for each cell, under its row's id or"
          + " name. A draft with faults is shown as well."
    },
    footer = {
      "",
      "To see in git what changed in a workbook: write the line *.xlsx diff=cotyla into the file"
          + " .gitattributes, and once: git config diff.cotyla.textconv \"cotyla show\""
    })
final class ShowCommand implements Callable<Integer> {

  private final Terminal terminal;

  @Option(
      names = {"-h", "--help"},
      usageHelp = true,
      description = "Show this help and stop.")
  private boolean help;

  @Parameters(paramLabel = "WORKBOOK", description = "The workbook.")
  private Path workbook = Path.of("");

  ShowCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    terminal.out().print(WorkbookText.of(workbook, WorkbookFile.read(workbook)));
    return Main.DONE;
  }
}
