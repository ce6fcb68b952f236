package org.cotyla.check;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.cotyla.issue.Issue;
import org.cotyla.issue.Severity;
import org.cotyla.name.Names;
import org.cotyla.protocol.Acceptance;
import org.cotyla.protocol.Protocol;

/** Marks the warnings that the workbook accepts, and says which acceptances are of no use. */
final class Acceptances {

  private final List<Acceptance> acceptances;

  Acceptances(Protocol protocol) {
    this.acceptances = protocol.checks().accepted();
  }

  List<Remark> apply(List<Remark> remarks) {
    Set<Acceptance> used = new HashSet<>();
    List<Remark> judged = new ArrayList<>();
    for (Remark remark : remarks) {
      Optional<Acceptance> accepted =
          acceptances.stream()
              .filter(acceptance -> remark.issue().severity() != Severity.ERROR)
              .filter(acceptance -> isAbout(acceptance, remark))
              .findFirst();
      accepted.ifPresent(used::add);
      judged.add(accepted.map(remark::acceptedBy).orElse(remark));
    }
    for (Acceptance acceptance : acceptances) {
      if (!used.contains(acceptance)) {
        judged.add(idle(acceptance, remarks));
      }
    }
    return judged;
  }

  private static boolean isAbout(Acceptance acceptance, Remark remark) {
    String about = Names.key(acceptance.about());
    return remark.issue().code().equalsIgnoreCase(acceptance.code())
        && (about.equals(Names.key(remark.about()))
            || about.equals(Names.key(remark.issue().place().plain())));
  }

  private static Remark idle(Acceptance acceptance, List<Remark> remarks) {
    boolean error =
        remarks.stream()
            .anyMatch(
                remark ->
                    remark.issue().severity() == Severity.ERROR && isAbout(acceptance, remark));
    String message =
        error
            ? "`"
                + acceptance.code()
                + "` about `"
                + acceptance.about()
                + "` is an error, which cannot be accepted"
            : "nothing is left to accept: there is no `"
                + acceptance.code()
                + "` about `"
                + acceptance.about()
                + "`";
    return new Remark(
        new Issue("K181", Severity.NOTE, acceptance.at(), message, Optional.empty()),
        acceptance.about(),
        Optional.empty());
  }
}
