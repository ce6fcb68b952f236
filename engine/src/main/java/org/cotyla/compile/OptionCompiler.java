package org.cotyla.compile;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import org.cotyla.draft.Line;
import org.cotyla.draft.Text;
import org.cotyla.issue.CellRef;
import org.cotyla.issue.Issues;
import org.cotyla.name.Names;
import org.cotyla.protocol.Option;

/** The Options sheet. */
final class OptionCompiler {

  private final References references;
  private final Issues issues;

  OptionCompiler(References references, Issues issues) {
    this.references = references;
    this.issues = issues;
  }

  /** The options of each ranking, rankings and options in the order of the sheet. */
  Map<String, List<Option>> compile(List<Line> lines) {
    Map<String, List<Option>> byRanking = new LinkedHashMap<>();
    Map<String, CellRef> taken = new LinkedHashMap<>();
    for (Line line : lines) {
      Text ranking = line.get("ranking");
      Text name = line.get("option");
      if (ranking.isNone() || name.isNone()) {
        Text missing = ranking.isNone() ? ranking : name;
        String what = ranking.isNone() ? "ranking" : "name";
        issues.error("W130", missing.at(), "the option has no " + what);
        continue;
      }
      CellRef earlier = taken.putIfAbsent(Names.key(name.text()), name.at());
      if (earlier != null) {
        issues.error(
            "W131",
            name.at(),
            "the option `" + name.text() + "` already stands at " + earlier.plain());
        continue;
      }
      if (name.text().contains(",")) {
        issues.error("W132", name.at(), "the option `" + name.text() + "` has a comma in its name");
      }
      String known =
          byRanking.keySet().stream()
              .filter(key -> Names.key(key).equals(Names.key(ranking.text())))
              .findFirst()
              .orElse(ranking.text());
      byRanking.computeIfAbsent(known, key -> new ArrayList<>()).add(option(line, name));
    }
    return byRanking;
  }

  private Option option(Line line, Text name) {
    Text meaning = line.get("meaning");
    if (meaning.isNone()) {
      issues.error("W133", meaning.at(), "option `" + name.text() + "` has no meaning");
    }
    Text needs = line.get("needs");
    List<String> needed =
        needs.isNone()
            ? List.of()
            : Arrays.stream(needs.text().split(";"))
                .map(String::strip)
                .filter(need -> !need.isEmpty())
                .toList();
    return new Option(
        name.text(),
        meaning.text(),
        needed,
        leadTime(line.get("lead time")),
        references.keys(line.get("source"), "option `" + name.text() + "`"),
        name.at());
  }

  private OptionalInt leadTime(Text cell) {
    if (cell.isNone()) {
      return OptionalInt.empty();
    }
    if (!cell.text().matches("\\d{1,4}")) {
      issues.error(
          "W134",
          cell.at(),
          "`" + cell.text() + "` is not a lead time",
          "write a whole number of days from 0 to 9999, or -");
      return OptionalInt.empty();
    }
    return OptionalInt.of(Integer.parseInt(cell.text()));
  }
}
