package org.cotyla.ledger;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Clock;
import java.time.Instant;
import java.time.temporal.ChronoUnit;

/** A ledger while something is written to it and nobody else can. Ends with the writing. */
public final class LedgerWriting {

  private static final String LOCK =
      "SELECT pg_advisory_xact_lock(7221903, hashtext(current_schema()))";
  private static final String LAST =
      "SELECT sequence, digest FROM ledger_entry ORDER BY sequence DESC LIMIT 1";
  private static final String INSERT =
      "INSERT INTO ledger_entry (sequence, kind, case_reference, previous, digest, body)"
          + " VALUES (?, ?, ?, ?, ?, ?)";
  private static final String KEPT = "SELECT 1 FROM ledger_document WHERE digest = ?";
  private static final String KEEP =
      "INSERT INTO ledger_document (digest, content) VALUES (?, ?) ON CONFLICT DO NOTHING";

  /** The last entry: its number, 0 when there is none, and its digest. */
  public record Head(long sequence, String digest) {}

  private final Connection connection;
  private final LedgerAddress address;
  private final Clock clock;
  private Governance governance;
  private Head head;

  LedgerWriting(Connection connection, LedgerAddress address, Clock clock, Governance known)
      throws SQLException {
    this.connection = connection;
    this.address = address;
    this.clock = clock;
    this.head = lock(connection, address);
    this.governance = known.with(new LedgerReading(address, connection));
  }

  /** An embedded ledger is locked by the start of its transaction, which the first query makes. */
  private static Head lock(Connection connection, LedgerAddress address) throws SQLException {
    try (Statement statement = connection.createStatement()) {
      if (address.file().isEmpty()) {
        statement.execute(LOCK);
      }
    }
    return last(connection);
  }

  private static Head last(Connection connection) throws SQLException {
    try (Statement statement = connection.createStatement();
        ResultSet last = statement.executeQuery(LAST)) {
      return last.next()
          ? new Head(last.getLong(1), last.getString(2))
          : new Head(0, Entry.NONE_BEFORE);
    }
  }

  public Head head() {
    return head;
  }

  /** What the keys, approvals, releases and withdrawals so far come to. */
  public Governance governance() {
    return governance;
  }

  /** Writes the next entry. */
  public Entry append(Content content) {
    Instant now = clock.instant().truncatedTo(ChronoUnit.MILLIS);
    Entry entry = EntryBody.write(head.sequence() + 1, now, head.digest(), content);
    try (PreparedStatement insert = connection.prepareStatement(INSERT)) {
      insert.setLong(1, entry.sequence());
      insert.setString(2, content.kind().word());
      insert.setString(3, content.aboutCase().orElse(null));
      insert.setString(4, entry.previous());
      insert.setString(5, entry.digest());
      insert.setString(6, entry.body());
      requireWritten(insert.executeUpdate() == 1);
    } catch (SQLException refused) {
      throw LedgerFault.database(address, refused);
    }
    head = new Head(entry.sequence(), entry.digest());
    governance = governance.with(entry);
    return entry;
  }

  /**
   * Reads back, before the writing is made final, that its last entry is the last of the ledger: a
   * trigger may have swallowed it without an error.
   */
  void requireLast() throws SQLException {
    requireWritten(last(connection).equals(head));
  }

  private void requireWritten(boolean written) {
    if (!written) {
      throw LedgerFault.of(
          "L006",
          "the database at " + address.shown() + " did not keep the entry that it was given",
          "something in it swallows entries, such as a trigger that was added; nothing was"
              + " recorded");
    }
  }

  /** Whether a document is kept already. */
  public boolean keeps(String digest) {
    try (PreparedStatement select = connection.prepareStatement(KEPT)) {
      select.setString(1, digest);
      try (ResultSet row = select.executeQuery()) {
        return row.next();
      }
    } catch (SQLException refused) {
      throw LedgerFault.database(address, refused);
    }
  }

  /** Keeps a document, and gives its digest; the same bytes are kept once. */
  public String keep(Document document) {
    try (PreparedStatement insert = connection.prepareStatement(KEEP)) {
      insert.setString(1, document.digest());
      insert.setBytes(2, document.packed());
      insert.executeUpdate();
    } catch (SQLException refused) {
      throw LedgerFault.database(address, refused);
    }
    requireWritten(keeps(document.digest()));
    return document.digest();
  }
}
