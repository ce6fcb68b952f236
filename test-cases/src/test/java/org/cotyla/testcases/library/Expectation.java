package org.cotyla.testcases.library;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * What is expected of a case, and why.
 *
 * @param because the clinical reason, in one or two sentences
 * @param sources keys of the workbook's sources
 * @param expect what is expected, by name
 * @param variants what is expected when a house constant has another value
 */
record Expectation(
    String because, List<String> sources, Map<String, JsonNode> expect, List<Variant> variants) {

  /**
   * The same case under another choice of the house.
   *
   * @param constant the house constant that is changed
   * @param expression what it is changed to
   */
  record Variant(String constant, String expression, String because, Map<String, JsonNode> expect) {

    /** The changed constant as it is shown: {@code migration line = 20}. */
    String plain() {
      return constant + " = " + expression;
    }
  }

  private static final ObjectMapper JSON =
      JsonMapper.builder()
          .enable(JsonParser.Feature.STRICT_DUPLICATE_DETECTION)
          .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
          .build();

  /** What a file leaves out is empty here; a test says that it is missing. */
  Expectation(
      @Nullable String because,
      @Nullable List<String> sources,
      @Nullable Map<String, JsonNode> expect,
      @Nullable List<Variant> variants) {
    this.because = because == null ? "" : because.strip();
    this.sources = sources == null ? List.of() : List.copyOf(sources);
    this.expect =
        expect == null ? Map.of() : Collections.unmodifiableMap(new LinkedHashMap<>(expect));
    this.variants = variants == null ? List.of() : List.copyOf(variants);
  }

  static Expectation read(Path file) {
    try {
      return JSON.readValue(file.toFile(), Expectation.class);
    } catch (IOException faulty) {
      throw new AssertionError(
          file.getFileName() + " cannot be read: " + faulty.getMessage(), faulty);
    }
  }
}
