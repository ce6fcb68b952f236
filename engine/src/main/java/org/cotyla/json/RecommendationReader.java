package org.cotyla.json;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.cotyla.finding.Case;
import org.cotyla.finding.Given;
import org.cotyla.issue.Issues;
import org.cotyla.issue.Place;
import org.cotyla.issue.RejectedException;
import org.cotyla.json.RecordedPlan.Origin;

/** Takes the findings out of a recommendation that was written as JSON. Used once. */
final class RecommendationReader {

  private static final Place WHOLE = new Place.InCase("");
  private static final String HELP =
      "give the file as `recommend --format json` wrote it, or the case itself";
  private static final int DEEPEST = 50;
  private static final int LONGEST_NUMBER = 80;

  private static final JsonFactory FACTORY =
      JsonFactory.builder()
          .streamReadConstraints(
              StreamReadConstraints.builder()
                  .maxNestingDepth(DEEPEST)
                  .maxNumberLength(LONGEST_NUMBER)
                  .build())
          .build();

  private static final ObjectMapper MAPPER =
      JsonMapper.builder(FACTORY)
          .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
          .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
          .build();

  private final byte[] json;
  private final Issues issues = new Issues();

  RecommendationReader(byte[] json) {
    this.json = json;
  }

  /** Whether the text is an object with the parts of a recommendation rather than of a case. */
  static boolean isRecommendation(byte[] json) {
    Set<String> keys = new HashSet<>();
    try (JsonParser parser = FACTORY.createParser(json)) {
      if (parser.nextToken() != JsonToken.START_OBJECT) {
        return false;
      }
      while (parser.nextToken() == JsonToken.FIELD_NAME) {
        keys.add(parser.currentName());
        parser.nextToken();
        parser.skipChildren();
      }
    } catch (IOException notJson) {
      // What was read so far tells the kind; the reader of that kind says what is wrong with it.
    }
    return !keys.contains("findings") && keys.contains("format") && keys.contains("protocol");
  }

  RecordedPlan read() {
    JsonNode root = tree();
    if (root.path("format").asInt() != RecommendationJson.FORMAT) {
      fault(WHOLE, "`format` is not " + RecommendationJson.FORMAT);
    }
    JsonNode given = root.path("case");
    List<Case.Finding> findings = new ArrayList<>();
    if (!given.path("findings").isArray()) {
      fault(WHOLE, "`findings` in `case` is not a list");
    }
    for (JsonNode finding : given.path("findings")) {
      finding(finding).ifPresent(findings::add);
    }
    Case plan =
        new Case(text(given, "title", "case"), Optional.of(text(given, "stage", "case")), findings);
    JsonNode protocol = root.path("protocol");
    Origin origin =
        new Origin(
            text(protocol, "identifier", "protocol"),
            text(protocol, "version", "protocol"),
            text(protocol, "digest", "protocol"));
    if (issues.hasErrors()) {
      throw new RejectedException(issues.list());
    }
    return new RecordedPlan(plan, Optional.of(origin));
  }

  private JsonNode tree() {
    try {
      if (json.length <= RecordedPlan.MOST_BYTES) {
        return MAPPER.readTree(json);
      }
      fault(WHOLE, "the file is larger than 16 MiB");
    } catch (IOException malformed) {
      fault(WHOLE, "it is not sound JSON to its end");
    }
    throw new RejectedException(issues.list());
  }

  private Optional<Case.Finding> finding(JsonNode finding) {
    String field = text(finding, "field", "a finding");
    Place place = new Place.InCase(CaseFaults.cut(field));
    String knowledge = finding.path("knowledge").asText();
    if (knowledge.equals("missing") || knowledge.equals("not yet")) {
      return Optional.empty();
    }
    Optional<String> unit =
        Optional.of(finding.path("unit").asText()).filter(code -> !code.isEmpty());
    Optional<Given> given = given(finding.path("possible"), unit);
    if (given.isEmpty()) {
      fault(place, "what it can be is not said in a way that can be read");
    }
    return given.map(known -> new Case.Finding(field, known, place));
  }

  private static Optional<Given> given(JsonNode possible, Optional<String> unit) {
    if (possible.has("value")) {
      return scalar(possible.path("value"), unit);
    }
    List<Optional<Given>> alternatives = new ArrayList<>();
    possible.path("oneOf").forEach(value -> alternatives.add(scalar(value, unit)));
    possible.path("intervals").forEach(interval -> alternatives.add(range(interval, unit)));
    List<Given> sound = alternatives.stream().flatMap(Optional::stream).toList();
    return sound.isEmpty() || sound.size() < alternatives.size()
        ? Optional.empty()
        : Optional.of(new Given.OneOf(sound));
  }

  private static Optional<Given> scalar(JsonNode value, Optional<String> unit) {
    if (value.isNumber()) {
      return Optional.of(new Given.Amount(value.decimalValue(), unit));
    }
    if (value.isBoolean()) {
      return Optional.of(Given.of(value.booleanValue()));
    }
    return value.isTextual() ? Optional.of(Given.of(value.textValue())) : Optional.empty();
  }

  /**
   * Both ends are there when a case has stated the range; a point is written as a range as well.
   */
  private static Optional<Given> range(JsonNode interval, Optional<String> unit) {
    JsonNode low = interval.path("low");
    JsonNode high = interval.path("high");
    return low.isNumber() && high.isNumber()
        ? Optional.of(new Given.Range(low.decimalValue(), high.decimalValue(), unit))
        : Optional.empty();
  }

  private String text(JsonNode object, String key, String where) {
    JsonNode text = object.path(key);
    if (!text.isTextual()) {
      fault(WHOLE, "there is no text `" + key + "` in " + where);
    }
    return text.asText();
  }

  private void fault(Place place, String what) {
    issues.error("C028", place, "the recommendation cannot be read: " + what, HELP);
  }
}
