package org.cotyla.draft;

import java.util.List;

/** The sheets by which a protocol's author checks it, as text; each may be empty. */
public record ChecksDraft(TableDraft safeguards, List<Line> accepted, TableDraft cases) {

  public ChecksDraft {
    accepted = List.copyOf(accepted);
  }

  public static ChecksDraft none() {
    return new ChecksDraft(TableDraft.empty(), List.of(), TableDraft.empty());
  }
}
