package org.cotyla.ledger;

import org.cotyla.identity.CanonicalJson;

/** Bytes to be kept in a ledger, packed before anybody has to wait for it. */
public final class Document {

  private final String digest;
  private final byte[] packed;

  private Document(String digest, byte[] packed) {
    this.digest = digest;
    this.packed = packed;
  }

  public static Document of(byte[] plain) {
    return new Document(CanonicalJson.digest(plain), Deflate.pack(plain));
  }

  /** SHA-256 over the plain bytes. */
  public String digest() {
    return digest;
  }

  byte[] packed() {
    return packed.clone();
  }
}
