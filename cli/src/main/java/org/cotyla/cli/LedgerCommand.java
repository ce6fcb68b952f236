package org.cotyla.cli;

import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Founds a ledger and looks after it. */
@Command(
    name = "ledger",
    subcommands = {
      LedgerInitCommand.class,
      LedgerShowCommand.class,
      LedgerKeyCommand.class,
      LedgerWithdrawKeyCommand.class,
      LedgerExportCommand.class
    },
    description = {"Founds a ledger, shows its state, adds and withdraws keys, exports it."})
final class LedgerCommand implements Runnable {

  @Spec private CommandSpec spec = CommandSpec.create();

  @Option(
      names = {"-h", "--help"},
      usageHelp = true,
      description = "Show this help and stop.")
  private boolean help;

  @Override
  public void run() {
    throw new ParameterException(
        spec.commandLine(),
        "Missing required subcommand: init, show, add-key, withdraw-key, export");
  }
}
