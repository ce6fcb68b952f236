package org.cotyla.cli;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.cotyla.audit.AuditReport;
import org.cotyla.authoring.AuditWorkbook;
import org.cotyla.cli.report.AuditPage;
import org.cotyla.cli.text.AuditCsv;
import org.cotyla.cli.text.AuditText;
import org.cotyla.cli.text.Style;
import org.cotyla.json.AuditJson;
import org.cotyla.ledger.Ledger;
import org.cotyla.ledgeraudit.LedgerAudit;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Audits the decisions of a ledger over a period. */
@Command(
    name = "audit",
    description = {
      "Holds the decisions of a ledger against what was advised: how far they agree, by month, role,"
          + " option, group and protocol; which rows are departed from and why; decisions under a"
          + " protocol that was not in force; missing data; and outcomes over time."
    },
    footer = {
      "",
      "The chain of the ledger is not checked here: run `cotyla verify` before you rely on an audit.",
      "Small numbers prove nothing: read each figure with its interval."
    })
final class AuditCommand implements Callable<Integer> {

  private static final int WIDTH = 80;

  private final Terminal terminal;

  @Spec private CommandSpec spec = CommandSpec.create();

  @Mixin private LedgerOptions ledger = new LedgerOptions();

  @Option(
      names = "--from",
      paramLabel = "DAY",
      description = "The first day of decisions, as YYYY-MM-DD; the start of the ledger if absent.")
  private @Nullable LocalDate from;

  @Option(
      names = "--to",
      paramLabel = "DAY",
      description =
          "The last day of decisions and outcomes, as YYYY-MM-DD; the last on record if absent.")
  private @Nullable LocalDate to;

  @Option(
      names = "--format",
      paramLabel = "FORMAT",
      description = "text, json, csv, html or xlsx. Usually by the file's name, else text.")
  private @Nullable Format format;

  @Option(
      names = {"-o", "--output"},
      paramLabel = "FILE",
      description = "Write to this file; standard output if absent, which takes no xlsx.")
  private @Nullable Path output;

  /** What is written. */
  enum Format {
    TEXT,
    JSON,
    CSV,
    HTML,
    XLSX;

    @Override
    public String toString() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  AuditCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    Format chosen = chosen();
    if (chosen == Format.XLSX && output == null) {
      throw new ParameterException(
          spec.commandLine(), "--format xlsx needs --output FILE: a workbook is no text");
    }
    if (from != null && to != null && to.isBefore(from)) {
      throw new ParameterException(spec.commandLine(), "--to " + to + " is before --from " + from);
    }
    AuditReport report = report();
    if (output == null) {
      terminal.out().print(text(chosen, report));
    } else if (chosen == Format.XLSX) {
      OutputFile.write(output, AuditWorkbook.write(report));
    } else {
      OutputFile.write(output, text(chosen, report).getBytes(StandardCharsets.UTF_8));
    }
    return Main.DONE;
  }

  private AuditReport report() {
    try (Ledger open = ledger.open(terminal)) {
      return new LedgerAudit(Optional.ofNullable(from), Optional.ofNullable(to)).of(open);
    }
  }

  private static String text(Format format, AuditReport report) {
    return switch (format) {
      case JSON -> AuditJson.write(report);
      case CSV -> AuditCsv.write(report);
      case HTML -> AuditPage.write(report);
      case TEXT, XLSX -> new AuditText(WIDTH, Style.PLAIN).write(report);
    };
  }

  private Format chosen() {
    if (format != null) {
      return format;
    }
    String name = output == null ? "" : output.toString().toLowerCase(Locale.ROOT);
    for (Format one : Format.values()) {
      if (name.endsWith("." + one)) {
        return one;
      }
    }
    return Format.TEXT;
  }
}
