package org.cotyla.ledger;

/**
 * Somebody who signs.
 *
 * @param role the role under which the key is known to the ledger
 * @param privatePem the private key
 */
public record Signer(String role, String privatePem) {

  /** Keeps the private key out of every message. */
  @Override
  public String toString() {
    return role;
  }
}
