package org.cotyla.cli.text;

import java.util.List;
import org.cotyla.evaluate.DecisionResult;
import org.cotyla.evaluate.Firing;
import org.cotyla.evaluate.Standing;
import org.cotyla.protocol.Row;

/** A decision whose rows are a list, such as cautions; what only may apply stands last. */
final class ListPart {

  private static final int MOST_OPEN = 4;

  private final Page page;
  private final KnownValues known;

  ListPart(Page page, KnownValues known) {
    this.page = page;
    this.known = known;
  }

  void write(DecisionResult result) {
    if (result.counting().isEmpty() && result.table().otherwise().isEmpty()) {
      return;
    }
    page.heading(result.table().name());
    entries(result);
  }

  void entries(DecisionResult result) {
    List<Firing> applies = with(result, Standing.DECIDES);
    List<Firing> mayApply = with(result, Standing.MAY_DECIDE);
    if (result.byDefault()) {
      result.table().otherwise().ifPresent(row -> byDefault(result, row));
    }
    applies.forEach(
        firing ->
            page.marked(2, Mark.ITEM, Words.results(firing) + " [" + firing.row().id() + "]"));
    mayApply.stream().limit(MOST_OPEN).forEach(this::open);
    int rest = mayApply.size() - MOST_OPEN;
    if (rest > 0) {
      page.marked(2, Mark.OPEN, "and " + rest + " more that may apply (see --trace)");
    }
  }

  private void byDefault(DecisionResult result, Row row) {
    String entry = Words.results(result.table(), result.defaultResults());
    page.marked(2, Mark.ITEM, entry + ": " + row.because() + " [default]");
  }

  private void open(Firing firing) {
    page.marked(
        2,
        Mark.OPEN,
        "may apply: "
            + Words.results(firing)
            + " ["
            + firing.row().id()
            + "]"
            + known.waitsFor(firing));
  }

  private static List<Firing> with(DecisionResult result, Standing standing) {
    return result.firings().stream().filter(firing -> firing.standing() == standing).toList();
  }
}
