package org.cotyla.cli.text;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.cotyla.protocol.About;
import org.cotyla.protocol.Status;

/** What is to be known of a protocol before its answer is read. */
public final class ProtocolWarnings {

  private ProtocolWarnings() {}

  static void write(Page page, About about, LocalDate today, Optional<LedgerStanding> ledger) {
    ledger.ifPresent(
        standing -> page.hanging("Ledger    ", "recorded as entry " + standing.entry()));
    ledger
        .map(standing -> byLedger(about, standing))
        .orElseGet(() -> byWorkbook(about))
        .forEach(page::warning);
    byDay(about, today, ledger).forEach(page::warning);
  }

  /** What hangs on the day or on a ledger, which a JSON answer leaves out. */
  public static List<String> besideJson(
      About about, LocalDate today, Optional<LedgerStanding> ledger) {
    List<String> warnings = new ArrayList<>();
    ledger.ifPresent(standing -> warnings.addAll(byLedger(about, standing)));
    warnings.addAll(byDay(about, today, ledger));
    return warnings;
  }

  private static List<String> byWorkbook(About about) {
    return switch (about.status()) {
      case DRAFT -> List.of("This protocol is a draft; it is not in force.");
      case SUPERSEDED -> List.of("This protocol is superseded by a newer version.");
      case WITHDRAWN -> List.of("This protocol is withdrawn; do not use it.");
      case IN_FORCE -> List.of();
    };
  }

  private static List<String> byLedger(About about, LedgerStanding standing) {
    String instead =
        standing.inForce().map(version -> "; version " + version + " is in force").orElse("");
    return switch (standing.life()) {
      case DRAFT ->
          List.of("By the ledger this protocol is a draft; it is not in force" + instead + ".");
      case APPROVED ->
          List.of(
              "By the ledger this protocol is in force only from "
                  + standing.from().map(LocalDate::toString).orElse("a later day")
                  + instead
                  + ".");
      case SUPERSEDED -> List.of("By the ledger this protocol is superseded" + instead + ".");
      case WITHDRAWN ->
          List.of("By the ledger this protocol is withdrawn; do not use it" + instead + ".");
      case IN_FORCE ->
          about.status() == Status.IN_FORCE
              ? List.of()
              : List.of(
                  "By the ledger this protocol is in force; its workbook still calls itself "
                      + about.status().word()
                      + ".");
    };
  }

  private static List<String> byDay(About about, LocalDate today, Optional<LedgerStanding> ledger) {
    List<String> warnings = new ArrayList<>();
    about
        .effectiveFrom()
        .filter(from -> from.isAfter(today) && ledger.isEmpty())
        .ifPresent(
            from -> warnings.add("This protocol is meant to be in force from " + from + "."));
    about
        .reviewDue()
        .filter(due -> due.isBefore(today))
        .ifPresent(due -> warnings.add("This protocol was due for review on " + due + "."));
    return warnings;
  }
}
