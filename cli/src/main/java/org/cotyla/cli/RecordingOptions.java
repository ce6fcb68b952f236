package org.cotyla.cli;

import java.time.LocalDate;
import java.util.Optional;
import org.cotyla.cli.text.LedgerStanding;
import org.cotyla.cli.text.ProtocolWarnings;
import org.cotyla.ledger.Ledger;
import org.cotyla.ledger.LedgerAddress;
import org.cotyla.ledger.Recorder.Recorded;
import org.cotyla.protocol.About;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Whether an answer is recorded, where, and under which reference. */
final class RecordingOptions {

  @Spec(Spec.Target.MIXEE)
  private @Nullable CommandSpec command;

  @Option(
      names = "--ledger",
      paramLabel = "LEDGER",
      description = "Record it in this ledger: a file, or jdbc:postgresql://HOST/DATABASE.")
  private @Nullable String ledger;

  @Option(
      names = "--case-reference",
      paramLabel = "REF",
      description =
          "The local reference of the case, which replaces its title; it says nothing outside your"
              + " house.")
  private @Nullable String reference;

  boolean isAsked() {
    if (command != null && (ledger == null) != (reference == null)) {
      throw new ParameterException(
          command.commandLine(), "--ledger and --case-reference go together");
    }
    return ledger != null;
  }

  Ledger open(Terminal terminal) {
    return Ledger.open(LedgerAddress.of(String.valueOf(ledger)), terminal.clock());
  }

  String reference() {
    return String.valueOf(reference);
  }

  static LedgerStanding standing(Ledger ledger, Recorded recorded, LocalDate today) {
    return LedgerStanding.of(
        ledger.governance(), recorded.content().protocol(), today, recorded.entry().sequence());
  }

  /** What a JSON answer leaves out, since it would differ from day to day, goes to the side. */
  static void besideJson(
      Terminal terminal, About about, LocalDate today, Optional<LedgerStanding> standing) {
    ProtocolWarnings.besideJson(about, today, standing)
        .forEach(warning -> terminal.err().print("warning: " + warning + "\n"));
    standing.ifPresent(
        known -> terminal.err().print("note: recorded as entry " + known.entry() + "\n"));
  }
}
