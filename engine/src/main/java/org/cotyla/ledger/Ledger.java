package org.cotyla.ledger;

import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.locks.ReentrantLock;
import java.util.function.Function;
import java.util.stream.Stream;
import org.cotyla.issue.RejectedException;
import org.jspecify.annotations.Nullable;

/**
 * An append-only ledger in a database. Safe to share between threads; any number of programs may
 * write to one ledger at once, and each entry still follows the one before it.
 */
public final class Ledger implements LedgerSource, AutoCloseable {

  /** The version of the layout of entries. */
  public static final int FORMAT = 1;

  private final LedgerAddress address;
  private final Clock clock;
  private final LedgerReading reading;
  private final ReentrantLock lock = new ReentrantLock();
  private @Nullable Connection writer;
  private Governance governance = Governance.NONE;

  private Ledger(LedgerAddress address, Clock clock) {
    this.address = address;
    this.clock = clock;
    this.reading = new LedgerReading(address);
  }

  /**
   * Opens a ledger.
   *
   * @param clock gives the time of each entry
   * @throws RejectedException when none is there, or it cannot be used
   */
  public static Ledger open(LedgerAddress address, Clock clock) {
    if (address.isMissingFile()) {
      throw LedgerFault.missing(address);
    }
    try (Connection connection = new AddressDataSource(address).getConnection()) {
      if (!LedgerSchema.isCurrent(connection)) {
        throw LedgerFault.missing(address);
      }
    } catch (SQLException refused) {
      throw LedgerFault.database(address, refused);
    }
    return new Ledger(address, clock);
  }

  /**
   * Founds a ledger, which begins with the keys that vouch for all later ones.
   *
   * @throws RejectedException when one is there already, or the keys do not do
   */
  public static Ledger found(LedgerAddress address, Clock clock, List<PublicKeyOf> keys) {
    KeyRules.requireFounders(keys);
    LedgerSchema.migrate(address);
    Ledger ledger = open(address, clock);
    ledger.write(
        writing -> {
          if (writing.head().sequence() > 0) {
            throw LedgerFault.of("L003", "there is a ledger at " + address.shown() + " already");
          }
          String name = UUID.randomUUID().toString();
          return writing.append(new Content.Founding(name, FORMAT, keys));
        });
    return ledger;
  }

  /**
   * Writes entries, all or none. No other program writes to the ledger meanwhile, so what is read
   * through the writing still holds when it is done. When this returns, the entries are on disk.
   */
  public <T> T write(Function<LedgerWriting, T> work) {
    lock.lock();
    try {
      Connection connection = connection();
      try {
        run(connection, address.file().isPresent() ? "BEGIN IMMEDIATE" : "BEGIN");
        LedgerWriting writing = new LedgerWriting(connection, address, clock, governance);
        T result = work.apply(writing);
        writing.requireLast();
        run(connection, "COMMIT");
        governance = writing.governance();
        return result;
      } catch (SQLException | RuntimeException | Error failed) {
        giveUp(connection, failed);
        throw failed;
      }
    } catch (SQLException refused) {
      throw LedgerFault.database(address, refused);
    } finally {
      lock.unlock();
    }
  }

  private Connection connection() throws SQLException {
    if (writer == null) {
      writer = new AddressDataSource(address).getConnection();
    }
    return writer;
  }

  /** In words, since a driver would begin the next transaction, and lock, as soon as one ends. */
  private static void run(Connection connection, String sql) throws SQLException {
    try (Statement statement = connection.createStatement()) {
      statement.execute(sql);
    }
  }

  /** A connection that failed is not used again. */
  private void giveUp(Connection connection, Throwable cause) {
    writer = null;
    try (connection) {
      run(connection, "ROLLBACK");
    } catch (SQLException alsoFailed) {
      cause.addSuppressed(alsoFailed);
    }
  }

  /** What the keys, approvals, releases and withdrawals so far come to. */
  public Governance governance() {
    lock.lock();
    try {
      governance = governance.with(this);
      return governance;
    } finally {
      lock.unlock();
    }
  }

  /** Reads through one connection until it is closed: for many small questions. */
  LedgerReading reader() {
    return LedgerReading.held(address);
  }

  @Override
  public Stream<Entry> entries() {
    return reading.entries();
  }

  /** Every entry as it is stored, in the order of the sequence numbers, unread. */
  public Stream<StoredEntry> stored() {
    return reading.stored();
  }

  @Override
  public Stream<Entry> entries(Set<Kind> kinds, long after) {
    return reading.entries(kinds, after);
  }

  @Override
  public Stream<Entry> entriesAbout(String caseReference) {
    return reading.entriesAbout(caseReference);
  }

  @Override
  public Optional<Entry> entry(long sequence) {
    return reading.entry(sequence);
  }

  @Override
  public Optional<byte[]> document(String digest) {
    return reading.document(digest);
  }

  @Override
  public void close() {
    lock.lock();
    try {
      if (writer != null) {
        writer.close();
        writer = null;
      }
    } catch (SQLException refused) {
      throw LedgerFault.database(address, refused);
    } finally {
      lock.unlock();
    }
  }
}
