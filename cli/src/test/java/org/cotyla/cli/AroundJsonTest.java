package org.cotyla.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.InputStream;
import org.cotyla.explore.Goals;
import org.cotyla.issue.RejectedException;
import org.cotyla.json.SmallestChangeJson;
import org.cotyla.json.WhatMattersJson;
import org.cotyla.protocol.Protocol;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

@DisplayName("The JSON on what lies around a case")
class AroundJsonTest {

  @ParameterizedTest(name = "{0}")
  @MethodSource("org.cotyla.cli.AnkleCases#names")
  @DisplayName("is laid out as the schemas say, and the same each time")
  void schemas(String name) throws IOException {
    assertThat(schema("what-matters").validate(matters(name), InputFormat.JSON)).isEmpty();
    assertThat(schema("smallest-change").validate(change(name), InputFormat.JSON)).isEmpty();
    assertThat(matters(name)).isEqualTo(matters(name));
    assertThat(change(name)).isEqualTo(change(name));
  }

  @Test
  @DisplayName("that leaves something out or adds something is not as the schemas say")
  void schemasAreStrict() throws IOException {
    for (String part : new String[] {"caution", "missing", "beyond", "canChange"}) {
      String other = matters("complete").replaceFirst("\"" + part + "\"", "\"other\"");
      assertThat(schema("what-matters").validate(other, InputFormat.JSON)).as(part).isNotEmpty();
    }
    String verdict = matters("incomplete").replaceFirst("\"verdict\"", "\"other\"");
    assertThat(schema("what-matters").validate(verdict, InputFormat.JSON)).isNotEmpty();
    for (String part : new String[] {"caution", "wanted", "end", "different", "orElse"}) {
      String other = change("complete").replaceFirst("\"" + part + "\"", "\"other\"");
      assertThat(schema("smallest-change").validate(other, InputFormat.JSON)).as(part).isNotEmpty();
    }
  }

  @Test
  @DisplayName("says what the commands say, and the commands exit with 0")
  void commands() {
    String nothing = "{\"findings\": {\"sinus tract\": true}}";
    Run change =
        Run.with(nothing, false, "smallest-change", "-", "staged revision", "--format", "json");
    assertThat(change.err()).isEmpty();
    assertThat(change.code()).isZero();
    assertThat(change.out()).contains("\"is\": \"staged revision\"");
  }

  @Test
  @DisplayName("is refused for what no answer can be, with the nearest word, and exits with 1")
  void unknownGoal() {
    Run run = Run.with("{\"findings\": {}}", false, "smallest-change", "-", "cub cage");
    assertThat(run.code()).isEqualTo(Main.FAULTS);
    assertThat(run.err())
        .contains("C055 acetabular-revision: `cub cage` is no option and no value")
        .contains("did you mean `cup-cage`?");
    Run usage = Run.of("smallest-change", "-", "cup-cage", "--findings", "9");
    assertThat(usage.code()).isEqualTo(Main.WRONG_USAGE);
    assertThat(usage.err()).contains("--findings is a number from 1 to 3, not 9");
  }

  @Test
  @DisplayName("is refused for a value that two decisions give, with the ways to say which")
  void ambiguousGoal() {
    Protocol protocol =
        TextProtocol.ankle(
            text ->
                text.replace("derived | yes/no | - | -", "derived | choice | - | 1, 2")
                    .replace("FI-1 | yes | yes", "FI-1 | yes | 1")
                    .replace("default | - | no", "default | - | 2"));
    assertThatThrownBy(() -> Goals.one(protocol, "1"))
        .isInstanceOf(RejectedException.class)
        .hasMessageContaining("C056")
        .hasMessageContaining("write `grade=1` or `film needed=1`");
    assertThat(Goals.one(protocol, "film needed = 1").about()).isEqualTo("film needed");
  }

  private static String matters(String name) {
    return WhatMattersJson.write(
        AnkleAround.matters(name), AnkleAround.conditions(name), AnkleAround.margins(name));
  }

  private static String change(String name) {
    return SmallestChangeJson.write(AnkleAround.change(name, "plaster cast"));
  }

  private static Schema schema(String name) throws IOException {
    try (InputStream in = WhatMattersJson.class.getResourceAsStream(name + ".schema.json")) {
      return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12).getSchema(in);
    }
  }
}
