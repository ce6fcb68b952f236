package org.cotyla.cli;

import org.cotyla.identity.EngineVersion;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.IVersionProvider;
import picocli.CommandLine.Option;

/** The command line. Exit codes: 0 done, 1 faults in what was given, 2 wrong usage. */
@Command(
    name = "cotyla",
    versionProvider = Main.Version.class,
    subcommands = {
      RecommendCommand.class,
      ReplanCommand.class,
      BlankCaseCommand.class,
      CheckCommand.class,
      TryCommand.class,
      ShowCommand.class,
      NewProtocolCommand.class,
      TidyCommand.class,
      ReportCommand.class,
      MakeKeyCommand.class,
      LedgerCommand.class,
      ApproveCommand.class,
      WithdrawCommand.class,
      DecideCommand.class,
      RecordOutcomeCommand.class,
      CheckpointCommand.class,
      VerifyCommand.class,
      ExportDmnCommand.class,
      ImportDmnCommand.class,
      WhyCommand.class,
      WhyNotCommand.class,
      WhatIfCommand.class,
      CompareCommand.class,
      WhatMattersCommand.class,
      SmallestChangeCommand.class,
      AuditCommand.class,
      RetrospectCommand.class
    },
    description = {
      "Runs a house protocol, kept as a spreadsheet of decision tables, on a case, and says what"
          + " it recommends and why.",
      "Decision support for licensed clinicians: local protocol and judgement come first; nothing"
          + " here replaces them."
    },
    footer = {
      "",
      "Exit codes: 0 done, 1 faults in what was given, 2 wrong usage.",
      "For a command's own help: cotyla COMMAND --help"
    })
public final class Main {

  static final int DONE = 0;
  static final int FAULTS = 1;
  static final int WRONG_USAGE = 2;

  @Option(
      names = {"-h", "--help"},
      usageHelp = true,
      description = "Show this help and stop.")
  private boolean help;

  @Option(
      names = {"-V", "--version"},
      versionHelp = true,
      description = "Show the version and stop.")
  private boolean version;

  private Main() {}

  /** Runs the command that the arguments name, and ends the process with its exit code. */
  public static void main(String[] arguments) {
    System.exit(run(Terminal.ofProcess(), arguments));
  }

  /** Runs the command that the arguments name, and gives its exit code. */
  static int run(Terminal terminal, String... arguments) {
    Complaints complaints = new Complaints(terminal.err());
    try {
      int code = commandLine(terminal, complaints).execute(arguments);
      return terminal.out().checkError() ? complaints.answerCutOff() : code;
    } catch (StackOverflowError | OutOfMemoryError tooMuch) {
      return complaints.unexpected(tooMuch);
    } finally {
      terminal.out().flush();
      terminal.err().flush();
    }
  }

  private static CommandLine commandLine(Terminal terminal, Complaints complaints) {
    CommandLine line = new CommandLine(new Main(), new CommandFactory(terminal));
    line.setOut(terminal.out());
    line.setErr(terminal.err());
    line.setUsageHelpWidth(80);
    line.setExpandAtFiles(false);
    line.setColorScheme(CommandLine.Help.defaultColorScheme(CommandLine.Help.Ansi.OFF));
    line.setCaseInsensitiveEnumValuesAllowed(true);
    line.setParameterExceptionHandler(
        (wrong, given) ->
            complaints.wrongUsage(String.valueOf(wrong.getMessage()), wrong.getCommandLine()));
    line.setExecutionExceptionHandler((thrown, command, parsed) -> complaints.about(thrown));
    return line;
  }

  /** The engine's version, since all of it is built together. */
  static final class Version implements IVersionProvider {
    @Override
    public String[] getVersion() {
      return new String[] {"cotyla " + EngineVersion.current()};
    }
  }
}
