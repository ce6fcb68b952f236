package org.cotyla.dmn;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.cotyla.protocol.About;
import org.cotyla.protocol.Calculation;
import org.cotyla.protocol.Change;
import org.cotyla.protocol.DecisionTable;
import org.cotyla.protocol.Field;
import org.cotyla.protocol.Option;
import org.cotyla.protocol.Ranking;
import org.cotyla.protocol.Source;
import org.cotyla.value.ValueType;

/**
 * What the workbook says of each thing, by the workbook's own headings. It goes into the model as
 * extension elements, so that nothing is lost on the way out and in.
 */
final class WorkbookEntries {

  private WorkbookEntries() {}

  static Map<String, String> of(About about) {
    Map<String, String> entries = new LinkedHashMap<>();
    entries.put("identifier", about.identifier());
    entries.put("title", about.title());
    entries.put("version", about.version());
    entries.put("status", about.status().word());
    about.effectiveFrom().ifPresent(date -> entries.put("effective from", date.toString()));
    about.reviewDue().ifPresent(date -> entries.put("review due", date.toString()));
    entries.put("owner", about.owner());
    entries.put("approved by", about.approvedBy());
    entries.put("caution", about.caution());
    entries.put("stages", String.join(", ", about.stages()));
    return entries;
  }

  static Map<String, String> of(Field field, About about) {
    Map<String, String> entries = new LinkedHashMap<>();
    entries.put("name", field.name());
    entries.put("kind", field.isGiven() ? "given" : "derived");
    entries.put("type", type(field));
    entries.put("unit", field.unit());
    entries.put("allowed", allowed(field));
    entries.put("usual", field.usual().map(usual -> usual.plain()).orElse(""));
    entries.put("stage", about.stages().isEmpty() ? "" : about.stages().get(field.stage()));
    entries.put("group", field.group());
    entries.put("meaning", field.meaning());
    entries.put("source", keys(field.sources()));
    return entries;
  }

  private static String type(Field field) {
    if (field.symbol().isChoice()) {
      return "choice";
    }
    ValueType type = field.symbol().type();
    return type.word();
  }

  private static String allowed(Field field) {
    if (field.symbol().isChoice()) {
      return String.join(", ", field.symbol().choices());
    }
    String allowed = ModelTypes.allowed(field.symbol(), field.allowed(), false);
    return field.symbol().type() == ValueType.YES_NO ? "" : allowed;
  }

  static Map<String, String> of(Ranking ranking, Option option) {
    Map<String, String> entries = new LinkedHashMap<>();
    entries.put("ranking", ranking.name());
    entries.put("option", option.name());
    entries.put("meaning", option.meaning());
    entries.put("needs", String.join("; ", option.needs()));
    option.leadTimeDays().ifPresent(days -> entries.put("lead time", String.valueOf(days)));
    entries.put("source", keys(option.sources()));
    return entries;
  }

  static Map<String, String> of(Calculation calculation) {
    Map<String, String> entries = new LinkedHashMap<>();
    entries.put("name", calculation.name());
    entries.put("unit", calculation.unit());
    entries.put("meaning", calculation.meaning());
    entries.put("source", keys(calculation.sources()));
    return entries;
  }

  static Map<String, String> of(DecisionTable table) {
    Map<String, String> entries = new LinkedHashMap<>();
    entries.put("decision", table.name());
    entries.put("ranks", table.ranking().orElse(""));
    entries.put("shown as", table.shownAs().word());
    return entries;
  }

  static Map<String, String> of(Source source) {
    Map<String, String> entries = new LinkedHashMap<>();
    entries.put("key", source.key());
    entries.put("citation", source.citation());
    entries.put("year", source.year());
    entries.put("certainty", source.certainty().word());
    return entries;
  }

  static Map<String, String> of(Change change) {
    Map<String, String> entries = new LinkedHashMap<>();
    entries.put("version", change.version());
    entries.put("date", change.date());
    entries.put("author role", change.authorRole());
    entries.put("what changed", change.what());
    entries.put("why", change.why());
    entries.put("retired ids", String.join(", ", change.retiredIds()));
    return entries;
  }

  static String keys(List<String> sources) {
    return String.join(", ", sources);
  }

  /** The entries as sentences for people who read the model in a viewer. */
  static String described(Map<String, String> entries, List<String> headings) {
    return headings.stream()
        .filter(heading -> !entries.getOrDefault(heading, "").isEmpty())
        .map(
            heading ->
                heading.equals("meaning")
                    ? entries.get(heading)
                    : heading + ": " + entries.get(heading))
        .collect(Collectors.joining("\n"));
  }
}
