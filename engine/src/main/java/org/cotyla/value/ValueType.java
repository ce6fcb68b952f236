package org.cotyla.value;

/** The kinds of value that a field, a calculation or a decision can have. */
public enum ValueType {
  /** A decimal number of up to 34 digits. */
  NUMBER("number"),
  /** A word or sentence; the values of a choice are texts. */
  TEXT("text"),
  /** True or false, which people write as yes or no. */
  YES_NO("yes/no"),
  /** A calendar date without time or zone. */
  DATE("date");

  private final String word;

  ValueType(String word) {
    this.word = word;
  }

  /** The word that people read and write for this kind of value. */
  public String word() {
    return word;
  }
}
