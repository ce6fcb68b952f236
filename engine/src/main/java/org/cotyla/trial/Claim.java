package org.cotyla.trial;

import java.util.List;
import java.util.Optional;
import org.cotyla.issue.CellRef;

/**
 * One thing that an answer should be.
 *
 * @param about a derived field, a calculation, {@code first <ranking>}, that with {@code is
 *     certain}, a decision that gives a list, or a word of {@link org.cotyla.protocol.ExpectWord}
 * @param values what it should be: the possible values, options, row ids or fields
 * @param at the cell that says so, when it stands in a workbook
 */
public record Claim(String about, List<String> values, Optional<CellRef> at) {

  public Claim {
    values = List.copyOf(values);
  }

  /** One that stands in no workbook. */
  public Claim(String about, List<String> values) {
    this(about, values, Optional.empty());
  }
}
