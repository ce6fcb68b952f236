package org.cotyla.ledger;

import java.time.Instant;

/**
 * One entry of a ledger as it stands there.
 *
 * @param sequence its number, counted from 1 without gaps
 * @param time when it was written, in UTC
 * @param content what it records
 * @param previous the digest of the entry before it; {@link #NONE_BEFORE} for the first
 * @param digest SHA-256 over the UTF-8 bytes of the body
 * @param body the entry as canonical JSON (RFC 8785): kind, sequence, time, previous and content
 */
public record Entry(
    long sequence, Instant time, Content content, String previous, String digest, String body) {

  /** What stands for the digest before the first entry. */
  public static final String NONE_BEFORE = "sha256:" + "0".repeat(64);

  public Kind kind() {
    return content.kind();
  }
}
