package org.cotyla.cli;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.cotyla.audit.AuditReport;
import org.cotyla.audit.AuditTables;
import org.cotyla.cli.report.AuditPage;
import org.cotyla.cli.text.AuditText;
import org.cotyla.cli.text.DecisionsCsv;
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
      names = "--list",
      paramLabel = "FILE",
      description =
          "Write every decision to this file as well, a line for each ranking, as CSV to count on"
              + " with other means.")
  private @Nullable Path list;

  @Mixin private FiguresOptions figures = new FiguresOptions();

  AuditCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    figures.check();
    if (from != null && to != null && to.isBefore(from)) {
      throw new ParameterException(spec.commandLine(), "--to " + to + " is before --from " + from);
    }
    AuditReport report = report();
    figures.write(
        terminal,
        new FiguresOptions.Forms(
            () -> new AuditText(figures.width(), figures.style(terminal)).write(report),
            () -> AuditJson.write(report),
            () -> AuditPage.write(report),
            () -> AuditTables.of(report)));
    return Main.DONE;
  }

  private AuditReport report() {
    DecisionsCsv decisions = new DecisionsCsv();
    try (Ledger open = ledger.open(terminal)) {
      AuditReport report =
          new LedgerAudit(
                  Optional.ofNullable(from),
                  Optional.ofNullable(to),
                  list == null ? judged -> {} : decisions::add)
              .of(open);
      if (list != null) {
        OutputFile.write(list, decisions.toString().getBytes(StandardCharsets.UTF_8));
      }
      return report;
    }
  }
}
