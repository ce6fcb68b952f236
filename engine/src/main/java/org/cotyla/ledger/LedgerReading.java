package org.cotyla.ledger;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.Spliterator;
import java.util.Spliterators.AbstractSpliterator;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.jspecify.annotations.Nullable;

/** Reads a ledger, each stream through a connection of its own unless one is given. */
final class LedgerReading implements LedgerSource, AutoCloseable {

  private static final String COLUMNS =
      "SELECT sequence, kind, case_reference, previous, digest, body FROM ledger_entry";
  private static final int FETCHED_AT_ONCE = 200;

  private final LedgerAddress address;
  private final @Nullable Connection shared;

  LedgerReading(LedgerAddress address) {
    this(address, null);
  }

  LedgerReading(LedgerAddress address, @Nullable Connection shared) {
    this.address = address;
    this.shared = shared;
  }

  /** Reads through one connection until it is closed. */
  static LedgerReading held(LedgerAddress address) {
    try {
      return new LedgerReading(address, new AddressDataSource(address).getConnection());
    } catch (SQLException refused) {
      throw LedgerFault.database(address, refused);
    }
  }

  /** Closes the connection that it holds. */
  @Override
  public void close() {
    try {
      if (shared != null) {
        shared.close();
      }
    } catch (SQLException refused) {
      throw LedgerFault.database(address, refused);
    }
  }

  /** The digests by which documents are kept. */
  List<String> documents() {
    try {
      Connection connection = shared == null ? connect() : shared;
      try (PreparedStatement select =
              connection.prepareStatement("SELECT digest FROM ledger_document ORDER BY digest");
          ResultSet rows = select.executeQuery()) {
        List<String> digests = new ArrayList<>();
        while (rows.next()) {
          digests.add(rows.getString(1));
        }
        return digests;
      } finally {
        release(connection);
      }
    } catch (SQLException refused) {
      throw LedgerFault.database(address, refused);
    }
  }

  /** What the database says of itself, as far as it is not as it should be. */
  <T> T check(DatabaseQuestion<T> question) {
    try {
      Connection connection = shared == null ? connect() : shared;
      try {
        return question.ask(new DatabaseCheck(connection, address.file().isPresent()));
      } finally {
        release(connection);
      }
    } catch (SQLException refused) {
      throw LedgerFault.database(address, refused);
    }
  }

  /** A question to a database. */
  interface DatabaseQuestion<T> {
    T ask(DatabaseCheck check) throws SQLException;
  }

  private void release(Connection connection) throws SQLException {
    if (shared == null) {
      connection.close();
    }
  }

  Stream<StoredEntry> stored() {
    return query(COLUMNS + " ORDER BY sequence", List.of());
  }

  @Override
  public Stream<Entry> entries() {
    return stored().map(StoredEntry::read);
  }

  @Override
  public Stream<Entry> entries(Set<Kind> kinds, long after) {
    String marks = kinds.stream().map(kind -> "?").collect(Collectors.joining(", "));
    List<Object> values =
        Stream.concat(kinds.stream().map(Kind::word), Stream.of(after))
            .collect(Collectors.toList());
    return query(
            COLUMNS + " WHERE kind IN (" + marks + ") AND sequence > ? ORDER BY sequence", values)
        .map(StoredEntry::read);
  }

  @Override
  public Stream<Entry> entriesAbout(String caseReference) {
    return query(COLUMNS + " WHERE case_reference = ? ORDER BY sequence", List.of(caseReference))
        .map(StoredEntry::read);
  }

  @Override
  public Optional<Entry> entry(long sequence) {
    try (Stream<StoredEntry> found = query(COLUMNS + " WHERE sequence = ?", List.of(sequence))) {
      return found.findFirst().map(StoredEntry::read);
    }
  }

  @Override
  public Optional<byte[]> document(String digest) {
    try {
      Connection connection = shared == null ? connect() : shared;
      try (PreparedStatement select =
          connection.prepareStatement("SELECT content FROM ledger_document WHERE digest = ?")) {
        select.setString(1, digest);
        try (ResultSet row = select.executeQuery()) {
          return row.next() ? Optional.of(Deflate.unpack(row.getBytes(1))) : Optional.empty();
        }
      } finally {
        release(connection);
      }
    } catch (SQLException refused) {
      throw LedgerFault.database(address, refused);
    }
  }

  private Connection connect() throws SQLException {
    return new AddressDataSource(address).getConnection();
  }

  private Stream<StoredEntry> query(String sql, List<?> values) {
    try {
      Connection connection = shared == null ? connect() : shared;
      try {
        Rows rows = new Rows(connection, sql, values);
        return StreamSupport.stream(rows, false).onClose(rows::close);
      } catch (SQLException refused) {
        release(connection);
        throw refused;
      }
    } catch (SQLException refused) {
      throw LedgerFault.database(address, refused);
    }
  }

  /** The rows of one query, as one state of the ledger. */
  private final class Rows extends AbstractSpliterator<StoredEntry> {

    private final Connection connection;
    private final PreparedStatement select;
    private final ResultSet rows;

    Rows(Connection connection, String sql, List<?> values) throws SQLException {
      super(Long.MAX_VALUE, Spliterator.ORDERED | Spliterator.NONNULL);
      this.connection = connection;
      if (shared == null && address.file().isEmpty()) {
        // Only inside a transaction does a server hand over rows in portions.
        connection.setAutoCommit(false);
      }
      this.select = connection.prepareStatement(sql);
      select.setFetchSize(FETCHED_AT_ONCE);
      for (int i = 0; i < values.size(); i++) {
        select.setObject(i + 1, values.get(i));
      }
      this.rows = select.executeQuery();
    }

    @Override
    public boolean tryAdvance(Consumer<? super StoredEntry> action) {
      try {
        if (!rows.next()) {
          return false;
        }
        action.accept(
            new StoredEntry(
                rows.getLong(1),
                rows.getString(2),
                Optional.ofNullable(rows.getString(3)),
                rows.getString(4),
                rows.getString(5),
                rows.getString(6)));
        return true;
      } catch (SQLException refused) {
        throw LedgerFault.database(address, refused);
      }
    }

    void close() {
      try {
        rows.close();
        select.close();
        if (shared == null) {
          connection.close();
        }
      } catch (SQLException refused) {
        throw LedgerFault.database(address, refused);
      }
    }
  }
}
