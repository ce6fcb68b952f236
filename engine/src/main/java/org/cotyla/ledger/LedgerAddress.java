package org.cotyla.ledger;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Properties;

/**
 * Where a ledger is: a file, or a PostgreSQL database by its JDBC address.
 *
 * @param shown how it is called in messages, without a password
 * @param url the JDBC address
 * @param file the file of an embedded ledger; nothing for a server
 */
public record LedgerAddress(String shown, String url, java.util.Optional<Path> file) {

  private static final String SQLITE = "jdbc:sqlite:";
  private static final String POSTGRESQL = "jdbc:postgresql:";

  /**
   * Reads an address: a path, {@code jdbc:sqlite:PATH} or {@code jdbc:postgresql:...}.
   *
   * @throws org.cotyla.issue.RejectedException when it is none of these
   */
  public static LedgerAddress of(String text) {
    if (text.startsWith(POSTGRESQL)) {
      return new LedgerAddress(withoutSecrets(text), text, java.util.Optional.empty());
    }
    String path = text.startsWith(SQLITE) ? text.substring(SQLITE.length()) : text;
    boolean isPath =
        !path.isBlank() && !path.startsWith("jdbc:") && !path.startsWith(":") && !isUri(path);
    if (!isPath) {
      throw LedgerFault.of(
          "L001",
          "`" + withoutSecrets(text) + "` is not the address of a ledger",
          "name a file, or jdbc:postgresql://HOST/DATABASE");
    }
    return ofFile(Path.of(path));
  }

  public static LedgerAddress ofFile(Path file) {
    return new LedgerAddress(
        file.toString(), SQLITE + file.toAbsolutePath(), java.util.Optional.of(file));
  }

  /** Whether nothing is there yet; of a server that is known only once it was asked. */
  boolean isMissingFile() {
    return file.filter(path -> !Files.isRegularFile(path)).isPresent();
  }

  /** What a connection is to be set to. */
  Properties properties() {
    Properties properties = new Properties();
    if (file.isPresent()) {
      properties.setProperty("journal_mode", "WAL");
      properties.setProperty("synchronous", "FULL");
      properties.setProperty("busy_timeout", "60000");
    } else {
      properties.setProperty("ApplicationName", "cotyla");
      properties.setProperty("options", "-c synchronous_commit=on");
    }
    return properties;
  }

  private static boolean isUri(String path) {
    return path.startsWith("file:") || path.contains("://");
  }

  private static String withoutSecrets(String url) {
    int question = url.indexOf('?');
    String plain = question < 0 ? url : url.substring(0, question);
    return plain.replaceAll("//[^/@]*@", "//");
  }
}
