package org.cotyla.json;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.Map;
import org.cotyla.audit.AuditTotals;
import org.cotyla.audit.Tally;
import org.cotyla.identity.EngineVersion;
import org.cotyla.identity.ProtocolDigest;
import org.cotyla.protocol.About;
import org.cotyla.protocol.Protocol;
import org.cotyla.protocol.Ranking;
import org.cotyla.retrospective.Column;
import org.cotyla.retrospective.DraftChanges;
import org.cotyla.retrospective.Meaning;
import org.cotyla.retrospective.RetrospectiveReport;

/**
 * Writes what past cases came to as JSON, laid out as {@code retrospect.schema.json} says. The same
 * cases and protocols always give the same text, whatever the machine and however often the run was
 * broken off.
 */
public final class RetrospectJson {

  /** The version of the layout; it grows when a reader of the earlier one would go wrong. */
  public static final int FORMAT = 1;

  private final JsonGenerator json;

  private RetrospectJson(JsonGenerator json) {
    this.json = json;
  }

  /** The report as JSON text, indented, with a line end at its end. */
  public static String write(RetrospectiveReport report) {
    return TidyJson.of(json -> new RetrospectJson(json).report(report));
  }

  private void report(RetrospectiveReport report) throws IOException {
    json.writeStartObject();
    json.writeNumberField("format", FORMAT);
    json.writeStringField("caution", report.protocol().about().caution());
    json.writeStringField("engineVersion", EngineVersion.current());
    protocol("protocol", report.protocol());
    json.writeObjectFieldStart("rows");
    json.writeNumberField("read", report.counts().read());
    json.writeNumberField("judged", report.counts().judged());
    json.writeNumberField("setAside", report.counts().setAside());
    json.writeNumberField("reasonsSetAside", report.counts().reasons());
    json.writeNumberField("blank", report.blank());
    json.writeEndObject();
    json.writeArrayFieldStart("columns");
    for (Column column : report.mapping().columns()) {
      column(column);
    }
    json.writeEndArray();
    totals(report.totals());
    json.writeFieldName("audit");
    AuditJson.write(json, report.audit());
    if (report.comparison().isPresent()) {
      comparison(report, report.comparison().get());
    }
    json.writeEndObject();
  }

  private void protocol(String field, Protocol protocol) throws IOException {
    About about = protocol.about();
    json.writeObjectFieldStart(field);
    json.writeStringField("identifier", about.identifier());
    json.writeStringField("title", about.title());
    json.writeStringField("version", about.version());
    json.writeStringField("status", about.status().word());
    json.writeStringField("digest", ProtocolDigest.of(protocol));
    json.writeEndObject();
  }

  private void column(Column column) throws IOException {
    json.writeStartObject();
    json.writeStringField("heading", column.heading());
    json.writeStringField("means", column.meaning().word());
    if (column.unit().isPresent()) {
      json.writeStringField("unit", column.unit().get());
    }
    json.writeStringField(
        "note",
        column.meaning() instanceof Meaning.Ignored ignored
            ? ignored.why()
            : column.found().words());
    json.writeEndObject();
  }

  /** The ranking is empty for the decision as a whole, which counts by its worst verdict. */
  private void totals(AuditTotals totals) throws IOException {
    json.writeArrayFieldStart("totals");
    for (AuditTotals.Count count : totals.counts()) {
      Tally tally = count.tally();
      json.writeStartObject();
      json.writeStringField("by", count.dimension().word());
      json.writeStringField("ranking", count.ranking());
      json.writeStringField("name", count.name());
      json.writeStringField("value", count.value());
      json.writeNumberField("first", tally.first());
      json.writeNumberField("acceptable", tally.acceptable());
      json.writeNumberField("ruledOut", tally.ruledOut());
      json.writeNumberField("notRanked", tally.notRanked());
      json.writeNumberField("unjudged", tally.unjudged());
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private void comparison(RetrospectiveReport report, RetrospectiveReport.Comparison other)
      throws IOException {
    json.writeObjectFieldStart("against");
    protocol("protocol", other.protocol());
    json.writeArrayFieldStart("notAskedFor");
    for (String field : other.unknown()) {
      json.writeString(field);
    }
    json.writeEndArray();
    totals(other.totals());
    json.writeFieldName("audit");
    AuditJson.write(json, other.audit());
    json.writeArrayFieldStart("changes");
    for (Ranking ranking : report.protocol().rankings()) {
      changes(other.changes(), ranking.name());
    }
    changes(other.changes(), "");
    json.writeEndArray();
    json.writeArrayFieldStart("examples");
    for (DraftChanges.Example example : other.changes().examples()) {
      json.writeStartObject();
      json.writeNumberField("row", example.row());
      json.writeStringField("ranking", example.ranking());
      json.writeStringField("reference", example.reference());
      json.writeStringField("change", example.change());
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private void changes(DraftChanges changes, String ranking) throws IOException {
    for (DraftChanges.Kind kind : DraftChanges.Kind.values()) {
      for (Map.Entry<String, Long> one : changes.values(kind, ranking).entrySet()) {
        json.writeStartObject();
        json.writeStringField("kind", kind.name().toLowerCase(java.util.Locale.ROOT));
        json.writeStringField("ranking", ranking);
        json.writeStringField("value", one.getKey());
        json.writeNumberField("count", one.getValue());
        json.writeEndObject();
      }
    }
  }
}
