package org.cotyla.compile;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.cotyla.draft.Line;
import org.cotyla.draft.Text;
import org.cotyla.issue.CellRef;
import org.cotyla.issue.Issues;
import org.cotyla.name.Names;
import org.cotyla.name.NearestWord;
import org.cotyla.protocol.Counts;
import org.cotyla.protocol.Outcome;
import org.cotyla.protocol.Reason;

/** The sheets Reasons and Outcomes: the words in which is recorded what was done. */
final class HouseLists {

  private final Issues issues;

  HouseLists(Issues issues) {
    this.issues = issues;
  }

  List<Reason> reasons(List<Line> lines) {
    return named(lines, "reason").stream()
        .map(line -> new Reason(line.get("reason").text(), meaning(line, "reason"), line.at()))
        .toList();
  }

  List<Outcome> outcomes(List<Line> lines) {
    return named(lines, "outcome").stream()
        .map(
            line ->
                new Outcome(
                    line.get("outcome").text(), counts(line), meaning(line, "outcome"), line.at()))
        .toList();
  }

  private List<Line> named(List<Line> lines, String what) {
    List<Line> named = new ArrayList<>();
    Map<String, CellRef> taken = new HashMap<>();
    for (Line line : lines) {
      Text name = line.get(what);
      if (name.isNone()) {
        issues.error("W230", name.at(), "the " + what + " has no name");
        continue;
      }
      CellRef earlier = taken.putIfAbsent(Names.key(name.text()), name.at());
      if (earlier != null) {
        issues.error(
            "W231",
            name.at(),
            "the " + what + " `" + name.text() + "` already stands at " + earlier.plain());
        continue;
      }
      named.add(line);
    }
    return named;
  }

  private String meaning(Line line, String what) {
    Text meaning = line.get("meaning");
    if (meaning.isNone()) {
      issues.error("W232", meaning.at(), what + " `" + line.get(what).text() + "` has no meaning");
    }
    return meaning.text();
  }

  private Counts counts(Line line) {
    Text word = line.get("counts");
    Optional<Counts> counts = Counts.of(word.text());
    if (counts.isEmpty()) {
      issues.error(
          "W233",
          word.at(),
          "`" + word.text() + "` does not say how the outcome counts",
          NearestWord.help(word.text(), Counts.words()));
    }
    return counts.orElse(Counts.EVENT);
  }
}
