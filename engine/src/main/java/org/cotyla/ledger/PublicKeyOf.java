package org.cotyla.ledger;

import java.util.Base64;
import org.cotyla.identity.CanonicalJson;

/**
 * A public key and the role that signs with it.
 *
 * @param role a role, never a person's name
 * @param key an Ed25519 key as X.509 SubjectPublicKeyInfo in base64
 */
public record PublicKeyOf(String role, String key) {

  /**
   * @throws IllegalArgumentException when the key is no base64
   */
  public PublicKeyOf {
    Base64.getDecoder().decode(key);
  }

  /** What the key is called wherever it signs: SHA-256 over its bytes. */
  public String name() {
    return CanonicalJson.digest(Base64.getDecoder().decode(key));
  }
}
