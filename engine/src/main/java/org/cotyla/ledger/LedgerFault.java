package org.cotyla.ledger;

import java.util.List;
import java.util.Optional;
import org.cotyla.issue.Issue;
import org.cotyla.issue.Place;
import org.cotyla.issue.RejectedException;
import org.cotyla.issue.Severity;

/** Makes the fault of a ledger, or of what was to go into one, with its stable code. */
final class LedgerFault {

  static final Place WHOLE = new Place.Whole("ledger");

  private LedgerFault() {}

  static RejectedException of(String code, String message) {
    return of(code, message, Optional.empty());
  }

  static RejectedException of(String code, String message, String help) {
    return of(code, message, Optional.of(help));
  }

  private static RejectedException of(String code, String message, Optional<String> help) {
    return new RejectedException(List.of(new Issue(code, Severity.ERROR, WHOLE, message, help)));
  }

  static RejectedException missing(LedgerAddress address) {
    return of(
        "L002", "there is no ledger at " + address.shown(), "`cotyla ledger init` founds one");
  }

  /** What the database says is shown on one line. */
  static RejectedException database(LedgerAddress address, Exception failed) {
    String says = String.valueOf(failed.getMessage()).strip().replaceAll("\\s+", " ");
    boolean noDriver = says.startsWith("No suitable driver");
    return noDriver
        ? of("L004", "no driver for the database of " + address.shown() + " is on the class path")
        : of("L005", "the database of " + address.shown() + " refuses: " + says);
  }
}
