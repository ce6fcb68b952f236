package org.cotyla.compile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.cotyla.draft.Headings;
import org.cotyla.draft.Line;
import org.cotyla.draft.ProtocolDraft;
import org.cotyla.draft.Text;
import org.cotyla.expression.Dialect;
import org.cotyla.expression.StandardFunctions;
import org.cotyla.identity.ProtocolDigest;
import org.cotyla.issue.CellRef;
import org.cotyla.issue.Issues;
import org.cotyla.protocol.Picture;
import org.cotyla.protocol.PictureKind;
import org.cotyla.protocol.PictureRole;
import org.cotyla.protocol.Protocol;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

@DisplayName("The sheet Pictures")
class PicturesTest {

  private static final String[] CURVE = {
    "Load by width|curve|first|finding|width|width in mm",
    "load by width|||from|0|",
    "Load by width|Curve||to|house line|",
    "Load by width||first|step|5|",
    "Load by width|||up|load * 2|twice the load",
    "Load by width|||line|house line|line"
  };

  @Test
  @DisplayName("gives each picture its kind, its page and its parts with their cells")
  void gives() {
    Picture picture = protocol(CURVE).pictures().get(0);
    assertThat(picture.title()).isEqualTo("Load by width");
    assertThat(picture.kind()).isEqualTo(PictureKind.CURVE);
    assertThat(picture.onFirstPage()).isTrue();
    assertThat(picture.parts()).hasSize(6);
    Picture.Part up = picture.part(PictureRole.UP).orElseThrow();
    assertThat(up.at().plain()).isEqualTo("Pictures!E6");
    assertThat(up.label()).isEqualTo("twice the load");
  }

  @Test
  @DisplayName("is no part of the protocol's digest, since it decides nothing")
  void digest() {
    assertThat(ProtocolDigest.of(protocol(CURVE))).isEqualTo(ProtocolDigest.of(protocol()));
  }

  static Stream<Arguments> faults() {
    return Stream.of(
        arguments("-|curve||up|load|", "W240 Pictures!A2: the part names no picture"),
        arguments("A|curves||up|load|", "W241 Pictures!B2: `curves` is not a kind of picture"),
        arguments("A|flow|frist|plan|load|", "W242 Pictures!C2: `frist` is not a page"),
        arguments(
            "A|flow||plan|load|;A|lists||plan|class|", "W243 Pictures!B3: `lists` differs from"),
        arguments("A|flow||figure|load|", "W244 Pictures!A2: picture `A` lacks the role `plan`"),
        arguments(
            "A|zone chart||across|1|;A|||across|2|;A|||up|3|",
            "W245 Pictures!E3: the role `across` stands twice; the other is at Pictures!E2"),
        arguments(
            "A|zone chart||across|1|;A|||up|3|;A|||zone left|0|z",
            "W246 Pictures!E4: the zone `z` has not one of each side: zone left"),
        arguments("A|flow||paln|load|", "W247 Pictures!D2: `paln` is not a role in a flow"),
        arguments("A|flow||plan|laod|", "W249 Pictures!E2: "),
        arguments("A|flow||plan|class|;A|||turn|load|", "W248 Pictures!E3: `load` is not a list"),
        arguments("A|curve||finding|grade|", "W248 Pictures!E2: `grade` is not a given number"),
        arguments("A|zone chart||across|class|;A|||up|1|", "W249 Pictures!E2: `class` gives a"));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("faults")
  @DisplayName("has its faults told at their cells")
  void refuses(String lines, String fault) {
    Issues issues = new Issues();
    assertThat(compile(issues, lines.split(";"))).isEmpty();
    assertThat(issues.list())
        .anySatisfy(
            issue ->
                assertThat(issue.code() + " " + issue.place().plain() + ": " + issue.message())
                    .startsWith(fault));
  }

  @Test
  @DisplayName("has a nearest word for a slip")
  void nearestWord() {
    Issues issues = new Issues();
    compile(issues, "A|flow||paln|load|");
    assertThat(issues.list().get(0).help().orElseThrow()).contains("did you mean `plan`?");
  }

  private static Protocol protocol(String... lines) {
    Issues issues = new Issues();
    return compile(issues, lines).orElseThrow(() -> new AssertionError(issues.list().toString()));
  }

  private static java.util.Optional<Protocol> compile(Issues issues, String... lines) {
    ProtocolDraft plain = new SampleDraft().draft();
    List<Line> pictures = new ArrayList<>();
    for (String line : lines) {
      Map<String, Text> cells = new HashMap<>();
      String[] texts = line.split("\\|", -1);
      int row = pictures.size() + 1;
      for (int i = 0; i < texts.length; i++) {
        cells.put(Headings.PICTURES.get(i), new Text(texts[i], new CellRef("Pictures", row, i)));
      }
      pictures.add(new Line(new CellRef("Pictures", row, 0), cells));
    }
    ProtocolDraft draft =
        new ProtocolDraft(
            plain.origin(),
            plain.about(),
            plain.fields(),
            plain.options(),
            plain.calculations(),
            plain.sources(),
            plain.changes(),
            plain.decisions(),
            pictures,
            plain.checks(),
            List.of(),
            List.of());
    return new ProtocolCompiler(StandardFunctions.all(), Dialect.KIND).compile(draft, issues);
  }
}
