package org.cotyla.dmn;

import java.util.stream.Collectors;
import org.cotyla.protocol.Option;
import org.cotyla.protocol.Ranking;

/** Writes a ranking as a boxed context that any engine with full FEEL can run. */
final class RankingWriter {

  private static final String STANDINGS =
      """
      for place in 1..count(options) return {
        place: place,
        name: options[place],
        favour: votes[option = name and effect = "favour"].points,
        oppose: votes[option = name and effect = "oppose"].points,
        points: (if count(favour) = 0 then 0 else sum(favour)) - (if count(oppose) = 0 then 0 else sum(oppose)),
        barred: count(votes[option = name and effect = "rule out"]) > 0
      }""";

  private static final String AVAILABLE =
      "sort(standings[barred = false], function(one, other)"
          + " one.points > other.points or (one.points = other.points and one.place < other.place))";

  private final XmlOutput xml;

  RankingWriter(XmlOutput xml) {
    this.xml = xml;
  }

  void write(Node.Ranked ranked) {
    xml.open("context");
    entry("options", "[" + names(ranked.ranking()) + "]");
    entry("votes", votes(ranked));
    entry("standings", STANDINGS);
    entry("available", AVAILABLE);
    entry("ruled out", "standings[barred = true].name");
    entry("first", "if count(available) = 0 then null else available[1].name");
    xml.close();
  }

  private static String votes(Node.Ranked ranked) {
    String lists =
        ranked.voices().stream()
            .map(
                voice ->
                    "if "
                        + voice.name()
                        + " = null then [] else "
                        + (voice.isList() ? voice.name() : "[" + voice.name() + "]"))
            .collect(Collectors.joining(", "));
    return lists.isEmpty() ? "[]" : "concatenate(" + lists + ")";
  }

  private void entry(String name, String text) {
    xml.open("contextEntry");
    xml.empty("variable", "name", name);
    xml.open("literalExpression").text("text", text).close();
    xml.close();
  }

  static String names(Ranking ranking) {
    return ranking.options().stream()
        .map(Option::name)
        .map(ModelWording::quoted)
        .collect(Collectors.joining(", "));
  }
}
