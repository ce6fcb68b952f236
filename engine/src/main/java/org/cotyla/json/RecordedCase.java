package org.cotyla.json;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.cotyla.finding.Case;
import org.cotyla.finding.Given;
import org.cotyla.name.NameIndex;
import org.cotyla.protocol.Field;
import org.cotyla.protocol.Protocol;
import org.cotyla.value.ValueType;

/**
 * Reads back a case in the canonical form over which its digest is taken: each value as text in its
 * field's unit, so that no digit is lost.
 */
public final class RecordedCase {

  private static final Pattern RANGE =
      Pattern.compile("[\\[(](-?[0-9.E+-]+?)\\.\\.(-?[0-9.E+-]+)[\\])]");

  private RecordedCase() {}

  /**
   * The case.
   *
   * @param canonical the canonical form
   * @param title what to call the case
   * @throws IllegalArgumentException when it is not a case in canonical form
   */
  public static Case read(String canonical, String title, Protocol protocol) {
    NameIndex<Field> fields = NameIndex.of(protocol.fields(), Field::name);
    try {
      JsonNode root = new JsonMapper().readTree(canonical);
      List<Case.Finding> findings = new ArrayList<>();
      for (Map.Entry<String, JsonNode> finding : root.path("findings").properties()) {
        ValueType type =
            fields
                .find(finding.getKey())
                .map(field -> field.symbol().type())
                .orElse(ValueType.TEXT);
        List<Given> parts = new ArrayList<>();
        finding.getValue().forEach(part -> parts.add(given(part.asText(), type)));
        Given given = parts.size() == 1 ? parts.get(0) : new Given.OneOf(parts);
        findings.add(new Case.Finding(finding.getKey(), given));
      }
      return new Case(title, Optional.of(root.path("stage").asText()), findings);
    } catch (JsonProcessingException | NumberFormatException malformed) {
      throw new IllegalArgumentException("this is no case in canonical form", malformed);
    }
  }

  private static Given given(String part, ValueType type) {
    if (type != ValueType.NUMBER) {
      return Given.of(part);
    }
    Matcher range = RANGE.matcher(part);
    return range.matches()
        ? Given.between(new BigDecimal(range.group(1)), new BigDecimal(range.group(2)))
        : Given.of(new BigDecimal(part));
  }
}
