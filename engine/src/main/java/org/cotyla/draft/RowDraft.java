package org.cotyla.draft;

import java.util.List;

/** One row of a decision sheet, as text. The lists are as long as the sheet has such columns. */
public record RowDraft(Text id, List<Text> tests, List<Text> results, Text because, Text sources) {

  public RowDraft {
    tests = List.copyOf(tests);
    results = List.copyOf(results);
  }
}
