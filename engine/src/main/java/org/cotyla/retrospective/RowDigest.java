package org.cotyla.retrospective;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** SHA-256 over the rows that were read so far. */
final class RowDigest {

  private final MessageDigest digest = sha256();

  void add(RawRow row) {
    digest.update(Long.toString(row.number()).getBytes(StandardCharsets.UTF_8));
    digest.update((byte) 0);
    digest.update(row.text().getBytes(StandardCharsets.UTF_8));
    digest.update((byte) 0);
  }

  /** The digest so far; more rows may follow. */
  String soFar() {
    try {
      return HexFormat.of().formatHex(((MessageDigest) digest.clone()).digest());
    } catch (CloneNotSupportedException impossible) {
      throw new IllegalStateException(impossible);
    }
  }

  static String of(String text) {
    return HexFormat.of().formatHex(sha256().digest(text.getBytes(StandardCharsets.UTF_8)));
  }

  private static MessageDigest sha256() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException impossible) {
      throw new IllegalStateException(impossible);
    }
  }
}
