package org.cotyla.check;

import java.util.List;
import java.util.Optional;
import org.cotyla.protocol.Protocol;
import org.cotyla.protocol.Safeguard;
import org.cotyla.value.Truth;

/** What has to be said of safeguards that do not simply hold. */
final class SafeguardRemarks {

  private final Remarks remarks;

  SafeguardRemarks(Protocol protocol, Remarks remarks) {
    this.remarks = remarks;
  }

  void add(List<SafeguardVerdict> verdicts) {
    for (SafeguardVerdict verdict : verdicts) {
      Safeguard safeguard = verdict.safeguard();
      if (verdict instanceof SafeguardVerdict.Broken broken) {
        remarks.error(
            "K201",
            safeguard.at(),
            safeguard.id(),
            "safeguard `"
                + safeguard.id()
                + "` can be broken: a case meets its conditions but not `"
                + safeguard.demand().plain()
                + "`",
            Optional.of("change the rows that lead there, or the safeguard"),
            Remarks.Example.of(broken.example()));
      } else if (verdict instanceof SafeguardVerdict.Undecided undecided) {
        remarks.warning(
            "K202",
            safeguard.at(),
            safeguard.id(),
            "safeguard `"
                + safeguard.id()
                + "` is undecided, so it is not proven: "
                + undecided.why(),
            Optional.empty(),
            Remarks.Example.none());
      } else if (verdict instanceof SafeguardVerdict.Proven proven
          && proven.applies() == Truth.FALSE) {
        remarks.warning(
            "K203",
            safeguard.at(),
            safeguard.id(),
            "no case meets the conditions of safeguard `"
                + safeguard.id()
                + "`, so it guards nothing",
            "widen a test of it");
      } else if (verdict instanceof SafeguardVerdict.Proven proven
          && proven.applies() == Truth.OPEN) {
        remarks.warning(
            "K204",
            safeguard.at(),
            safeguard.id(),
            "whether any case meets the conditions of safeguard `"
                + safeguard.id()
                + "` is undecided, so it may guard nothing",
            Optional.empty(),
            Remarks.Example.none());
      }
    }
  }
}
