package org.cotyla.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.cotyla.json.BlankCaseJson;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Writes a case file to fill in. */
@Command(
    name = "blank-case",
    description = {
      "Writes a case file to fill in: every field that the protocol asks for, with its unit, its"
          + " allowed values and its meaning."
    },
    footer = {"", "The file is a case as it stands, in which nothing is recorded yet."})
final class BlankCaseCommand implements Callable<Integer> {

  private final Terminal terminal;

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
      names = {"-o", "--output"},
      paramLabel = "FILE",
      description = "Write to this file; standard output when absent.")
  private @Nullable Path output;

  BlankCaseCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    String blank = BlankCaseJson.write(HouseProtocol.read(protocol, terminal.home()));
    if (output == null) {
      terminal.out().print(blank);
    } else {
      OutputFile.write(output, blank);
    }
    return Main.DONE;
  }
}
