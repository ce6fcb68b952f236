package org.cotyla.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.cotyla.explain.Comparison;
import org.cotyla.json.RecordedPlan.Origin;
import org.cotyla.json.ReplanJson;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

@DisplayName("The JSON on a plan that was run again")
class ReplanJsonTest {

  @Test
  @DisplayName("is as it was read and found right")
  void golden() {
    Golden.matches("replan-torn.json", AnkleReview.withoutDigests(json("torn")));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("org.cotyla.cli.AnkleReview#names")
  @DisplayName("is laid out as the schema says, and the same each time")
  void schema(String name) throws IOException {
    assertThat(schema().validate(json(name), InputFormat.JSON)).isEmpty();
    assertThat(json(name)).isEqualTo(json(name));
  }

  @Test
  @DisplayName("says what the plan was made with, and whether that is the protocol in use")
  void origin() throws IOException {
    Origin origin = new Origin("ankle-sprain", "2.0", "sha256:" + "0".repeat(64));
    String json = ReplanJson.write(AnkleReview.replan("same"), Optional.of(origin));
    assertThat(schema().validate(json, InputFormat.JSON)).isEmpty();
    assertThat(json).contains("\"version\": \"2.0\"", "\"sameProtocol\": false");
  }

  @Test
  @DisplayName("that leaves something out or adds something is not as the schema says")
  void schemaIsStrict() throws IOException {
    String json = json("torn");
    for (String part : new String[] {"\"restated\"", "\"caution\"", "\"stillOpen\"", "\"rows\""}) {
      String other = json.replaceFirst(part, "\"other\"");
      assertThat(schema().validate(other, InputFormat.JSON)).as(part).isNotEmpty();
    }
  }

  @Test
  @DisplayName("names the digests of both cases, which differ, and of the protocol")
  void digests() {
    List<String> digests =
        Pattern.compile("\"digest\": \"(sha256:[0-9a-f]{64})\"")
            .matcher(json("torn"))
            .results()
            .map(found -> found.group(1))
            .toList();
    Comparison comparison = AnkleReview.replan("torn").comparison();
    assertThat(digests)
        .containsExactly(
            comparison.after().protocolDigest(),
            comparison.before().identity().caseDigest(),
            comparison.after().identity().caseDigest())
        .doesNotHaveDuplicates();
  }

  private static String json(String name) {
    return ReplanJson.write(AnkleReview.replan(name), Optional.empty());
  }

  static Schema schema() throws IOException {
    try (InputStream in = ReplanJson.class.getResourceAsStream("replan.schema.json")) {
      return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12).getSchema(in);
    }
  }
}
