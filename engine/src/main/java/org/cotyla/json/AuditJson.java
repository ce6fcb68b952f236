package org.cotyla.json;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.cotyla.audit.AgainstRuleOut;
import org.cotyla.audit.AuditLine;
import org.cotyla.audit.AuditReport;
import org.cotyla.audit.AuditSource;
import org.cotyla.audit.AuditTables;
import org.cotyla.audit.Breakdown;
import org.cotyla.audit.ControlChart;
import org.cotyla.audit.MissingDatum;
import org.cotyla.audit.NamedCases;
import org.cotyla.audit.NamedCount;
import org.cotyla.audit.OutcomeCurve;
import org.cotyla.audit.Proportion;
import org.cotyla.audit.RankingAudit;
import org.cotyla.audit.RowDepartures;
import org.cotyla.audit.Survival;

/** Writes an audit as JSON, laid out as {@code audit.schema.json} says. */
public final class AuditJson {

  /** The version of the layout; it grows when a reader of the earlier one would go wrong. */
  public static final int FORMAT = 1;

  private final JsonGenerator json;

  private AuditJson(JsonGenerator json) {
    this.json = json;
  }

  /** The report as JSON text, indented, with a line end at its end. */
  public static String write(AuditReport report) {
    return TidyJson.of(json -> new AuditJson(json).report(report));
  }

  /** Writes one of a list. */
  private interface Each<T> {
    void write(T one) throws IOException;
  }

  private <T> void list(String name, List<T> all, Each<T> each) throws IOException {
    json.writeArrayFieldStart(name);
    for (T one : all) {
      json.writeStartObject();
      each.write(one);
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  /** Writes the report as a value of some larger text. */
  static void write(JsonGenerator json, AuditReport report) throws IOException {
    new AuditJson(json).report(report);
  }

  private void report(AuditReport report) throws IOException {
    json.writeStartObject();
    json.writeNumberField("format", FORMAT);
    json.writeStringField("caution", AuditReport.CAUTION);
    json.writeStringField("smallNumbers", AuditReport.SMALL_NUMBERS);
    json.writeStringField("howOutcomesAreReckoned", AuditReport.OUTCOMES);
    source(report.source());
    json.writeNumberField("decisions", report.decisions());
    json.writeObjectFieldStart("whole");
    ranking(report.whole());
    json.writeEndObject();
    list("rankings", report.rankings(), this::ranking);
    list("toLookAt", report.named(), this::named);
    list("againstRuleOuts", report.againstRuleOuts(), this::againstRuleOut);
    list("missing", report.missing(), this::missing);
    list("outcomes", report.outcomes(), this::outcome);
    json.writeEndObject();
  }

  private void source(AuditSource source) throws IOException {
    json.writeObjectFieldStart("source");
    json.writeStringField("title", source.title());
    day("from", source.from());
    day("to", source.to());
    list(
        "identity",
        source.identity(),
        fact -> {
          json.writeStringField("name", fact.name());
          json.writeStringField("value", fact.value());
        });
    json.writeEndObject();
  }

  private void day(String name, Optional<LocalDate> day) throws IOException {
    if (day.isPresent()) {
      json.writeStringField(name, day.get().toString());
    }
  }

  private void ranking(RankingAudit part) throws IOException {
    json.writeStringField("ranking", AuditTables.rankingName(part.ranking()));
    json.writeObjectFieldStart("all");
    line(part.all());
    json.writeEndObject();
    json.writeObjectFieldStart("controlChart");
    json.writeNumberField("centre", part.byMonth().centre());
    list("points", part.byMonth().points(), this::point);
    json.writeEndObject();
    list("breakdowns", part.breakdowns(), this::breakdown);
    list("rows", part.rows(), this::row);
    list("reasons", part.reasons(), this::count);
  }

  private void breakdown(Breakdown breakdown) throws IOException {
    json.writeStringField("by", AuditTables.name(breakdown));
    list("values", breakdown.lines(), this::line);
  }

  private void line(AuditLine line) throws IOException {
    json.writeStringField("value", line.value());
    json.writeNumberField("decisions", line.tally().all());
    json.writeNumberField("notRanked", line.tally().notRanked());
    json.writeNumberField("notJudged", line.tally().unjudged());
    proportion("first", line.first());
    proportion("acceptable", line.acceptable());
    proportion("ruledOut", line.ruledOut());
  }

  private void proportion(String name, Proportion proportion) throws IOException {
    json.writeObjectFieldStart(name);
    json.writeNumberField("count", proportion.count());
    json.writeNumberField("of", proportion.of());
    if (proportion.share().isPresent()) {
      json.writeNumberField("share", proportion.share().getAsDouble());
      json.writeNumberField("lower", proportion.lower());
      json.writeNumberField("upper", proportion.upper());
    }
    json.writeEndObject();
  }

  private void point(ControlChart.Point point) throws IOException {
    json.writeStringField("month", point.name());
    json.writeNumberField("count", point.count());
    json.writeNumberField("of", point.of());
    json.writeNumberField("share", point.share());
    json.writeNumberField("lowerControlLimit", point.lower());
    json.writeNumberField("upperControlLimit", point.upper());
    json.writeBooleanField("beyond", point.isBeyond());
    json.writeBooleanField("rough", point.rough());
  }

  private void row(RowDepartures row) throws IOException {
    json.writeStringField("row", row.row());
    proportion("departed", row.departed());
    list("reasons", row.reasons(), this::count);
  }

  private void count(NamedCount count) throws IOException {
    json.writeStringField("name", count.name());
    json.writeNumberField("count", count.count());
  }

  private void named(NamedCases named) throws IOException {
    json.writeStringField("what", named.what());
    json.writeNumberField("count", named.count());
    json.writeArrayFieldStart("references");
    for (String reference : named.references()) {
      json.writeString(reference);
    }
    json.writeEndArray();
  }

  private void againstRuleOut(AgainstRuleOut one) throws IOException {
    json.writeStringField("place", one.place());
    json.writeStringField("reference", one.reference());
    json.writeStringField("day", one.day());
    json.writeStringField("role", one.role());
    json.writeStringField("ranking", one.ranking());
    json.writeStringField("chosen", one.chosen());
    json.writeStringField("first", one.first());
    json.writeArrayFieldStart("ruledOutBy");
    for (String row : one.ruledOutBy()) {
      json.writeString(row);
    }
    json.writeEndArray();
    json.writeStringField("reason", one.reason());
    json.writeStringField("because", one.because());
  }

  private void missing(MissingDatum datum) throws IOException {
    json.writeStringField("field", datum.field());
    json.writeNumberField("decisions", datum.decisions());
    json.writeNumberField("mightChangeFirst", datum.mightChangeFirst());
  }

  private void outcome(OutcomeCurve curve) throws IOException {
    Survival survival = curve.survival();
    json.writeStringField("outcome", curve.outcome());
    json.writeStringField("ranking", curve.ranking());
    json.writeStringField("option", curve.option());
    json.writeNumberField("followed", survival.subjects());
    json.writeNumberField("events", survival.events());
    list(
        "atRisk",
        AuditTables.TIMES,
        days -> {
          json.writeNumberField("days", days);
          json.writeNumberField("atRisk", survival.atRisk(days));
        });
    list("steps", survival.steps(), this::step);
  }

  private void step(Survival.Step step) throws IOException {
    json.writeNumberField("days", step.days());
    json.writeNumberField("atRisk", step.atRisk());
    json.writeNumberField("events", step.events());
    json.writeNumberField("free", step.free());
    json.writeNumberField("lower", step.lower());
    json.writeNumberField("upper", step.upper());
  }
}
