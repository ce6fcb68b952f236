package org.cotyla.explore;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.cotyla.protocol.DecisionTable;
import org.cotyla.protocol.Protocol;
import org.cotyla.protocol.Ranking;
import org.cotyla.protocol.ShownAs;

/**
 * A part of an answer that findings can change.
 *
 * @param kind what kind of part it is
 * @param name the decision or the ranking; blank for anything that is shown
 */
public record Facet(Kind kind, String name) {

  /** The kinds of parts, the weightiest first. */
  public enum Kind {
    /** The option that comes first in a ranking. */
    FIRST,
    /** What a decision of the first page comes to. */
    DECISION,
    /** Which options of a ranking are ruled out. */
    RULED_OUT,
    /**
     * Any row that is shown: in a decision of the first page, a list, or for or against an option.
     */
    SHOWN
  }

  /** Anything that is shown at all. */
  static final Facet SHOWN = new Facet(Kind.SHOWN, "");

  /** The parts of a protocol's answers that are weighed one by one, the weightiest kind first. */
  static List<Facet> of(Protocol protocol) {
    List<Facet> facets = new ArrayList<>();
    for (Ranking ranking : protocol.rankings()) {
      facets.add(new Facet(Kind.FIRST, ranking.name()));
      facets.add(new Facet(Kind.RULED_OUT, ranking.name()));
    }
    for (DecisionTable table : protocol.decisions()) {
      if (table.shownAs() == ShownAs.HEADLINE && !table.votes()) {
        facets.add(new Facet(Kind.DECISION, table.name()));
      }
    }
    facets.sort(Comparator.comparing(Facet::kind));
    return facets;
  }

  /** Whether it is a first option or a decision of the first page. */
  public boolean isHeadline() {
    return kind == Kind.FIRST || kind == Kind.DECISION;
  }
}
