package org.cotyla.ledger;

/**
 * A statement that somebody signed.
 *
 * @param role the role that signed
 * @param key the name of the key
 * @param statement what was signed, as canonical JSON (RFC 8785); its UTF-8 bytes are what counts
 * @param value the Ed25519 signature in base64
 */
public record Signature(String role, String key, String statement, String value) {}
