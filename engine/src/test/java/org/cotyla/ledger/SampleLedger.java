package org.cotyla.ledger;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;

/** A ledger of its own for one test, taken away after it. */
final class SampleLedger implements AutoCloseable {

  static final Clock CLOCK = Clock.fixed(Instant.parse("2026-12-15T10:00:00Z"), ZoneOffset.UTC);
  static final SigningKey LEAD = SigningKey.make();
  static final SigningKey QUALITY = SigningKey.make();

  private final LedgerAddress address;
  private final String schema;
  private final Ledger ledger;

  private SampleLedger(LedgerAddress address, String schema) {
    this.address = address;
    this.schema = schema;
    this.ledger = Ledger.found(address, CLOCK, keys());
  }

  static SampleLedger in(Database database) {
    database.require();
    try {
      if (database == Database.SQLITE) {
        Path folder = Files.createTempDirectory("cotyla-ledger");
        return new SampleLedger(LedgerAddress.ofFile(folder.resolve("test.ledger")), "");
      }
      String schema = "t" + UUID.randomUUID().toString().replace("-", "");
      run(Database.server(), "CREATE SCHEMA " + schema);
      String joint = Database.server().contains("?") ? "&" : "?";
      return new SampleLedger(
          LedgerAddress.of(Database.server() + joint + "currentSchema=" + schema), schema);
    } catch (IOException unwritable) {
      throw new UncheckedIOException(unwritable);
    }
  }

  static List<PublicKeyOf> keys() {
    return List.of(
        SigningKey.publicKey("lead", LEAD.publicPem()),
        SigningKey.publicKey("quality lead", QUALITY.publicPem()));
  }

  static Signer lead() {
    return new Signer("lead", LEAD.privatePem());
  }

  static Signer quality() {
    return new Signer("quality lead", QUALITY.privatePem());
  }

  static Content decision(String reference) {
    return new Content.Decision(
        reference,
        1,
        LocalDate.of(2026, 12, 15),
        "consultant",
        List.of(),
        true,
        Optional.empty(),
        Optional.empty());
  }

  Ledger ledger() {
    return ledger;
  }

  LedgerAddress address() {
    return address;
  }

  void foundAgain() {
    Ledger.found(address, CLOCK, keys()).close();
  }

  Connection connect() throws SQLException {
    return DriverManager.getConnection(address.url());
  }

  void execute(String... statements) {
    try (Connection connection = connect();
        Statement statement = connection.createStatement()) {
      for (String sql : statements) {
        statement.execute(sql);
      }
    } catch (SQLException refused) {
      throw new IllegalStateException(refused);
    }
  }

  /** Does to the tables what nobody should, with the triggers out of the way. */
  void tamper(String... statements) {
    try (Connection connection = connect();
        Statement statement = connection.createStatement()) {
      for (String trigger :
          List.of("ledger_entry_follows", "ledger_entry_keeps", "ledger_entry_stays")) {
        drop(statement, trigger, "ledger_entry");
      }
      drop(statement, "ledger_document_keeps", "ledger_document");
      drop(statement, "ledger_document_stays", "ledger_document");
      for (String sql : statements) {
        statement.executeUpdate(sql);
      }
    } catch (SQLException refused) {
      throw new IllegalStateException(refused);
    }
  }

  private void drop(Statement statement, String trigger, String table) throws SQLException {
    boolean embedded = address.file().isPresent();
    statement.executeUpdate("DROP TRIGGER IF EXISTS " + trigger + (embedded ? "" : " ON " + table));
  }

  @Override
  public void close() {
    ledger.close();
    address.file().ifPresent(SampleLedger::delete);
    if (!schema.isEmpty()) {
      run(Database.server(), "DROP SCHEMA " + schema + " CASCADE");
    }
  }

  private static void delete(Path file) {
    try (Stream<Path> left = Files.list(file.toAbsolutePath().getParent())) {
      for (Path one : left.toList()) {
        Files.delete(one);
      }
      Files.delete(file.toAbsolutePath().getParent());
    } catch (IOException undeletable) {
      throw new UncheckedIOException(undeletable);
    }
  }

  private static void run(String url, String sql) {
    try (Connection connection = DriverManager.getConnection(url);
        Statement statement = connection.createStatement()) {
      statement.executeUpdate(sql);
    } catch (SQLException refused) {
      throw new IllegalStateException(refused);
    }
  }
}
