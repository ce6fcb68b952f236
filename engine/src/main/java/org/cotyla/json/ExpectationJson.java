package org.cotyla.json;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectReader;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.cotyla.issue.Issues;
import org.cotyla.issue.Place;
import org.cotyla.issue.RejectedException;
import org.cotyla.name.NearestWord;
import org.cotyla.trial.Claim;
import org.cotyla.trial.Expectation;
import org.cotyla.value.Value;

/** Reads what is expected of a case from JSON. Untrusted input: its size and depth are limited. */
public final class ExpectationJson {

  private static final List<String> KEYS = List.of("because", "sources", "expect", "variants");
  private static final List<String> VARIANT_KEYS =
      List.of("constant", "expression", "because", "expect");

  private final Place place;
  private final Issues issues = new Issues();

  private ExpectationJson(String file) {
    this.place = new Place.Whole(file);
  }

  /**
   * Reads an expectation.
   *
   * @param file what to call the file in messages
   * @throws RejectedException listing every fault of the file
   */
  public static Expectation read(String file, byte[] json) {
    return new ExpectationJson(file).read(json);
  }

  private Expectation read(byte[] json) {
    JsonNode root = tree(json);
    if (!root.isObject()) {
      issues.error(
          "C050", place, "this is not an expectation", "it is an object: {\"expect\": ..}");
      throw new RejectedException(issues.list());
    }
    refuseUnknown(root, KEYS);
    List<Expectation.Variant> variants = new ArrayList<>();
    for (JsonNode variant : root.path("variants")) {
      refuseUnknown(variant, VARIANT_KEYS);
      variants.add(
          new Expectation.Variant(
              text(variant, "constant"),
              text(variant, "expression"),
              text(variant, "because"),
              claims(variant.path("expect"))));
    }
    Expectation expectation =
        new Expectation(
            text(root, "because"),
            texts(root.path("sources")),
            claims(root.path("expect")),
            variants);
    if (expectation.claims().isEmpty()) {
      issues.error("C052", place, "nothing is expected", "name under `expect` what should be so");
    }
    if (issues.hasErrors()) {
      throw new RejectedException(issues.list());
    }
    return expectation;
  }

  private JsonNode tree(byte[] json) {
    if (json.length > CaseJson.MOST_BYTES) {
      issues.error("C053", place, "the file is larger than 1 MiB", "an expectation is far smaller");
      throw new RejectedException(issues.list());
    }
    try {
      return reader().readTree(json);
    } catch (JsonProcessingException malformed) {
      JsonLocation at = malformed.getLocation();
      issues.error(
          "C050",
          place,
          at == null
              ? "this is not JSON"
              : "this is not JSON at line " + at.getLineNr() + ", column " + at.getColumnNr(),
          "often a comma is missing or too many, or a key stands twice");
    } catch (IOException unreadable) {
      issues.error("C050", place, "the file is not UTF-8 text", "save it with the encoding UTF-8");
    }
    throw new RejectedException(issues.list());
  }

  private static ObjectReader reader() {
    JsonFactory factory =
        JsonFactory.builder()
            .streamReadConstraints(
                StreamReadConstraints.builder().maxNestingDepth(CaseReader.DEEPEST).build())
            .build();
    return JsonMapper.builder(factory)
        .enable(JsonParser.Feature.STRICT_DUPLICATE_DETECTION)
        .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
        .build()
        .reader();
  }

  private void refuseUnknown(JsonNode object, List<String> keys) {
    object
        .fieldNames()
        .forEachRemaining(
            key -> {
              if (!keys.contains(key)) {
                issues.error(
                    "C051",
                    place,
                    "`" + key + "` is not a key of an expectation",
                    NearestWord.help(key, keys));
              }
            });
  }

  private List<Claim> claims(JsonNode expect) {
    List<Claim> claims = new ArrayList<>();
    for (Map.Entry<String, JsonNode> entry : expect.properties()) {
      if (entry.getKey().equals("lists")) {
        entry
            .getValue()
            .properties()
            .forEach(list -> claims.add(new Claim(list.getKey(), texts(list.getValue()))));
      } else {
        claims.add(new Claim(entry.getKey(), texts(entry.getValue())));
      }
    }
    return claims;
  }

  private static String text(JsonNode object, String key) {
    return String.join(" ", texts(object.path(key))).strip();
  }

  private static List<String> texts(JsonNode node) {
    List<String> texts = new ArrayList<>();
    if (node.isArray()) {
      node.forEach(item -> texts.addAll(texts(item)));
    } else if (node.isBoolean()) {
      texts.add(node.booleanValue() ? "yes" : "no");
    } else if (node.isNumber()) {
      texts.add(Value.of(node.decimalValue()).plain());
    } else if (!node.isMissingNode() && !node.isNull()) {
      texts.add(node.asText());
    }
    return texts;
  }
}
