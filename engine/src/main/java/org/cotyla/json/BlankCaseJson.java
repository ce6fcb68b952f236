package org.cotyla.json;

import com.fasterxml.jackson.core.io.JsonStringEncoder;
import java.util.List;
import org.cotyla.protocol.Field;
import org.cotyla.protocol.Protocol;
import org.cotyla.value.Interval;
import org.cotyla.value.Value;
import org.cotyla.value.ValueSet;

/**
 * Writes a case in which nothing is recorded yet, to be filled in by hand. It is a case itself:
 * unit, allowed values and meaning stand beside each value, where they are read over.
 */
public final class BlankCaseJson {

  private static final String HELP =
      "Replace null under `value` by what is known, and leave null what is not: it is never"
          + " guessed. For a range write {\"low\": 30, \"high\": 40} instead of the object, for"
          + " several possibilities {\"one of\": [...]}. State nothing that identifies a patient.";

  private BlankCaseJson() {}

  /** The blank case of a protocol as JSON text, with an empty line between groups of fields. */
  public static String write(Protocol protocol) {
    List<String> stages = protocol.about().stages();
    StringBuilder json = new StringBuilder("{\n");
    json.append("  \"title\": \"\",\n");
    json.append("  \"stage\": ").append(text(stages.get(0))).append(",\n");
    json.append("  \"note\": ")
        .append(text(HELP + " Stages: " + String.join(", ", stages) + "."))
        .append(",\n");
    json.append("  \"findings\": {");
    String group = "";
    String separator = "\n";
    for (Field field : protocol.givenFields()) {
      json.append(separator);
      if (!group.isEmpty() && !group.equals(field.group())) {
        json.append('\n');
      }
      group = field.group();
      separator = ",\n";
      append(json, field, stages);
    }
    return json.append("\n  }\n}\n").toString();
  }

  private static void append(StringBuilder json, Field field, List<String> stages) {
    json.append("    ").append(text(field.name())).append(": {\n      \"value\": null,");
    if (!field.unit().isEmpty()) {
      json.append(" \"unit\": ").append(text(field.unit())).append(',');
    }
    json.append("\n      \"about\": ").append(text(about(field, stages))).append("\n    }");
  }

  private static String about(Field field, List<String> stages) {
    StringBuilder about = new StringBuilder(allowed(field));
    field.usual().ifPresent(usual -> about.append(", usually ").append(plain(usual)));
    if (field.stage() > 0) {
      about.append("; from the stage ").append(stages.get(field.stage())).append(" on");
    }
    return about.append(". ").append(field.meaning()).toString();
  }

  private static String allowed(Field field) {
    if (field.symbol().isChoice()) {
      return String.join(", ", field.symbol().choices());
    }
    return switch (field.symbol().type()) {
      case YES_NO -> "true or false";
      case TEXT -> "a text";
      case DATE -> "a date such as 2026-01-31" + range(field.allowed());
      case NUMBER -> "a number" + range(field.allowed());
    };
  }

  private static String range(ValueSet allowed) {
    return allowed.equals(ValueSet.all(allowed.type())) ? "" : ", " + plain(allowed);
  }

  /** A single interval in words, as {@code 0 to 120}; anything else as people write it in cells. */
  private static String plain(ValueSet values) {
    Interval hull = values.hull();
    Value low = hull.low();
    Value high = hull.high();
    if (low == null || high == null || values.parts().size() > 1) {
      return values.plain();
    }
    boolean withEnds = hull.lowIncluded() && hull.highIncluded();
    return withEnds ? low.plain() + " to " + high.plain() : values.plain();
  }

  private static String text(String plain) {
    return '"' + String.valueOf(JsonStringEncoder.getInstance().quoteAsString(plain)) + '"';
  }
}
