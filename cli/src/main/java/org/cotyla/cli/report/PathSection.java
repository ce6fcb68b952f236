package org.cotyla.cli.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.cotyla.cli.report.Path.Kind;
import org.cotyla.cli.report.Path.Node;
import org.cotyla.evaluate.RankedOption;
import org.cotyla.evaluate.RankingResult;
import org.cotyla.protocol.Row;

/** The way from the findings to the option that comes first, drawn and in words. */
final class PathSection {

  /** More steps than this cannot be read on one printed page. */
  private static final int MOST_DRAWN = 60;

  private final Sheet sheet;
  private final Markup markup;

  PathSection(Sheet sheet) {
    this.sheet = sheet;
    this.markup = sheet.markup();
  }

  void write() {
    Optional<RankingResult> ranking = sheet.advice().rankings().stream().findFirst();
    Optional<RankedOption> leader = ranking.flatMap(RankingResult::leader);
    if (leader.isEmpty()) {
      return;
    }
    String name = ranking.get().ranking().name();
    markup.start("section", "aria-labelledby", "path");
    markup.leaf("h3", "From the findings to the first " + name, "id", "path");
    if (!ranking.get().firstIsCertain() && !ranking.get().leaderStandsOut()) {
      markup.leaf(
          "p",
          "Nothing certain sets one " + name + " apart from the next yet, so no way is drawn.",
          "class",
          "not-drawn");
      markup.end();
      return;
    }
    List<Node> nodes = Path.to(sheet, ranking.get(), leader.get());
    if (nodes.size() > 1 && nodes.size() <= MOST_DRAWN) {
      markup.start("figure", "class", "path");
      new PathPicture(sheet, nodes).draw("The way from the findings to " + leader.get().name());
      markup.leaf(
          "figcaption",
          "Grey: a finding. White: a decision or a vote, with the rows that made it. Only what"
              + " counts for the first "
              + name
              + " is shown.");
      markup.end();
    } else {
      markup.leaf(
          "p",
          "Not drawn: with "
              + nodes.size()
              + " steps no picture could be read. The steps in words:",
          "class",
          "not-drawn");
    }
    words(nodes);
    markup.end();
  }

  private void words(List<Node> nodes) {
    markup.leaf("h4", "The same in words");
    markup.start("ol", "class", "steps");
    for (Node node : nodes) {
      if (node.kind() != Kind.FINDING) {
        step(node);
      }
    }
    markup.end();
  }

  private void step(Node node) {
    markup.start("li");
    markup.text(node.name() + ": ").leaf("strong", node.value());
    List<Row> rows = node.rows().stream().limit(8).toList();
    if (!rows.isEmpty()) {
      markup.text(" by ");
      rows.forEach(
          row -> {
            sheet.rowLink(row);
            markup.text(" ");
          });
      if (node.rows().size() > rows.size()) {
        markup.text("and " + (node.rows().size() - rows.size()) + " more ");
      }
    }
    List<String> from = new ArrayList<>();
    node.from().forEach(one -> from.add(source(one)));
    if (!from.isEmpty() && node.kind() != Kind.OPTION) {
      markup.leaf("span", "from " + String.join("; ", from), "class", "from");
    }
    markup.end();
  }

  private static String source(Node node) {
    return node.kind() == Kind.FINDING ? node.name() + " = " + node.value() : node.name();
  }
}
