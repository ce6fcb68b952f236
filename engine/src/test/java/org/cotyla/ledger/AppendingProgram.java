package org.cotyla.ledger;

import java.io.PrintStream;
import java.time.Clock;

/** Appends to a ledger, and says of each entry once it is acknowledged. */
final class AppendingProgram {

  private AppendingProgram() {}

  /** Arguments: the address, the reference to write under, how many entries. */
  public static void main(String[] arguments) {
    PrintStream out = System.out;
    try (Ledger ledger = Ledger.open(LedgerAddress.of(arguments[0]), Clock.systemUTC())) {
      for (int i = 0; i < Integer.parseInt(arguments[2]); i++) {
        Entry entry = ledger.write(writing -> writing.append(SampleLedger.decision(arguments[1])));
        out.print(entry.sequence() + "\n");
        out.flush();
      }
    }
  }
}
