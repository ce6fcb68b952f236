package org.cotyla.json;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import org.cotyla.check.CheckReport;
import org.cotyla.check.Remark;
import org.cotyla.check.SafeguardVerdict;
import org.cotyla.evaluate.Recommendation;
import org.cotyla.identity.EngineVersion;
import org.cotyla.issue.CellRef;
import org.cotyla.issue.Issue;
import org.cotyla.issue.Severity;
import org.cotyla.protocol.About;
import org.cotyla.protocol.Acceptance;
import org.cotyla.protocol.Safeguard;
import org.cotyla.value.Truth;

/**
 * Writes what a check of a protocol found as JSON, laid out as {@code check.schema.json} says. The
 * same workbook and day always give the same text.
 */
public final class CheckJson {

  /** The version of the layout; it grows when a reader of the earlier one would go wrong. */
  public static final int FORMAT = 1;

  private CheckJson() {}

  /** The report as JSON text, indented, with a line end at its end. */
  public static String write(CheckReport report) {
    return TidyJson.of(
        json -> {
          json.writeStartObject();
          json.writeNumberField("format", FORMAT);
          json.writeStringField("caution", report.protocol().about().caution());
          json.writeStringField("engineVersion", EngineVersion.current());
          json.writeBooleanField("readable", true);
          protocol(json, report);
          json.writeObjectFieldStart("open");
          json.writeNumberField("errors", report.count(Severity.ERROR));
          json.writeNumberField("warnings", report.count(Severity.WARNING));
          json.writeNumberField("notes", report.count(Severity.NOTE));
          json.writeEndObject();
          json.writeArrayFieldStart("remarks");
          for (Remark remark : report.remarks()) {
            remark(json, remark);
          }
          json.writeEndArray();
          json.writeArrayFieldStart("safeguards");
          for (SafeguardVerdict verdict : report.safeguards()) {
            safeguard(json, verdict);
          }
          json.writeEndArray();
          json.writeEndObject();
        });
  }

  /** What is wrong with a workbook that could not be read as a protocol. */
  public static String write(List<Issue> issues) {
    return TidyJson.of(
        json -> {
          json.writeStartObject();
          json.writeNumberField("format", FORMAT);
          json.writeStringField("engineVersion", EngineVersion.current());
          json.writeBooleanField("readable", false);
          json.writeArrayFieldStart("remarks");
          for (Issue issue : issues) {
            json.writeStartObject();
            issue(json, issue);
            json.writeEndObject();
          }
          json.writeEndArray();
          json.writeEndObject();
        });
  }

  /** A case that can be read again, from findings. */
  public static String example(Recommendation answer) {
    return TidyJson.of(json -> new CaseWriter(json).write(answer.findings()));
  }

  private static void protocol(JsonGenerator json, CheckReport report) throws IOException {
    About about = report.protocol().about();
    json.writeObjectFieldStart("protocol");
    json.writeStringField("identifier", about.identifier());
    json.writeStringField("title", about.title());
    json.writeStringField("version", about.version());
    json.writeStringField("status", about.status().word());
    json.writeStringField("digest", report.protocolDigest());
    json.writeEndObject();
  }

  private static void remark(JsonGenerator json, Remark remark) throws IOException {
    json.writeStartObject();
    issue(json, remark.issue());
    json.writeStringField("about", remark.about());
    example(json, remark.example());
    if (remark.accepted().isPresent()) {
      Acceptance accepted = remark.accepted().get();
      json.writeObjectFieldStart("accepted");
      json.writeStringField("because", accepted.because());
      json.writeStringField("by", accepted.by());
      if (accepted.date().isPresent()) {
        json.writeStringField("date", accepted.date().get().toString());
      }
      json.writeStringField("at", accepted.at().plain());
      json.writeEndObject();
    }
    json.writeEndObject();
  }

  private static void issue(JsonGenerator json, Issue issue) throws IOException {
    json.writeStringField("code", issue.code());
    json.writeStringField("severity", issue.severity().word());
    json.writeStringField("place", issue.place().plain());
    if (issue.place() instanceof CellRef cell) {
      json.writeStringField("sheet", cell.sheet());
    }
    json.writeStringField("message", issue.message());
    if (issue.help().isPresent()) {
      json.writeStringField("help", issue.help().get());
    }
  }

  private static void example(JsonGenerator json, Optional<Recommendation> example)
      throws IOException {
    if (example.isPresent()) {
      json.writeFieldName("example");
      new CaseWriter(json).write(example.get().findings());
    }
  }

  private static void safeguard(JsonGenerator json, SafeguardVerdict verdict) throws IOException {
    Safeguard safeguard = verdict.safeguard();
    json.writeStartObject();
    json.writeStringField("id", safeguard.id());
    json.writeStringField("place", safeguard.at().plain());
    json.writeStringField("demand", safeguard.demand().plain());
    if (verdict instanceof SafeguardVerdict.Proven proven) {
      json.writeStringField("verdict", "proven");
      if (proven.applies() != Truth.OPEN) {
        json.writeBooleanField("applies", proven.applies() == Truth.TRUE);
      }
    } else if (verdict instanceof SafeguardVerdict.Broken broken) {
      json.writeStringField("verdict", "broken");
      example(json, Optional.of(broken.example()));
    } else if (verdict instanceof SafeguardVerdict.Undecided undecided) {
      json.writeStringField("verdict", "undecided");
      json.writeStringField("why", undecided.why());
    }
    json.writeEndObject();
  }
}
