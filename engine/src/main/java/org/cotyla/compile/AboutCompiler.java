package org.cotyla.compile;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.cotyla.draft.Text;
import org.cotyla.issue.Issues;
import org.cotyla.issue.Place;
import org.cotyla.name.NearestWord;
import org.cotyla.protocol.About;
import org.cotyla.protocol.Status;

/** The Protocol sheet: what a protocol says of itself. */
final class AboutCompiler {

  private final Map<String, Text> entries;
  private final String origin;
  private final Issues issues;

  AboutCompiler(Map<String, Text> entries, String origin, Issues issues) {
    this.entries = entries;
    this.origin = origin;
    this.issues = issues;
  }

  About compile() {
    return new About(
        required("identifier"),
        required("title"),
        required("version"),
        status(),
        date("effective from"),
        date("review due"),
        Optional.ofNullable(entries.get("review due")).map(Text::at),
        optional("owner"),
        optional("approved by"),
        required("caution"),
        stages());
  }

  private String required(String key) {
    Text value = entries.get(key);
    if (value == null) {
      issues.error(
          "W101", new Place.Whole(origin), "the sheet Protocol lacks the key `" + key + "`");
      return "";
    }
    if (value.isNone()) {
      issues.error("W101", value.at(), "`" + key + "` has no value");
    }
    return value.text();
  }

  private String optional(String key) {
    Text value = entries.get(key);
    return value == null || value.isNone() ? "" : value.text();
  }

  private Status status() {
    String word = required("status");
    Optional<Status> status = Status.of(word);
    Text cell = entries.get("status");
    if (status.isEmpty() && cell != null && !cell.isNone()) {
      issues.error(
          "W102",
          cell.at(),
          "`" + word + "` is not a status",
          NearestWord.help(word, Status.words()));
    }
    return status.orElse(Status.DRAFT);
  }

  private Optional<LocalDate> date(String key) {
    Text value = entries.get(key);
    if (value == null || value.isNone()) {
      return Optional.empty();
    }
    try {
      return Optional.of(LocalDate.parse(value.text()));
    } catch (DateTimeParseException notADate) {
      issues.error(
          "W103",
          value.at(),
          "`" + value.text() + "` is not a date for `" + key + "`",
          "write year-month-day, as 2026-01-31");
      return Optional.empty();
    }
  }

  private List<String> stages() {
    Text value = entries.get("stages");
    if (value == null || value.isNone()) {
      return List.of("planning");
    }
    List<String> stages = new ArrayList<>();
    for (String part : value.text().split(",")) {
      String stage = part.strip();
      if (stage.isEmpty() || stages.contains(stage)) {
        issues.error(
            "W104",
            value.at(),
            stage.isEmpty() ? "a stage has no name" : "stage `" + stage + "` stands twice");
      } else {
        stages.add(stage);
      }
    }
    return stages.isEmpty() ? List.of("planning") : stages;
  }
}
