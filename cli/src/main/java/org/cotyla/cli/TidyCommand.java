package org.cotyla.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Arrays;
import java.util.concurrent.Callable;
import org.cotyla.authoring.TidyWorkbook;
import org.cotyla.expression.FormulaLibrary;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Puts a workbook in order without touching what it says. */
@Command(
    name = "tidy",
    description = {
      "Puts a workbook in order: the lists of words that cells offer, widths, headings, frozen panes"
          + " and wrapped sentences. What it says stays the same, which is checked before the file is"
          + " replaced; comments, other sheets and people's columns are kept."
    },
    footer = {
      "",
      "Without --output the workbook itself is replaced, and what was there is kept beside it with"
          + " .bak at the end of its name. A workbook with errors is refused: see cotyla check."
    })
final class TidyCommand implements Callable<Integer> {

  private final Terminal terminal;

  @Option(
      names = {"-h", "--help"},
      usageHelp = true,
      description = "Show this help and stop.")
  private boolean help;

  @Parameters(paramLabel = "WORKBOOK", description = "The workbook.")
  private Path workbook = Path.of("");

  @Option(
      names = {"-o", "--output"},
      paramLabel = "FILE",
      description = "Write to this file, which must not be there yet.")
  private @Nullable Path output;

  TidyCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    byte[] before = WorkbookFile.read(workbook);
    String name = String.valueOf(workbook.getFileName());
    byte[] after = TidyWorkbook.of(name, before, FormulaLibrary.installed());
    if (output != null) {
      OutputFile.write(output, after);
    } else if (Arrays.equals(before, after)) {
      terminal.out().print(name + " is in order; nothing was written\n");
    } else {
      Path kept = replace(after);
      terminal.out().print(name + " is in order; what was there is kept as " + kept + "\n");
    }
    return Main.DONE;
  }

  private Path replace(byte[] after) {
    Path folder = workbook.toAbsolutePath().getParent();
    Path open = workbook.resolveSibling(".~lock." + workbook.getFileName() + "#");
    if (folder != null && Files.exists(open)) {
      throw FileProblem.isOpen(workbook);
    }
    try {
      Path kept = free();
      Files.copy(workbook, kept, StandardCopyOption.COPY_ATTRIBUTES);
      OutputFile.replace(workbook, after);
      return kept;
    } catch (IOException unwritable) {
      throw FileProblem.writing(workbook, unwritable);
    }
  }

  /** A name for what was there, which no other file has. */
  private Path free() {
    Path kept = workbook.resolveSibling(workbook.getFileName() + ".bak");
    for (int i = 2; Files.exists(kept); i++) {
      kept = workbook.resolveSibling(workbook.getFileName() + ".bak-" + i);
    }
    return kept;
  }
}
