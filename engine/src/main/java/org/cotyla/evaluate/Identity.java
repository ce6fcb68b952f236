package org.cotyla.evaluate;

/**
 * What a recommendation can be traced back to.
 *
 * @param protocolDigest SHA-256 over the protocol's meaning (RFC 8785), as {@code sha256:...}
 * @param engineVersion the engine's version
 * @param caseDigest SHA-256 over the case as it was read
 */
public record Identity(String protocolDigest, String engineVersion, String caseDigest) {}
