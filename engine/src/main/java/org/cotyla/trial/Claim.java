package org.cotyla.trial;

import java.util.List;

/**
 * One thing that an answer should be.
 *
 * @param about a derived field, a calculation, {@code first <ranking>}, that with {@code is
 *     certain}, a decision that gives a list, or a word of {@link org.cotyla.protocol.ExpectWord}
 * @param values what it should be: the possible values, options, row ids or fields
 */
public record Claim(String about, List<String> values) {

  public Claim {
    values = List.copyOf(values);
  }
}
