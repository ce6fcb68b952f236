package org.cotyla.check;

import java.util.List;
import org.cotyla.issue.Severity;
import org.cotyla.protocol.Protocol;

/**
 * What a check of a protocol came to. Immutable.
 *
 * @param protocol the protocol
 * @param protocolDigest SHA-256 over its meaning
 * @param remarks everything that there is to say, errors first, each group in the order of the
 *     workbook
 * @param safeguards each safeguard and whether it holds
 */
public record CheckReport(
    Protocol protocol,
    String protocolDigest,
    List<Remark> remarks,
    List<SafeguardVerdict> safeguards) {

  public CheckReport {
    remarks = List.copyOf(remarks);
    safeguards = List.copyOf(safeguards);
  }

  /** How many remarks of that severity nobody accepted. */
  public long count(Severity severity) {
    return remarks.stream()
        .filter(remark -> remark.issue().severity() == severity)
        .filter(remark -> remark.accepted().isEmpty())
        .count();
  }

  public List<Remark> accepted() {
    return remarks.stream().filter(remark -> remark.accepted().isPresent()).toList();
  }
}
