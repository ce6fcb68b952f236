package org.cotyla.issue;

/** How serious an issue is, by its consequence. */
public enum Severity {
  /** What was given is refused as a whole. */
  ERROR,
  /** It is accepted, but may not say what its author meant. */
  WARNING,
  /** Something worth knowing; nothing needs doing. */
  NOTE;

  public String word() {
    return name().toLowerCase(java.util.Locale.ROOT);
  }
}
