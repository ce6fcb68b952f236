package org.cotyla.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import org.cotyla.json.RecommendationJson;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

@DisplayName("The answer as JSON")
class RecommendationJsonTest {

  private static Schema schema;

  @BeforeAll
  static void load() throws IOException {
    try (InputStream in =
        RecommendationJson.class.getResourceAsStream("recommendation.schema.json")) {
      schema = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12).getSchema(in);
    }
  }

  @Test
  @DisplayName("holds everything, to the letter, of a case in which much is open")
  void holdsAll() {
    Golden.matches("incomplete.json", json("incomplete"));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("cases")
  @DisplayName("fits the published schema on each case")
  void fitsTheSchema(String name) {
    assertThat(complaints(json(name))).isEmpty();
  }

  @Test
  @DisplayName("fits the published schema with the house protocol")
  void houseFitsTheSchema() {
    Run run = Run.with("{\"findings\": {}}", false, "recommend", "-", "--format", "json");
    assertThat(run.code()).isZero();
    assertThat(complaints(run.out())).isEmpty();
  }

  @ParameterizedTest(name = "{0} replaced by {1}")
  @CsvSource(
      delimiter = ';',
      value = {
        "\"format\": 1; \"format\": 2",
        "\"caution\"; \"advice\"",
        "\"status\": \"in force\"; \"status\": \"good\"",
        "\"digest\": \"sha256:; \"digest\": \"md5:",
        "\"knowledge\": \"missing\"; \"knowledge\": \"guessed\"",
        "\"certain\": false; \"certain\": 0",
        "\"oneOf\"; \"anyOf\"",
        "\"lowIncluded\": true; \"lowIncluded\": \"yes\"",
        "\"place\": 1; \"place\": 0",
        "\"availability\": \"available\"; \"availability\": \"free\"",
        "\"standing\": \"may decide\"; \"standing\": \"maybe\"",
        "\"cell\": \"Grade!; \"cell\": \"Grade#",
        "\"holds\": \"open\"; \"holds\": \"unknown\"",
        "\"remarks\"; \"extra\""
      })
  @DisplayName("no longer fits the schema when a part of it is wrong")
  void schemaRefuses(String right, String wrong) {
    String json = json("blank");
    assertThat(json).contains(right);
    assertThat(complaints(json.replaceFirst(Pattern.quote(right), wrong))).isNotEmpty();
  }

  @Test
  @DisplayName("is the same to the byte in every language")
  void isTheSameEverywhere() {
    String here = json("incomplete");
    Locale locale = Locale.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag("tr-TR"));
      assertThat(json("incomplete")).isEqualTo(here);
    } finally {
      Locale.setDefault(locale);
    }
  }

  static Iterable<String> cases() {
    return AnkleCases.names();
  }

  private static String json(String name) {
    return RecommendationJson.write(AnkleCases.recommendation(name));
  }

  private static List<?> complaints(String json) {
    return schema.validate(json, InputFormat.JSON);
  }
}
