package org.cotyla.testcases.faults;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import org.cotyla.compare.PastCase;
import org.cotyla.evaluate.Engine;
import org.cotyla.library.CaseFolder;
import org.cotyla.testcases.comparing.PastCasesAgreement;
import org.cotyla.testcases.house.House;

/** Some of the cases that ship, run with the house protocol and a changed one. */
final class PastCasesRun {

  private static final int EVERY = 5;

  private final Engine before;
  private final List<PastCase> cases = new ArrayList<>();

  PastCasesRun(Engine before) {
    this.before = before.remembering();
    try {
      Iterator<PastCase> library = CaseFolder.of(House.cases()).cases();
      for (int i = 0; library.hasNext(); i++) {
        PastCase one = library.next();
        if (i % EVERY == 0) {
          cases.add(one);
        }
      }
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  void agree(Engine after, String fault) {
    PastCasesAgreement.check(before, after, cases, fault);
  }
}
