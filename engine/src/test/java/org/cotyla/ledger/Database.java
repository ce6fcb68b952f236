package org.cotyla.ledger;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Assumptions;

/** The databases that a ledger may stand in. */
enum Database {
  SQLITE,
  POSTGRESQL;

  /** The address of a PostgreSQL server for tests, whose databases they may fill. */
  private static final String SERVER = System.getenv("COTYLA_TEST_POSTGRESQL");

  static String server() {
    return SERVER == null ? "" : SERVER;
  }

  boolean isAvailable() {
    return this == SQLITE || !server().isBlank();
  }

  /** A test without its server is skipped, and counted as such. */
  void require() {
    Assumptions.assumeTrue(
        isAvailable(), "COTYLA_TEST_POSTGRESQL names no PostgreSQL server; see .ci/run");
  }

  static List<Database> available() {
    return Arrays.stream(values()).filter(Database::isAvailable).toList();
  }
}
