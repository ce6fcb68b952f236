package org.cotyla.compile;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.cotyla.draft.Line;
import org.cotyla.draft.Text;
import org.cotyla.issue.Issues;
import org.cotyla.name.Names;
import org.cotyla.name.NearestWord;
import org.cotyla.protocol.Certainty;
import org.cotyla.protocol.Source;

/** The Sources sheet, and the keys by which everything else names its sources. */
final class References {

  private final Map<String, Source> byKey = new LinkedHashMap<>();
  private final Issues issues;

  References(List<Line> lines, Issues issues) {
    this.issues = issues;
    lines.forEach(this::add);
  }

  private void add(Line line) {
    Text key = line.get("key");
    if (key.isBlank()) {
      issues.error("W190", line.at(), "the source has no key");
      return;
    }
    Text certainty = line.get("certainty");
    Optional<Certainty> known = Certainty.of(certainty.text());
    if (known.isEmpty()) {
      issues.error(
          "W191",
          certainty.at(),
          "`" + certainty.text() + "` is not a certainty",
          NearestWord.help(certainty.text(), Certainty.words()));
    }
    if (line.get("citation").isBlank()) {
      issues.error(
          "W192", line.get("citation").at(), "source `" + key.text() + "` has no citation");
    }
    Source source =
        new Source(
            key.text(),
            line.get("citation").text(),
            line.get("year").text(),
            known.orElse(Certainty.FROM_MEMORY),
            key.at());
    Source earlier = byKey.putIfAbsent(Names.key(key.text()), source);
    if (earlier != null) {
      issues.error(
          "W193",
          key.at(),
          "source key `" + key.text() + "` is already used at " + earlier.at().plain(),
          "give one of them another key");
    }
  }

  List<Source> all() {
    return List.copyOf(byKey.values());
  }

  /** The keys named in a cell, spelt as the Sources sheet spells them. */
  List<String> keys(Text cell, String owner) {
    if (cell.isNone()) {
      issues.error("W121", cell.at(), owner + " has no source", "name a key of the sheet Sources");
      return List.of();
    }
    List<String> keys = new ArrayList<>();
    for (String part : cell.text().split("[,;]")) {
      String word = part.strip();
      Source source = byKey.get(Names.key(word));
      if (source != null) {
        keys.add(source.key());
      } else if (!word.isEmpty()) {
        issues.error(
            "W122",
            cell.at(),
            "source `" + word + "` does not stand in the sheet Sources",
            NearestWord.to(word, allKeys()).map(nearest -> "did you mean `" + nearest + "`?"));
      }
    }
    return keys;
  }

  private List<String> allKeys() {
    return byKey.values().stream().map(Source::key).toList();
  }
}
