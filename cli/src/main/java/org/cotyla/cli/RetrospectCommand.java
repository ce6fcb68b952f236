package org.cotyla.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.cotyla.cli.report.RetrospectPage;
import org.cotyla.cli.text.MappingText;
import org.cotyla.cli.text.RetrospectAnswer;
import org.cotyla.evaluate.Engine;
import org.cotyla.json.RetrospectJson;
import org.cotyla.protocol.Protocol;
import org.cotyla.retrospective.CaseRows;
import org.cotyla.retrospective.ColumnMapping;
import org.cotyla.retrospective.MappingFile;
import org.cotyla.retrospective.RetrospectTables;
import org.cotyla.retrospective.RetrospectiveReport;
import org.cotyla.retrospective.RetrospectiveRun;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Holds past cases, with what was done, against a protocol. */
@Command(
    name = "retrospect",
    description = {
      "Runs the protocol on past cases with what was done, a row each, and says how often what was"
          + " done was first, acceptable or ruled out; with --against also what a draft would have"
          + " judged otherwise."
    },
    footer = {
      "",
      "A row that cannot be judged is set aside with its reason, never dropped: read is judged and"
          + " set aside together. Exit code 1 also when a row was set aside.",
      "Only columns that mean something are read; the others are named and ignored. See what each"
          + " is taken for with --show-mapping, and correct it with --write-mapping and --mapping."
    })
final class RetrospectCommand implements Callable<Integer> {

  private final Terminal terminal;

  @Spec private @Nullable CommandSpec command;

  @Parameters(paramLabel = "CASES", description = "The past cases, as CSV or .xlsx.")
  private Path cases = Path.of("");

  @Mixin private CommonOptions common = new CommonOptions();

  @Option(
      names = "--against",
      paramLabel = "DRAFT",
      description = "Judge by this workbook as well, and count what it judges otherwise.")
  private @Nullable Path against;

  @Option(
      names = "--mapping",
      paramLabel = "FILE",
      description = "What columns mean, where the guess is wrong.")
  private @Nullable Path mappingFile;

  @Option(names = "--show-mapping", description = "Say what each column is taken for, and stop.")
  private boolean showMapping;

  @Option(
      names = "--write-mapping",
      paramLabel = "FILE",
      description = "Write what each column is taken for, to be corrected, and stop.")
  private @Nullable Path writeMapping;

  @Option(
      names = "--set-aside",
      paramLabel = "FILE",
      description = "Where rows set aside go; beside the cases as NAME.set-aside.csv when absent.")
  private @Nullable Path setAside;

  @Option(
      names = "--state",
      paramLabel = "FILE",
      description = "Keep here how far the run has come, so that it can go on after a stop.")
  private @Nullable Path state;

  @Option(names = "--resume", description = "Go on from the state, if there is one yet.")
  private boolean resume;

  @Option(
      names = "--state-every",
      paramLabel = "N",
      description = "Keep the state after so many rows. Usually 10000.")
  private long every = 10_000;

  @Mixin private FiguresOptions figures = new FiguresOptions();

  RetrospectCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    if (command != null && resume && state == null) {
      throw new ParameterException(command.commandLine(), "--resume needs --state");
    }
    if (command != null && every < 1) {
      throw new ParameterException(command.commandLine(), "--state-every is a number from 1 on");
    }
    if (!showMapping && writeMapping == null) {
      figures.check();
    }
    Protocol protocol = common.readProtocol(terminal.home());
    Optional<Protocol> draft =
        Optional.ofNullable(against).map(file -> HouseProtocol.read(file, terminal.home()));
    if (Files.isDirectory(cases)) {
      throw FileProblem.isFolder(cases);
    }
    try (CaseRows rows = CaseRows.open(cases)) {
      ColumnMapping mapping = mapping(rows, protocol);
      if (showMapping) {
        terminal
            .out()
            .print(new MappingText(figures.width(), figures.style(terminal)).write(mapping));
        return Main.DONE;
      }
      if (writeMapping != null) {
        OutputFile.write(writeMapping, MappingFile.write(mapping));
        return Main.DONE;
      }
      mapping.checked(String.valueOf(cases.getFileName()));
      return answer(run(rows, mapping, protocol, draft));
    } catch (IOException unreadable) {
      throw FileProblem.reading(cases, unreadable);
    }
  }

  private ColumnMapping mapping(CaseRows rows, Protocol protocol) throws IOException {
    if (mappingFile == null) {
      return ColumnMapping.guess(rows.headings(), protocol);
    }
    try (var in = Files.newInputStream(mappingFile)) {
      byte[] bytes = in.readNBytes(MappingFile.LONGEST);
      String text = new String(bytes, java.nio.charset.StandardCharsets.UTF_8);
      String name = String.valueOf(mappingFile.getFileName());
      return MappingFile.read(name, text, rows.headings(), protocol);
    } catch (IOException unreadable) {
      throw FileProblem.reading(mappingFile, unreadable);
    }
  }

  private RetrospectiveReport run(
      CaseRows rows, ColumnMapping mapping, Protocol protocol, Optional<Protocol> draft)
      throws IOException {
    Path aside = setAsideFile();
    if (command != null && state != null && isSame(aside, state)) {
      throw new ParameterException(
          command.commandLine(), "--state and --set-aside name the same file");
    }
    if (!resume) {
      refuseExisting(aside);
      Optional.ofNullable(state).ifPresent(RetrospectCommand::refuseExisting);
    }
    RetrospectiveRun.Settings settings =
        new RetrospectiveRun.Settings(
            aside,
            Optional.ofNullable(state),
            resume,
            every,
            Runtime.getRuntime().availableProcessors(),
            LocalDate.now(terminal.clock()));
    RetrospectiveRun run =
        new RetrospectiveRun(Engine.of(protocol), draft.map(Engine::of), mapping, settings);
    try (ProgressBar bar = ProgressBar.on(terminal, "judging")) {
      return run.run(rows, (done, size) -> bar.at((int) (1000L * done / Math.max(size, 1)), 1000));
    }
  }

  private static boolean isSame(Path one, Path other) {
    return one.toAbsolutePath().normalize().equals(other.toAbsolutePath().normalize());
  }

  private static void refuseExisting(Path file) {
    if (Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
      throw FileProblem.exists(file);
    }
  }

  private Path setAsideFile() {
    if (setAside != null) {
      return setAside;
    }
    String name = String.valueOf(cases.getFileName());
    int dot = name.lastIndexOf('.');
    return cases.resolveSibling((dot > 0 ? name.substring(0, dot) : name) + ".set-aside.csv");
  }

  private int answer(RetrospectiveReport report) {
    figures.write(
        terminal,
        new FiguresOptions.Forms(
            () ->
                new RetrospectAnswer(figures.width(), figures.style(terminal))
                    .write(report, setAsideFile().toString()),
            () -> RetrospectJson.write(report),
            () -> RetrospectPage.write(report),
            () -> RetrospectTables.of(report)));
    return report.counts().setAside() == 0 ? Main.DONE : Main.FAULTS;
  }
}
