package org.cotyla.identity;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import org.erdtman.jcs.JsonCanonicalizer;

/** JSON in the canonical form of RFC 8785, and digests over it. */
public final class CanonicalJson {

  private CanonicalJson() {}

  /**
   * The canonical form of a JSON text.
   *
   * @throws UncheckedIOException when it is not sound JSON
   */
  public static String of(String json) {
    try {
      return new JsonCanonicalizer(json).getEncodedString();
    } catch (IOException malformed) {
      throw new UncheckedIOException(malformed);
    }
  }

  /** SHA-256 over bytes, as {@code sha256:} and 64 hexadecimal digits. */
  public static String digest(byte[] bytes) {
    try {
      byte[] hash = MessageDigest.getInstance("SHA-256").digest(bytes);
      return "sha256:" + HexFormat.of().formatHex(hash);
    } catch (NoSuchAlgorithmException absent) {
      throw new IllegalStateException("this Java lacks SHA-256", absent);
    }
  }

  /** SHA-256 over the canonical form. */
  static String digest(JsonNode json) {
    return digest(of(json.toString()).getBytes(StandardCharsets.UTF_8));
  }
}
