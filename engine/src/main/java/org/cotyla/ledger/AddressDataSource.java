package org.cotyla.ledger;

import java.io.PrintWriter;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.SQLFeatureNotSupportedException;
import java.util.logging.Logger;
import javax.sql.DataSource;

/** Opens a new connection to an address each time. */
record AddressDataSource(LedgerAddress address) implements DataSource {

  @Override
  public Connection getConnection() throws SQLException {
    return DriverManager.getConnection(address.url(), address.properties());
  }

  @Override
  public Connection getConnection(String user, String password) throws SQLException {
    throw new SQLFeatureNotSupportedException("the address says who connects");
  }

  @Override
  public PrintWriter getLogWriter() {
    return new PrintWriter(PrintWriter.nullWriter());
  }

  @Override
  public void setLogWriter(PrintWriter out) {}

  @Override
  public void setLoginTimeout(int seconds) {}

  @Override
  public int getLoginTimeout() {
    return 0;
  }

  @Override
  public Logger getParentLogger() throws SQLFeatureNotSupportedException {
    throw new SQLFeatureNotSupportedException();
  }

  @Override
  public <T> T unwrap(Class<T> type) throws SQLException {
    throw new SQLException("this wraps nothing");
  }

  @Override
  public boolean isWrapperFor(Class<?> type) {
    return false;
  }
}
