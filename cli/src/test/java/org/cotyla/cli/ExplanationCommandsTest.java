package org.cotyla.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.cotyla.json.WhyJson;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("The commands why, why-not and what-if")
class ExplanationCommandsTest {

  private static final String SHIPPED =
      Run.HOME.resolve("test-cases/cases/loose-cup-up-and-out.json").toString();

  @TempDir private Path folder;

  @Test
  @DisplayName("answer within 80 columns, with the caution first and the identity last")
  void text() {
    for (Run run :
        List.of(
            Run.of("why", SHIPPED, "Cup Cage"),
            Run.of("why-not", SHIPPED, "hemispherical_cup", "--against", "cup-cage"),
            Run.of("what-if", SHIPPED, "hip centre migration=3.6 cm", "Ischial Lysis="))) {
      assertThat(run.err()).isEmpty();
      assertThat(run.code()).isZero();
      assertThat(run.out())
          .startsWith("Decision support for licensed surgeons.")
          .contains("Protocol acetabular-revision ", "engine ");
      assertThat(run.out().lines()).allSatisfy(line -> assertThat(line.length()).isLessThan(81));
    }
  }

  @ParameterizedTest(name = "{0} {1}")
  @CsvSource({
    "why,cup-cage,why",
    "why,large head,why",
    "why-not,cup-cage,why-not",
    "why-not,hemispherical cup,why-not",
    "what-if,hip centre migration=12,what-if",
    "what-if,ischial lysis=,what-if"
  })
  @DisplayName("answer in JSON laid out as the schema says, and the same each time")
  void json(String command, String argument, String schema) throws IOException {
    Run run = Run.of(command, SHIPPED, argument, "--format", "json");
    assertThat(run.code()).isZero();
    assertThat(schema(schema).validate(run.out(), InputFormat.JSON)).isEmpty();
    assertThat(Run.of(command, SHIPPED, argument, "--format", "json")).isEqualTo(run);
    String other = run.out().replaceFirst("\"caution\"", "\"other\"");
    assertThat(schema(schema).validate(other, InputFormat.JSON)).isNotEmpty();
  }

  @Test
  @DisplayName("say in JSON, as in text, what would have to be true for an option to come first")
  void toComeFirst() throws IOException {
    JsonNode behind = answer("why", "cup-cage").at("/toComeFirst");
    JsonNode alone = answer("smallest-change", "construct=cup-cage");
    assertThat(behind.at("/ways")).isNotEmpty().isEqualTo(alone.at("/ways"));
    assertThat(behind.at("/findingsAtMost")).isEqualTo(alone.at("/findingsAtMost"));
    assertThat(behind.at("/end")).isEqualTo(alone.at("/end"));
    // What is first for certain needs nothing.
    assertThat(answer("why", "large head").has("toComeFirst")).isFalse();
  }

  private static JsonNode answer(String command, String argument) throws IOException {
    return new ObjectMapper()
        .readTree(Run.of(command, SHIPPED, argument, "--format", "json").out());
  }

  @Test
  @DisplayName("list the faults of the case and of the names together, each with the nearest word")
  void faults() throws IOException {
    String bad =
        Files.writeString(folder.resolve("bad.json"), "{\"findings\": {\"crp\": \"high\"}}")
            .toString();
    Run why = Run.of("why-not", bad, "cup cagge", "--against", "large hed", "--ranking", "bering");
    assertThat(why.code()).isEqualTo(1);
    assertThat(why.err())
        .contains("error C004 case field `crp`", "error C042 option `cup cagge`")
        .contains("error C044 ranking `bering`", "did you mean `bearing`?")
        .contains("did you mean `cup-cage`?", "did you mean `large head`?");
    Run whatIf = Run.of("what-if", SHIPPED, "migration=3", "defect class=2A", "crp=x");
    assertThat(whatIf.code()).isEqualTo(1);
    assertThat(whatIf.err())
        .contains("error C001 change `migration=3`: this protocol has no such field")
        .contains("did you mean `hip centre migration`")
        .contains("error C003 change `defect class=2A`", "error C004 change `crp=x`")
        .endsWith("3 errors; nothing was done\n");
  }

  @Test
  @DisplayName("refuse options of two rankings, and what is no change, in plain lines")
  void refused() {
    assertThat(Run.of("why-not", SHIPPED, "cup-cage", "--against", "large head").err())
        .contains("C045 against `large head`: it is a bearing");
    Run run = Run.of("what-if", SHIPPED, "migration", "=3");
    assertThat(run.code()).isEqualTo(2);
    assertThat(run.err()).contains("`migration`, `=3` are no changes");
  }

  @Test
  @DisplayName("explain themselves within 80 columns")
  void help() {
    for (String command : List.of("why", "why-not", "what-if")) {
      Run help = Run.of(command, "--help");
      assertThat(help.code()).isZero();
      assertThat(help.out()).startsWith("Usage: cotyla " + command);
      assertThat(help.out().lines()).allSatisfy(line -> assertThat(line.length()).isLessThan(81));
    }
  }

  private static Schema schema(String name) throws IOException {
    try (InputStream in = WhyJson.class.getResourceAsStream(name + ".schema.json")) {
      return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12).getSchema(in);
    }
  }
}
