package org.cotyla.identity;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import org.erdtman.jcs.JsonCanonicalizer;

/** Digests over JSON in the canonical form of RFC 8785. */
final class CanonicalJson {

  private CanonicalJson() {}

  /** SHA-256 over the canonical form, as {@code sha256:} and 64 hexadecimal digits. */
  static String digest(JsonNode json) {
    try {
      byte[] canonical = new JsonCanonicalizer(json.toString()).getEncodedUTF8();
      byte[] hash = MessageDigest.getInstance("SHA-256").digest(canonical);
      return "sha256:" + HexFormat.of().formatHex(hash);
    } catch (IOException malformed) {
      throw new UncheckedIOException(malformed);
    } catch (NoSuchAlgorithmException absent) {
      throw new IllegalStateException("this Java lacks SHA-256", absent);
    }
  }
}
