package org.cotyla.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.cotyla.authoring.NewProtocol;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Writes a workbook to start a protocol from. */
@Command(
    name = "new-protocol",
    description = {
      "Writes a workbook to start a protocol from: every sheet, a note on each heading, lists of the"
          + " words that cells take, and a small invented example that runs."
    },
    footer = {"", "Write your own over the example, then: cotyla check, cotyla try, cotyla tidy."})
final class NewProtocolCommand implements Callable<Integer> {

  @Option(
      names = {"-h", "--help"},
      usageHelp = true,
      description = "Show this help and stop.")
  private boolean help;

  @Option(
      names = {"-o", "--output"},
      paramLabel = "FILE",
      required = true,
      description = "Write to this file, which must not be there yet.")
  private Path output = Path.of("");

  @Override
  public Integer call() {
    OutputFile.write(output, NewProtocol.write());
    return Main.DONE;
  }
}
