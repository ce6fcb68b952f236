package org.cotyla.cli.text;

import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.Set;
import org.cotyla.explain.Reason;
import org.cotyla.protocol.Source;

/** The sources of the rows that were named, as people look them up. */
final class SourcePart {

  private final Page page;

  SourcePart(Page page) {
    this.page = page;
  }

  /** Each once; what is practice or opinion has no more to look up than its key says. */
  void write(Collection<Reason> reasons) {
    Set<Source> sources = new LinkedHashSet<>();
    reasons.forEach(reason -> sources.addAll(reason.sources()));
    if (sources.isEmpty()) {
      return;
    }
    page.heading("Sources of the rows above");
    sources.forEach(
        source ->
            page.marked(
                2,
                Mark.ITEM,
                source.key() + " (" + source.certainty().word() + "): " + source.citation()));
  }
}
