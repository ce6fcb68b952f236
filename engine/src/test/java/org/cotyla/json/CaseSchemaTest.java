package org.cotyla.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowable;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("The JSON Schema of a case and the reader of cases say the same")
class CaseSchemaTest {

  private static Schema schema;

  @BeforeAll
  static void load() throws IOException {
    try (InputStream in = CaseJson.class.getResourceAsStream("case.schema.json")) {
      schema = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12).getSchema(in);
    }
  }

  @ParameterizedTest(name = "{0}")
  @ValueSource(
      strings = {
        "null",
        "12",
        "1.5e3",
        "\"mild\"",
        "true",
        "{\"value\": 12}",
        "{\"value\": null, \"unit\": \"mm\"}",
        "{\"value\": \"mild\"}",
        "{\"value\": 12, \"unit\": \"mm\", \"about\": \"by tape\"}",
        "{\"value\": true, \"unit\": null}",
        "{\"low\": 1, \"high\": 2, \"unit\": \"mm\"}",
        "{\"low\": null, \"high\": null}",
        "{\"one of\": [\"mild\", \"severe\"]}",
        "{\"one of\": [{\"value\": 1, \"unit\": \"cm\"}, 3]}",
        "{\"one of\": [{\"low\": 1, \"high\": 2}]}"
      })
  @DisplayName("both take every form of a finding")
  void bothTake(String finding) {
    String json = "{\"findings\": {\"a field\": " + finding + "}}";
    assertThat(complaints(json)).isEmpty();
    assertThat(CaseJson.read(json).findings()).hasSizeLessThan(2);
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("wrongForms")
  @DisplayName("both refuse what is no form of a case")
  void bothRefuse(String kind, String json) {
    assertThat(complaints(json)).isNotEmpty();
    assertThat(catchThrowable(() -> CaseJson.read(json))).isNotNull();
  }

  /** Bad JSON and repeated keys are below a schema, and the protocol's fields above it. */
  static Stream<Arguments> wrongForms() {
    return Stream.of(BadCaseTest.wrongFormat(), BadCaseTest.wrongObject(), BadCaseTest.tooMuch())
        .flatMap(kinds -> kinds)
        .map(kind -> Arguments.of(kind.get()[0], kind.get()[1]))
        .filter(kind -> !BEYOND_A_SCHEMA.contains(String.valueOf(kind.get()[0])));
  }

  private static final List<String> BEYOND_A_SCHEMA =
      List.of(
          "a key that stands twice",
          "a field that stands twice in the same spelling",
          "a part that stands twice",
          "nesting without end",
          "a file of more than 1 MiB",
          "findings without end",
          "a number with too many digits",
          "a number with an absurd exponent");

  @Test
  @DisplayName("the blank case of a protocol fits the schema")
  void blankFits() {
    assertThat(complaints(BlankCaseJson.write(AnkleFields.protocol()))).isEmpty();
  }

  private static List<?> complaints(String json) {
    return schema.validate(json, InputFormat.JSON);
  }
}
