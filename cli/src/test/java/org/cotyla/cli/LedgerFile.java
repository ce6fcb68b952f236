package org.cotyla.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import java.util.UUID;
import org.cotyla.identity.CanonicalJson;
import org.cotyla.ledger.Document;

/** A ledger that the commands filled, and the hands of somebody who may write to its tables. */
final class LedgerFile {

  static final String CASE = Run.HOME + "/test-cases/cases/loose-cup-up-and-out.json";
  private static final String WORKBOOK = Run.HOME + "/rules/acetabular-revision.xlsx";

  private static final String SERVER = System.getenv("COTYLA_TEST_POSTGRESQL");

  private final Path folder;
  private final String address;

  LedgerFile(Path folder) {
    this(folder, folder.resolve("a.ledger").toString());
  }

  private LedgerFile(Path folder, String address) {
    this.folder = folder;
    this.address = address;
  }

  String address() {
    return address;
  }

  /** Whether there is a PostgreSQL server for tests, whose databases they may fill. */
  static boolean hasServer() {
    return SERVER != null && !SERVER.isBlank();
  }

  /**
   * 1 founding, 2 and 3 approvals, 4 release, 5 and 6 recommendations, 7 and 8 decisions, 9
   * outcome, 10 checkpoint, 11 recommendation.
   */
  static LedgerFile filled(Path folder) {
    return filled(new LedgerFile(folder));
  }

  /** The same in a new database of the PostgreSQL server. */
  static LedgerFile filledOnServer(Path folder) {
    return filled(new LedgerFile(folder, database("")));
  }

  private static String database(String rest) {
    String name = "tampering_" + UUID.randomUUID().toString().replace("-", "");
    onServer("CREATE DATABASE " + name + rest);
    return SERVER.replaceFirst("/[^/?]*(\\?|$)", "/" + name + "$1");
  }

  private static void onServer(String sql) {
    try (Connection connection = DriverManager.getConnection(SERVER)) {
      Hands.run(connection, sql);
    } catch (SQLException refused) {
      throw new IllegalStateException(sql, refused);
    }
  }

  private static String name(String address) {
    return address.replaceFirst(".*/([^/?]+)(\\?.*)?$", "$1");
  }

  private boolean isOnServer() {
    return address.startsWith("jdbc:postgresql:");
  }

  /** A file goes with its folder, a database of the server does not. */
  void drop() {
    if (isOnServer()) {
      onServer("DROP DATABASE IF EXISTS " + name(address) + " WITH (FORCE)");
    }
  }

  private static LedgerFile filled(LedgerFile made) {
    made.done("make-key", "--role", "lead", "-o", made.path("lead.key"));
    made.done("make-key", "--role", "quality lead", "-o", made.path("quality.key"));
    made.done(
        "ledger",
        "init",
        "--ledger",
        made.address(),
        "--approver",
        "lead=" + made.path("lead.key.pub"),
        "--approver",
        "quality lead=" + made.path("quality.key.pub"));
    made.approve("lead", "lead.key", "--effective-from", "2026-12-01");
    made.approve("quality lead", "quality.key");
    made.recommend("R-1");
    made.recommend("R-2");
    made.decide("R-1", "cup with porous metal augments");
    made.decide("R-2", "cup-cage", "--reason", "own experience");
    made.done(
        "record-outcome",
        "--ledger",
        made.address(),
        "--case-reference",
        "R-2",
        "--role",
        "registrar",
        "--outcome",
        "dislocation",
        "--on",
        "2026-12-15");
    made.done(
        "checkpoint",
        "--ledger",
        made.address(),
        "--as",
        "lead",
        "--key",
        made.path("lead.key"),
        "-o",
        made.path("checkpoint.json"));
    made.recommend("R-3");
    return made;
  }

  String path(String name) {
    return folder.resolve(name).toString();
  }

  Run run(String command, String... rest) {
    java.util.ArrayList<String> all = new java.util.ArrayList<>(List.of(command));
    all.addAll(List.of("--ledger", address));
    all.addAll(List.of(rest));
    return Run.of(all.toArray(String[]::new));
  }

  void done(String... arguments) {
    Run run = Run.of(arguments);
    if (run.code() != 0) {
      throw new IllegalStateException(String.join(" ", arguments) + "\n" + run.err());
    }
  }

  void approve(String role, String key, String... rest) {
    java.util.ArrayList<String> all =
        new java.util.ArrayList<>(List.of("approve", WORKBOOK, "--as", role, "--key", path(key)));
    all.addAll(List.of("--ledger", address));
    all.addAll(List.of(rest));
    done(all.toArray(String[]::new));
  }

  void recommend(String reference) {
    done("recommend", CASE, "--ledger", address, "--case-reference", reference);
  }

  void decide(String reference, String construct, String... rest) {
    java.util.ArrayList<String> all =
        new java.util.ArrayList<>(
            List.of("decide", "--ledger", address, "--case-reference", reference));
    all.addAll(List.of("--role", "consultant", "--choice", "construct=" + construct));
    all.addAll(List.of("--choice", "bearing=large head"));
    all.addAll(List.of(rest));
    done(all.toArray(String[]::new));
  }

  LedgerFile copyTo(Path other) throws IOException {
    Files.copy(folder.resolve("checkpoint.json"), other.resolve("checkpoint.json"));
    if (isOnServer()) {
      return new LedgerFile(other, database(" TEMPLATE " + name(address)));
    }
    Files.copy(folder.resolve("a.ledger"), other.resolve("a.ledger"));
    return new LedgerFile(other);
  }

  Hands hands() throws SQLException {
    return new Hands(
        DriverManager.getConnection(isOnServer() ? address : "jdbc:sqlite:" + address),
        isOnServer());
  }

  /** Changes tables with every guard out of the way. */
  record Hands(Connection connection, boolean onServer) implements AutoCloseable {

    Hands {
      if (onServer) {
        for (String table : List.of("ledger_entry", "ledger_document")) {
          run(connection, "ALTER TABLE " + table + " DISABLE TRIGGER ALL");
        }
      } else {
        for (String trigger :
            List.of(
                "ledger_entry_follows",
                "ledger_entry_keeps",
                "ledger_entry_stays",
                "ledger_document_keeps",
                "ledger_document_stays")) {
          run(connection, "DROP TRIGGER " + trigger);
        }
      }
    }

    private static void run(Connection connection, String sql) {
      try (Statement statement = connection.createStatement()) {
        statement.executeUpdate(sql);
      } catch (SQLException refused) {
        throw new IllegalStateException(sql, refused);
      }
    }

    void sql(String sql) {
      run(connection, sql);
    }

    String one(String sql) {
      try (Statement statement = connection.createStatement();
          ResultSet rows = statement.executeQuery(sql)) {
        rows.next();
        return rows.getString(1);
      } catch (SQLException refused) {
        throw new IllegalStateException(sql, refused);
      }
    }

    void replace(int sequence, String from, String to) {
      String body = one("SELECT body FROM ledger_entry WHERE sequence = " + sequence);
      if (!body.contains(from)) {
        throw new IllegalStateException("entry " + sequence + " has no " + from);
      }
      set(sequence, body.replace(from, to));
    }

    private void set(int sequence, String body) {
      prepared("UPDATE ledger_entry SET body = ? WHERE sequence = " + sequence, body);
    }

    private void prepared(String sql, Object... values) {
      try (PreparedStatement update = connection.prepareStatement(sql)) {
        for (int i = 0; i < values.length; i++) {
          update.setObject(i + 1, values[i]);
        }
        update.executeUpdate();
      } catch (SQLException refused) {
        throw new IllegalStateException(sql, refused);
      }
    }

    /** Makes the digest of one entry fit what it says. */
    void digest(int sequence) {
      String body = one("SELECT body FROM ledger_entry WHERE sequence = " + sequence);
      String digest = CanonicalJson.digest(body.getBytes(StandardCharsets.UTF_8));
      prepared("UPDATE ledger_entry SET digest = ? WHERE sequence = " + sequence, digest);
    }

    /** Makes the chain whole again from an entry on, as an insider who can reckon would. */
    void rechain(int from) {
      int last = Integer.parseInt(one("SELECT max(sequence) FROM ledger_entry"));
      digest(from);
      for (int next = from + 1; next <= last; next++) {
        String before = one("SELECT digest FROM ledger_entry WHERE sequence = " + (next - 1));
        String body = one("SELECT body FROM ledger_entry WHERE sequence = " + next);
        set(
            next,
            body.replaceFirst(
                "\"previous\":\"sha256:[0-9a-f]+\"", "\"previous\":\"" + before + "\""));
        prepared("UPDATE ledger_entry SET previous = ? WHERE sequence = " + next, before);
        digest(next);
      }
    }

    /** Puts other bytes in the place of a kept document. */
    void exchange(String digest, byte[] content) {
      prepared("UPDATE ledger_document SET content = ? WHERE digest = ?", content, digest);
    }

    /** Keeps other bytes, and gives their digest. */
    String keep(byte[] plain) {
      try {
        var packed = Document.class.getDeclaredMethod("packed");
        packed.setAccessible(true);
        Document document = Document.of(plain);
        prepared(
            "INSERT INTO ledger_document VALUES (?, ?)",
            document.digest(),
            packed.invoke(document));
        return document.digest();
      } catch (ReflectiveOperationException moved) {
        throw new IllegalStateException(moved);
      }
    }

    @Override
    public void close() throws SQLException {
      connection.close();
    }
  }
}
