package org.cotyla.protocol;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** What a table's result is when several rows match (DMN clause 8.2.8). */
public enum HitPolicy {
  /** At most one row matches. */
  UNIQUE("U"),
  /** Several may match, but all give the same. */
  ANY("A"),
  /** Of the matching rows, the one whose result has the highest priority. */
  PRIORITY("P"),
  /** The first matching row in the order of the sheet. */
  FIRST("F"),
  /** All results in the order of the sheet. */
  RULE_ORDER("R"),
  /** All results in descending priority. */
  OUTPUT_ORDER("O"),
  /** All results in no particular order; here in the order of the sheet. */
  COLLECT("C"),
  /** The sum of all results. */
  SUM("C+"),
  /** The smallest result. */
  MINIMUM("C<"),
  /** The largest result. */
  MAXIMUM("C>"),
  /** How many results there are. */
  COUNT("C#");

  private final String letters;

  HitPolicy(String letters) {
    this.letters = letters;
  }

  /** The standard's letters for it. */
  public String letters() {
    return letters;
  }

  /** Whether one row's result is the table's result. */
  public boolean isSingleHit() {
    return this == UNIQUE || this == ANY || this == PRIORITY || this == FIRST;
  }

  /** Whether the result is a list of rows' results. */
  public boolean isList() {
    return this == RULE_ORDER || this == OUTPUT_ORDER || this == COLLECT;
  }

  /** Whether the result is one number worked out from all rows' results. */
  public boolean isAggregate() {
    return !isSingleHit() && !isList();
  }

  /** Whether the order of an output's values decides. */
  public boolean needsPriorities() {
    return this == PRIORITY || this == OUTPUT_ORDER;
  }

  public static Optional<HitPolicy> of(String letters) {
    return Arrays.stream(values())
        .filter(policy -> policy.letters.equalsIgnoreCase(letters.replace(" ", "")))
        .findFirst();
  }

  public static List<String> allLetters() {
    return Arrays.stream(values()).map(HitPolicy::letters).toList();
  }
}
