package org.cotyla.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.cotyla.cli.text.TrialAnswer;
import org.cotyla.evaluate.Engine;
import org.cotyla.json.TrialJson;
import org.cotyla.protocol.Protocol;
import org.cotyla.trial.Trial;
import org.cotyla.trial.TrialReport;
import org.cotyla.trial.TrialRun;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Runs the cases that a lead keeps against a draft of the protocol. */
@Command(
    name = "try",
    description = {
      "Runs the cases on the workbook's sheet Cases, and those of a case library, and says which"
          + " answers are not as they should be, which rows decided them, and which rows no case"
          + " exercises."
    },
    footer = {
      "",
      "A library is a folder of name.json with name.expected.json beside it. Without --library it is"
          + " the folder cases or test-cases/cases beside the workbook; for the house protocol and"
          + " its drafts otherwise the one that ships.",
      "Exit code 1 also when a case fails or is refused."
    })
final class TryCommand implements Callable<Integer> {

  private final Terminal terminal;

  @Option(
      names = {"-h", "--help"},
      usageHelp = true,
      description = "Show this help and stop.")
  private boolean help;

  @Parameters(
      paramLabel = "WORKBOOK",
      arity = "0..1",
      description = "The draft; the house protocol when absent.")
  private @Nullable Path workbook;

  @Option(names = "--library", paramLabel = "DIR", description = "The folder of the case library.")
  private @Nullable Path library;

  @Option(names = "--no-library", description = "Run the sheet Cases only.")
  private boolean noLibrary;

  @Option(
      names = "--junit",
      paramLabel = "FILE",
      description = "Write the outcome as JUnit XML as well.")
  private @Nullable Path junit;

  @Mixin private AnswerOptions answer = new AnswerOptions();

  TryCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    Protocol protocol = HouseProtocol.read(workbook, terminal.home());
    Optional<LibraryFolder> folder = noLibrary ? Optional.empty() : library(protocol);
    TrialRun run = new TrialRun(Engine.of(protocol));
    Trial.ofWorkbook(protocol).forEach(run::add);
    folder.ifPresent(cases -> cases.tryAll(run, protocol));
    TrialReport report = run.report();
    if (junit != null) {
      OutputFile.write(junit, JUnitXml.write(report));
    }
    terminal
        .out()
        .print(
            answer.asJson()
                ? TrialJson.write(report)
                : new TrialAnswer(answer.width(), answer.style(terminal))
                    .write(report, folder.map(cases -> cases.folder().toString())));
    return report.allPassed() ? Main.DONE : Main.FAULTS;
  }

  private Optional<LibraryFolder> library(Protocol protocol) {
    if (library != null) {
      if (!Files.isDirectory(library)) {
        throw FileProblem.noFolder(library);
      }
      return Optional.of(new LibraryFolder(library));
    }
    Optional<LibraryFolder> beside = Optional.ofNullable(workbook).flatMap(LibraryFolder::beside);
    return beside.or(() -> shipped(protocol));
  }

  /** The library that ships knows the house protocol only, and drafts of it. */
  private Optional<LibraryFolder> shipped(Protocol protocol) {
    Optional<Path> folder =
        terminal
            .home()
            .map(home -> home.resolve("test-cases").resolve("cases"))
            .filter(Files::isDirectory);
    boolean isHouse =
        workbook == null
            || (folder.isPresent()
                && HouseProtocol.read(null, terminal.home())
                    .about()
                    .identifier()
                    .equals(protocol.about().identifier()));
    return isHouse ? folder.map(LibraryFolder::new) : Optional.empty();
  }
}
