package org.cotyla.cli;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.cotyla.cli.text.Printable;
import org.cotyla.dmn.DmnImport;
import org.cotyla.expression.FormulaLibrary;
import org.cotyla.issue.Issue;
import org.cotyla.issue.RejectedException;
import org.cotyla.issue.Severity;
import org.cotyla.workbook.ProtocolWorkbookWriter;
import org.cotyla.workbook.Workbooks;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Brings the decision tables of a DMN file in as a workbook. */
@Command(
    name = "import-dmn",
    description = {
      "Brings the decision tables of a DMN file (version 1.1 to 1.5) in as a workbook, and lists"
          + " what could not be brought in and what the workbook still lacks, cell by cell."
    },
    footer = {
      "",
      "The workbook is written even when it is not sound yet: a DMN file says less than a protocol"
          + " must. Exit code 1 then says that there is work left."
    })
final class ImportDmnCommand implements Callable<Integer> {

  private final Terminal terminal;

  @Option(
      names = {"-h", "--help"},
      usageHelp = true,
      description = "Show this help and stop.")
  private boolean help;

  @Parameters(index = "0", paramLabel = "FILE", description = "The DMN file.")
  private Path file = Path.of("");

  @Option(
      names = {"-o", "--output"},
      required = true,
      paramLabel = "WORKBOOK",
      description = "Write the workbook (.xlsx) to this file.")
  private Path output = Path.of("");

  ImportDmnCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    DmnImport brought = DmnImport.read(String.valueOf(file.getFileName()), bytes());
    byte[] workbook = ProtocolWorkbookWriter.write(brought.draft());
    List<Issue> issues = new ArrayList<>(brought.remarks());
    issues.addAll(check(workbook));
    OutputFile.write(output, workbook);
    new Complaints(terminal.err()).list(issues);
    terminal.out().print(Printable.line(said(brought, issues)) + "\n");
    boolean sound = issues.stream().noneMatch(issue -> issue.severity() == Severity.ERROR);
    return sound ? Main.DONE : Main.FAULTS;
  }

  /** What the workbook lacks, with its cells as they are written. */
  private List<Issue> check(byte[] workbook) {
    try {
      return Workbooks.read(
              String.valueOf(output.getFileName()), workbook, FormulaLibrary.installed())
          .remarks();
    } catch (RejectedException rejected) {
      return rejected.issues();
    }
  }

  private String said(DmnImport brought, List<Issue> issues) {
    return "written: "
        + output.getFileName()
        + ", with "
        + brought.draft().decisions().size()
        + " decision tables; "
        + Complaints.count(issues);
  }

  private byte[] bytes() {
    if (Files.isDirectory(file)) {
      throw FileProblem.isFolder(file);
    }
    try (InputStream in = Files.newInputStream(file)) {
      return in.readNBytes(DmnImport.MOST_BYTES + 1);
    } catch (IOException unreadable) {
      throw FileProblem.reading(file, unreadable);
    }
  }
}
