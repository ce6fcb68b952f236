package org.cotyla.identity;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Collection;
import org.cotyla.protocol.Calculation;
import org.cotyla.protocol.DecisionTable;
import org.cotyla.protocol.Field;
import org.cotyla.protocol.Option;
import org.cotyla.protocol.Protocol;
import org.cotyla.protocol.Ranking;
import org.cotyla.protocol.Row;
import org.cotyla.protocol.Source;

/**
 * The digest of a protocol over everything that an answer can show or depend on.
 *
 * <p>Left out, since they change without the protocol changing: its status, dates, owner, approvals
 * and history, and how the workbook looks; and, since no recommendation shows them or depends on
 * them, the measurement errors of fields, the reasons and outcomes that decisions are recorded by,
 * safeguards, cases and pictures. Cells count by their meaning: {@code >=15} and {@code ≥ 15} are
 * one.
 */
public final class ProtocolDigest {

  private ProtocolDigest() {}

  public static String of(Protocol protocol) {
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    json.put("identifier", protocol.about().identifier());
    json.put("title", protocol.about().title());
    json.put("version", protocol.about().version());
    json.put("caution", protocol.about().caution());
    addAll(json.putArray("stages"), protocol.about().stages());
    ArrayNode fields = json.putArray("fields");
    protocol.fields().forEach(field -> add(fields.addObject(), field));
    ArrayNode rankings = json.putArray("rankings");
    protocol.rankings().forEach(ranking -> add(rankings.addObject(), ranking));
    ArrayNode calculations = json.putArray("calculations");
    protocol.calculations().forEach(calculation -> add(calculations.addObject(), calculation));
    ArrayNode decisions = json.putArray("decisions");
    protocol.decisions().forEach(decision -> add(decisions.addObject(), decision));
    ArrayNode sources = json.putArray("sources");
    protocol.sources().forEach(source -> add(sources.addObject(), source));
    return CanonicalJson.digest(json);
  }

  /** The digest of the reasons and outcomes that decisions are recorded by. */
  public static String ofLists(Protocol protocol) {
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    ArrayNode reasons = json.putArray("reasons");
    protocol
        .reasons()
        .forEach(
            reason ->
                reasons.addObject().put("name", reason.name()).put("meaning", reason.meaning()));
    ArrayNode outcomes = json.putArray("outcomes");
    protocol
        .outcomes()
        .forEach(
            outcome ->
                outcomes
                    .addObject()
                    .put("name", outcome.name())
                    .put("counts", outcome.counts().word())
                    .put("meaning", outcome.meaning()));
    return CanonicalJson.digest(json);
  }

  private static void add(ObjectNode json, Field field) {
    json.put("name", field.name());
    json.put("given", field.isGiven());
    json.put("type", field.symbol().type().word());
    json.put("unit", field.unit());
    json.put("allowed", field.allowed().plain());
    addAll(json.putArray("choices"), field.symbol().choices());
    field.usual().ifPresent(usual -> json.put("usual", usual.plain()));
    json.put("stage", field.stage());
    json.put("group", field.group());
    json.put("meaning", field.meaning());
    addAll(json.putArray("sources"), field.sources());
  }

  private static void add(ObjectNode json, Ranking ranking) {
    json.put("name", ranking.name());
    ArrayNode options = json.putArray("options");
    for (Option option : ranking.options()) {
      ObjectNode entry = options.addObject();
      entry.put("name", option.name());
      entry.put("meaning", option.meaning());
      addAll(entry.putArray("needs"), option.needs());
      option.leadTimeDays().ifPresent(days -> entry.put("leadTimeDays", days));
      addAll(entry.putArray("sources"), option.sources());
    }
  }

  private static void add(ObjectNode json, Calculation calculation) {
    json.put("name", calculation.name());
    json.put("expression", calculation.expression().print());
    json.put("unit", calculation.unit());
    json.put("meaning", calculation.meaning());
    addAll(json.putArray("sources"), calculation.sources());
  }

  private static void add(ObjectNode json, DecisionTable decision) {
    json.put("name", decision.name());
    json.put("asks", decision.asks());
    json.put("hitPolicy", decision.hitPolicy().letters());
    json.put("shownAs", decision.shownAs().word());
    decision.ranking().ifPresent(ranking -> json.put("ranks", ranking));
    addAll(
        json.putArray("when"),
        decision.inputs().stream().map(input -> input.symbol().name()).toList());
    addAll(
        json.putArray("then"),
        decision.outputs().stream().map(output -> output.symbol().name()).toList());
    ArrayNode rows = json.putArray("rows");
    decision.rows().forEach(row -> add(rows.addObject(), row));
    decision.otherwise().ifPresent(row -> add(json.putObject("default"), row));
  }

  private static void add(ObjectNode json, Row row) {
    json.put("id", row.id());
    addAll(
        json.putArray("tests"),
        row.tests().stream().map(test -> test.prepared().test().print()).toList());
    addAll(
        json.putArray("results"),
        row.results().stream().map(result -> result.expression().print()).toList());
    row.vote()
        .ifPresent(
            vote -> {
              json.put("option", vote.option());
              json.put("effect", vote.effect().word());
              json.put("points", vote.points().stripTrailingZeros().toPlainString());
            });
    json.put("because", row.because());
    addAll(json.putArray("sources"), row.sources());
  }

  private static void add(ObjectNode json, Source source) {
    json.put("key", source.key());
    json.put("citation", source.citation());
    json.put("year", source.year());
    json.put("certainty", source.certainty().word());
  }

  private static void addAll(ArrayNode array, Collection<String> texts) {
    texts.forEach(array::add);
  }
}
