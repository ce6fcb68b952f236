package org.cotyla.cli;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.concurrent.Callable;
import org.cotyla.authoring.AnnotatedWorkbook;
import org.cotyla.check.CheckReport;
import org.cotyla.check.ProtocolCheck;
import org.cotyla.check.Remark;
import org.cotyla.cli.text.CheckAnswer;
import org.cotyla.evaluate.Engine;
import org.cotyla.issue.RejectedException;
import org.cotyla.issue.Severity;
import org.cotyla.json.CheckJson;
import org.cotyla.protocol.Protocol;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Checks a workbook over all its cases. */
@Command(
    name = "check",
    description = {
      "Checks a workbook over all its cases: faults at their cells, gaps, clashes, rows that never"
          + " count, what nothing uses, and whether each safeguard holds."
    },
    footer = {
      "",
      "Marks: x error, ! warning, * note. A warning is accepted on the sheet `Accepted`, by its code"
          + " and the row id or name that it is about.",
      "Exit code 1 when there is an error."
    })
final class CheckCommand implements Callable<Integer> {

  private final Terminal terminal;

  @Parameters(
      paramLabel = "WORKBOOK",
      arity = "0..1",
      description = "The workbook; the house protocol when absent.")
  private @Nullable Path workbook;

  @Option(
      names = {"-h", "--help"},
      usageHelp = true,
      description = "Show this help and stop.")
  private boolean help;

  @Option(
      names = "--examples",
      paramLabel = "FOLDER",
      description = "Write each case that shows a remark as a file that recommend can run.")
  private @Nullable Path examples;

  @Option(
      names = "--annotate",
      paramLabel = "FILE",
      description =
          "Write a copy of the workbook with each remark as a comment on its cell, and a sheet that"
              + " lists them.")
  private @Nullable Path annotated;

  @Mixin private AnswerOptions answer = new AnswerOptions();

  CheckCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    Protocol protocol;
    try {
      protocol = HouseProtocol.read(workbook, terminal.home());
    } catch (RejectedException unreadable) {
      annotate(CheckNotes.of(unreadable.issues()), "It cannot be read as a protocol yet.");
      terminal.out().print(faults(unreadable));
      return Main.FAULTS;
    }
    CheckReport report;
    try (ProgressBar bar = ProgressBar.on(terminal, "checking")) {
      report = ProtocolCheck.of(Engine.of(protocol)).run(LocalDate.now(terminal.clock()), bar::at);
    }
    writeExamples(report);
    annotate(CheckNotes.of(report), CheckNotes.conclusion(report));
    terminal
        .out()
        .print(
            answer.asJson()
                ? CheckJson.write(report)
                : new CheckAnswer(answer.width(), answer.style(terminal)).write(report));
    return report.count(Severity.ERROR) == 0 ? Main.DONE : Main.FAULTS;
  }

  private String faults(RejectedException unreadable) {
    if (answer.asJson()) {
      return CheckJson.write(unreadable.issues());
    }
    String file = workbook == null ? "the house protocol" : String.valueOf(workbook.getFileName());
    return new CheckAnswer(answer.width(), answer.style(terminal)).write(file, unreadable.issues());
  }

  private void annotate(List<AnnotatedWorkbook.Note> notes, String conclusion) {
    if (annotated != null) {
      Path file = HouseProtocol.file(workbook, terminal.home());
      String name = String.valueOf(file.getFileName());
      OutputFile.write(
          annotated, AnnotatedWorkbook.of(name, WorkbookFile.read(file), conclusion, notes));
    }
  }

  private void writeExamples(CheckReport report) {
    if (examples == null) {
      return;
    }
    int number = 0;
    for (Remark remark : report.remarks()) {
      if (remark.example().isPresent()) {
        number++;
        String name =
            "%03d-%s.json"
                .formatted(number, remark.issue().code().toLowerCase(java.util.Locale.ROOT));
        OutputFile.write(
            OutputFile.folder(examples).resolve(name), CheckJson.example(remark.example().get()));
      }
    }
  }
}
