package org.cotyla.audit;

import java.util.List;

/**
 * Decisions or cases that an auditor will want to look at one by one.
 *
 * @param what what they have in common
 * @param count how many they are
 * @param references the local references of the first of them
 */
public record NamedCases(String what, long count, List<String> references) {

  /** At most so many are named. */
  public static final int MOST = 50;

  public NamedCases {
    references = List.copyOf(references);
  }
}
