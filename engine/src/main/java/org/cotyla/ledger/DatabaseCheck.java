package org.cotyla.ledger;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Looks at what a ledger's database says beside its rows: whether its file is whole, so that an
 * index gives every row that the table has, and whether the triggers are those that were made.
 */
final class DatabaseCheck {

  private static final Pattern TRIGGER = Pattern.compile("CREATE TRIGGER (\\w+)");
  private static final String EMBEDDED_TRIGGERS =
      "SELECT name FROM sqlite_master WHERE type = 'trigger'"
          + " AND tbl_name IN ('ledger_entry', 'ledger_document')";
  private static final String SERVER_TRIGGERS =
      "SELECT tgname FROM pg_trigger WHERE NOT tgisinternal AND tgenabled IN ('O', 'A')"
          + " AND tgrelid IN ('ledger_entry'::regclass, 'ledger_document'::regclass)";

  private final Connection connection;
  private final boolean embedded;

  DatabaseCheck(Connection connection, boolean embedded) {
    this.connection = connection;
    this.embedded = embedded;
  }

  /** What is wrong with the file of an embedded ledger; a server looks after its own. */
  Optional<String> damage() throws SQLException {
    if (!embedded) {
      return Optional.empty();
    }
    return texts("PRAGMA integrity_check(1)").stream()
        .filter(line -> !line.equals("ok"))
        .findFirst()
        .map(line -> "the file of the ledger is damaged: " + line.strip());
  }

  /** How the triggers differ from those that a ledger is made with. */
  Optional<String> changedGuards() throws SQLException {
    TreeSet<String> missing = new TreeSet<>(made());
    TreeSet<String> strange = new TreeSet<>(texts(embedded ? EMBEDDED_TRIGGERS : SERVER_TRIGGERS));
    TreeSet<String> found = new TreeSet<>(strange);
    strange.removeAll(missing);
    missing.removeAll(found);
    if (missing.isEmpty() && strange.isEmpty()) {
      return Optional.empty();
    }
    Function<TreeSet<String>, String> listed =
        names -> names.stream().map(name -> "`" + name + "`").collect(Collectors.joining(", "));
    List<String> said = new ArrayList<>();
    if (!missing.isEmpty()) {
      said.add("without " + listed.apply(missing));
    }
    if (!strange.isEmpty()) {
      said.add("with " + listed.apply(strange));
    }
    return Optional.of(
        "the database's own guards against slips were changed since the ledger was made: "
            + String.join(", ", said));
  }

  private List<String> made() {
    String script = "/org/cotyla/ledger/" + LedgerSchema.folder(embedded) + "/V1__ledger.sql";
    try (InputStream in = DatabaseCheck.class.getResourceAsStream(script)) {
      String sql = in == null ? "" : new String(in.readAllBytes(), StandardCharsets.UTF_8);
      return TRIGGER.matcher(sql).results().map(found -> found.group(1)).toList();
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  private List<String> texts(String sql) throws SQLException {
    try (Statement statement = connection.createStatement();
        ResultSet rows = statement.executeQuery(sql)) {
      List<String> texts = new ArrayList<>();
      while (rows.next()) {
        texts.add(rows.getString(1));
      }
      return texts;
    }
  }
}
