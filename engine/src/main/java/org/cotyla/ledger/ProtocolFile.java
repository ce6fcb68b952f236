package org.cotyla.ledger;

import java.time.LocalDate;
import java.util.Collection;
import java.util.Optional;
import org.cotyla.expression.FormulaFunction;
import org.cotyla.identity.CanonicalJson;
import org.cotyla.identity.ProtocolDigest;
import org.cotyla.protocol.About;
import org.cotyla.protocol.Protocol;
import org.cotyla.workbook.Workbooks;

/** A workbook with its bytes, as a ledger keeps it, and the protocol that it holds. */
public final class ProtocolFile {

  private final byte[] bytes;
  private final Protocol protocol;
  private final ProtocolVersion version;

  private ProtocolFile(byte[] bytes, Protocol protocol) {
    this.bytes = bytes.clone();
    this.protocol = protocol;
    About about = protocol.about();
    this.version =
        new ProtocolVersion(
            about.identifier(),
            about.version(),
            ProtocolDigest.of(protocol),
            ProtocolDigest.ofLists(protocol),
            CanonicalJson.digest(bytes),
            about.effectiveFrom(),
            about.reviewDue());
  }

  /**
   * Reads a workbook from its bytes.
   *
   * @throws org.cotyla.issue.RejectedException with every fault that was found
   */
  public static ProtocolFile read(
      String name, byte[] workbook, Collection<FormulaFunction> functions) {
    return new ProtocolFile(workbook, Workbooks.read(name, workbook, functions));
  }

  public Protocol protocol() {
    return protocol;
  }

  public ProtocolVersion version() {
    return version;
  }

  /** The same protocol, in force from another day than its workbook says. */
  ProtocolVersion from(Optional<LocalDate> day) {
    return new ProtocolVersion(
        version.identifier(),
        version.version(),
        version.digest(),
        version.lists(),
        version.workbook(),
        day.or(version::effectiveFrom),
        version.reviewDue());
  }

  /** Keeps the file, unless it is kept already. */
  void keepIn(LedgerWriting writing) {
    if (!writing.keeps(version.workbook())) {
      writing.keep(Document.of(bytes));
    }
  }
}
