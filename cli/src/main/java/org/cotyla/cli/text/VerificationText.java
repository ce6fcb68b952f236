package org.cotyla.cli.text;

import org.cotyla.ledger.Breach;
import org.cotyla.ledger.Verification;

/** What verifying a ledger came to, for people. */
public final class VerificationText {

  private static final int MOST_SHOWN = 20;

  private final Page page;

  public VerificationText(int width, Style style) {
    this.page = new Page(width, style);
  }

  /** What it came to. */
  public String write(Verification verification, boolean withCheckpoint) {
    page.hanging("Entries          ", String.valueOf(verification.entries()));
    page.hanging("Recommendations  ", String.valueOf(verification.recommendations()));
    page.hanging("Signatures       ", String.valueOf(verification.signatures()));
    page.hanging("Last digest      ", "");
    page.paragraph(2, verification.head());
    verification.remarks().forEach(page::warning);
    if (!withCheckpoint) {
      page.warning(
          "Without a checkpoint kept elsewhere, a missing end or a history that was rewritten as a"
              + " whole cannot show.");
    }
    if (verification.holds()) {
      page.heading("The ledger holds");
      return page.toString();
    }
    page.heading("The ledger does not hold");
    page.hanging("First: ", line(verification.breaches().get(0)));
    int all = verification.breaches().size();
    verification.breaches().stream()
        .skip(1)
        .limit(MOST_SHOWN)
        .forEach(breach -> page.marked(0, Mark.RULED_OUT, line(breach)));
    if (all > MOST_SHOWN + 1) {
      page.paragraph(0, "and " + (all - MOST_SHOWN - 1) + " more");
    }
    return page.toString();
  }

  private static String line(Breach breach) {
    String where = breach.sequence() == 0 ? "the ledger" : "entry " + breach.sequence();
    return where + " " + breach.how().word() + ": " + breach.what();
  }
}
