package org.cotyla.ledger;

import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.FlywayException;

/** The tables of a ledger: made and brought up to date by migrations. */
final class LedgerSchema {

  /** The newest migration. */
  static final String VERSION = "1";

  private LedgerSchema() {}

  /** Makes the tables, or brings them up to date. */
  static void migrate(LedgerAddress address) {
    String folder = folder(address.file().isPresent());
    try {
      Flyway.configure(LedgerSchema.class.getClassLoader())
          .dataSource(new AddressDataSource(address))
          .locations("classpath:org/cotyla/ledger/" + folder)
          .table("ledger_schema")
          .baselineOnMigrate(true)
          .baselineVersion("0")
          .cleanDisabled(true)
          .loggers("slf4j")
          .load()
          .migrate();
    } catch (FlywayException failed) {
      throw LedgerFault.database(address, failed);
    }
  }

  /** Where the migrations of a database stand, under this package. */
  static String folder(boolean embedded) {
    return embedded ? "sqlite" : "postgresql";
  }

  /** Whether the tables are there, as this program knows them. */
  static boolean isCurrent(Connection connection) throws SQLException {
    try (ResultSet tables =
        connection.getMetaData().getTables(null, null, "ledger_schema", new String[] {"TABLE"})) {
      if (!tables.next()) {
        return false;
      }
    }
    try (Statement statement = connection.createStatement();
        ResultSet rows =
            statement.executeQuery(
                "SELECT version FROM ledger_schema WHERE success AND version IS NOT NULL"
                    + " ORDER BY installed_rank DESC LIMIT 1")) {
      return rows.next() && VERSION.equals(rows.getString(1));
    }
  }
}
