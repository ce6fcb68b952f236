package org.cotyla.cli.text;

import java.util.ArrayList;
import java.util.List;
import org.cotyla.explore.Facet;
import org.cotyla.explore.Margin;

/** Parts of an answer in a sentence. */
final class FacetNames {

  private FacetNames() {}

  static String of(Facet facet) {
    return switch (facet.kind()) {
      case FIRST -> "the first " + facet.name();
      case DECISION -> facet.name();
      case RULED_OUT -> "which " + facet.name() + " is ruled out";
      case SHOWN -> "only what is listed or how points are given";
    };
  }

  /** {@code Defect class 2B becomes 3A}; of rule-outs what comes and what goes. */
  static String change(Margin.Change change) {
    Facet facet = change.facet();
    if (facet.kind() != Facet.Kind.RULED_OUT) {
      return FacetNames.of(facet) + ": " + change.from() + " becomes " + change.to();
    }
    List<String> parts = new ArrayList<>();
    if (!change.to().isEmpty()) {
      parts.add("ruled out: " + change.to());
    }
    if (!change.from().isEmpty()) {
      parts.add("no longer ruled out: " + change.from());
    }
    return String.join("; ", parts);
  }
}
