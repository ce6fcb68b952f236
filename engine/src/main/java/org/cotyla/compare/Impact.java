package org.cotyla.compare;

import java.util.List;
import org.cotyla.issue.Issue;

/**
 * What a new protocol changes for past cases, of what stands on the first page of an answer.
 *
 * @param cases how many cases were run by both protocols
 * @param changed how many of them get something else
 * @param groups the shifts, the most frequent first, each with the cases in which it is
 * @param setAside the cases that could not be run, with what each protocol says against them
 */
public record Impact(int cases, int changed, List<Group> groups, List<SetAside> setAside) {

  /** A shift and the cases in which it is, in the order of the library. */
  public record Group(Shift shift, List<String> references) {
    public Group {
      references = List.copyOf(references);
    }
  }

  /** A case that could not be run; of what only one protocol refuses, that one is named. */
  public record SetAside(String reference, String refusedBy, List<Issue> faults) {
    public SetAside {
      faults = List.copyOf(faults);
    }
  }

  public Impact {
    groups = List.copyOf(groups);
    setAside = List.copyOf(setAside);
  }
}
