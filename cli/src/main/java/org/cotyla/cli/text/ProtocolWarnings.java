package org.cotyla.cli.text;

import java.time.LocalDate;
import org.cotyla.protocol.About;

/** What is to be known of a protocol before its answer is read. */
final class ProtocolWarnings {

  private ProtocolWarnings() {}

  static void write(Page page, About about, LocalDate today) {
    switch (about.status()) {
      case DRAFT -> page.warning("This protocol is a draft; it is not in force.");
      case SUPERSEDED -> page.warning("This protocol is superseded by a newer version.");
      case WITHDRAWN -> page.warning("This protocol is withdrawn; do not use it.");
      case IN_FORCE -> {}
    }
    about
        .effectiveFrom()
        .filter(from -> from.isAfter(today))
        .ifPresent(
            from -> page.warning("This protocol is meant to be in force from " + from + "."));
    about
        .reviewDue()
        .filter(due -> due.isBefore(today))
        .ifPresent(due -> page.warning("This protocol was due for review on " + due + "."));
  }
}
