package org.cotyla.protocol;

import java.util.List;
import java.util.OptionalInt;
import org.cotyla.issue.CellRef;

/**
 * Something that can be recommended.
 *
 * @param name its name, unique in the protocol
 * @param meaning one sentence
 * @param needs what must be to hand for it
 * @param leadTimeDays how many days it takes to have it, when that is stated
 * @param sources keys of sources
 */
public record Option(
    String name,
    String meaning,
    List<String> needs,
    OptionalInt leadTimeDays,
    List<String> sources,
    CellRef at) {

  public Option {
    needs = List.copyOf(needs);
    sources = List.copyOf(sources);
  }
}
