package org.cotyla.compile;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.cotyla.draft.Line;
import org.cotyla.draft.Text;
import org.cotyla.issue.Issues;
import org.cotyla.protocol.Acceptance;

/** The Accepted sheet. */
final class AcceptanceCompiler {

  private final Issues issues;

  AcceptanceCompiler(Issues issues) {
    this.issues = issues;
  }

  List<Acceptance> compile(List<Line> lines) {
    List<Acceptance> accepted = new ArrayList<>();
    for (Line line : lines) {
      Text code = line.get("code");
      if (!code.text().toUpperCase(Locale.ROOT).matches("[A-Z]\\d{3}")) {
        issues.error(
            "W210",
            code.at(),
            "`" + code.text() + "` is not the code of a warning",
            "write it as `cotyla check` prints it, as W173");
      }
      required(line.get("about"), "what it is about", "the id of a row, a name, or sheet!cell");
      required(line.get("because"), "why it is accepted", "give the reason in one sentence");
      required(line.get("by"), "who accepted it", "name a role, never a person");
      accepted.add(
          new Acceptance(
              code.text().toUpperCase(Locale.ROOT),
              line.get("about").text(),
              line.get("because").text(),
              line.get("by").text(),
              date(line.get("date")),
              code.at()));
    }
    return accepted;
  }

  private void required(Text cell, String what, String help) {
    if (cell.isNone()) {
      issues.error("W211", cell.at(), "the accepted warning does not say " + what, help);
    }
  }

  private Optional<LocalDate> date(Text cell) {
    if (cell.isNone()) {
      return Optional.empty();
    }
    try {
      return Optional.of(LocalDate.parse(cell.text()));
    } catch (DateTimeParseException notADate) {
      issues.error(
          "W103",
          cell.at(),
          "`" + cell.text() + "` is not a date for `date`",
          "write year-month-day, as 2026-01-31");
      return Optional.empty();
    }
  }
}
