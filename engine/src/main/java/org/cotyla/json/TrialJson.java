package org.cotyla.json;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import org.cotyla.issue.Issue;
import org.cotyla.protocol.About;
import org.cotyla.protocol.Row;
import org.cotyla.trial.Difference;
import org.cotyla.trial.Outcome;
import org.cotyla.trial.TrialReport;
import org.cotyla.trial.Tried;

/**
 * Writes what came of cases that were tried as JSON, laid out as {@code trial.schema.json} says.
 * The same protocol and cases always give the same text.
 */
public final class TrialJson {

  /** The version of the layout; it grows when a reader of the earlier one would go wrong. */
  public static final int FORMAT = 1;

  private final JsonGenerator json;

  private TrialJson(JsonGenerator json) {
    this.json = json;
  }

  /** The report as JSON text, indented, with a line end at its end. */
  public static String write(TrialReport report) {
    return TidyJson.of(json -> new TrialJson(json).report(report));
  }

  private void report(TrialReport report) throws IOException {
    About about = report.protocol().about();
    json.writeStartObject();
    json.writeNumberField("format", FORMAT);
    json.writeStringField("caution", about.caution());
    json.writeObjectFieldStart("protocol");
    json.writeStringField("identifier", about.identifier());
    json.writeStringField("title", about.title());
    json.writeStringField("version", about.version());
    json.writeStringField("status", about.status().word());
    json.writeStringField("digest", report.protocolDigest());
    json.writeEndObject();
    json.writeNumberField("tried", report.tried().size());
    json.writeNumberField("passed", report.tried().stream().filter(Tried::passed).count());
    json.writeNumberField("failed", report.failed().size());
    json.writeNumberField("refused", report.refused().size());
    json.writeArrayFieldStart("cases");
    for (Tried tried : report.tried()) {
      tried(tried);
    }
    json.writeEndArray();
    json.writeArrayFieldStart("unexercised");
    for (TrialReport.Unexercised unexercised : report.unexercised()) {
      json.writeStartObject();
      json.writeStringField("decision", unexercised.decision().name());
      row(unexercised.row());
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private void tried(Tried tried) throws IOException {
    json.writeStartObject();
    json.writeStringField("suite", tried.suite());
    json.writeStringField("name", tried.name());
    json.writeStringField("because", tried.because());
    if (tried.outcome() instanceof Outcome.Failed failed) {
      json.writeStringField("outcome", "failed");
      differences(failed.differences());
    } else if (tried.outcome() instanceof Outcome.Refused refused) {
      json.writeStringField("outcome", "refused");
      issues(refused.issues());
    } else {
      json.writeStringField("outcome", "passed");
    }
    json.writeEndObject();
  }

  private void differences(List<Difference> differences) throws IOException {
    json.writeArrayFieldStart("differences");
    for (Difference difference : differences) {
      json.writeStartObject();
      json.writeStringField("about", difference.about());
      json.writeStringField("expected", difference.expected());
      json.writeStringField("got", difference.got());
      if (difference.expectedAt().isPresent()) {
        json.writeStringField("expectedAt", difference.expectedAt().get().plain());
      }
      json.writeArrayFieldStart("rows");
      for (Row row : difference.rows()) {
        json.writeStartObject();
        row(row);
        json.writeEndObject();
      }
      json.writeEndArray();
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private void row(Row row) throws IOException {
    json.writeStringField("row", row.id());
    json.writeStringField("at", row.at().plain());
  }

  private void issues(List<Issue> issues) throws IOException {
    json.writeArrayFieldStart("faults");
    for (Issue issue : issues) {
      json.writeStartObject();
      json.writeStringField("code", issue.code());
      json.writeStringField("severity", issue.severity().word());
      json.writeStringField("place", issue.place().plain());
      json.writeStringField("message", issue.message());
      Optional<String> help = issue.help();
      if (help.isPresent()) {
        json.writeStringField("help", help.get());
      }
      json.writeEndObject();
    }
    json.writeEndArray();
  }
}
