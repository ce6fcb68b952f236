package org.cotyla.identity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import java.math.BigDecimal;
import java.util.Map;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.cotyla.compile.SampleDraft;
import org.cotyla.finding.Case;
import org.cotyla.finding.FindingsReader;
import org.cotyla.finding.Given;
import org.cotyla.protocol.Protocol;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class DigestsTest {

  private static final String SAMPLE = digest(new SampleDraft());

  private static String digest(SampleDraft draft) {
    return ProtocolDigest.of(draft.protocol());
  }

  static Stream<Arguments> sameMeaning() {
    return Stream.<Map.Entry<String, UnaryOperator<SampleDraft>>>of(
            Map.entry("no space", d -> d.cell(0, 1, 1, "<=house line")),
            Map.entry("a sign of autocorrect", d -> d.cell(0, 1, 1, "\u2264 House_Line")),
            Map.entry("a choice in quotes", d -> d.cell(0, 0, 2, "\u201clow\u201d")),
            Map.entry("a result in another case", d -> d.cell(0, 0, 3, "a")),
            Map.entry("superfluous zeros", d -> d.cell(2, 0, 5, "2.00")),
            Map.entry("another status", d -> d.about("status", "in force")),
            Map.entry(
                "a safeguard, which demands and gives nothing",
                d -> d.safeguard("SF-1", "-", "A", "be ruled out", "brace", "Reason.", "S")),
            Map.entry("a measurement error", d -> d.set("Fields", 0, "measurement error", "3")),
            Map.entry("another owner", d -> d.about("owner", "board")),
            Map.entry("a later review", d -> d.about("review due", "2027-01-01")))
        .map(entry -> arguments(entry.getKey(), entry.getValue()));
  }

  static Stream<Arguments> otherMeaning() {
    return Stream.<Map.Entry<String, UnaryOperator<SampleDraft>>>of(
            Map.entry("a threshold", d -> d.set("Calculations", 0, "expression", "31")),
            Map.entry("a relation", d -> d.cell(0, 1, 1, "< house line")),
            Map.entry("a choice", d -> d.cell(0, 0, 2, "-")),
            Map.entry("a result", d -> d.cell(0, 0, 3, "B")),
            Map.entry("points", d -> d.cell(2, 0, 5, "3")),
            Map.entry("a reason", d -> d.cell(0, 0, 4, "Another reason.")),
            Map.entry("a row id", d -> d.cell(0, 0, 0, "K-9")),
            Map.entry("a hit policy", d -> d.head(0, 1, "F")),
            Map.entry("a default row", d -> d.row(0, "default", "-", "-", "B")),
            Map.entry("the order of choices", d -> d.set("Fields", 3, "allowed", "B, A, C")),
            Map.entry("what is allowed", d -> d.set("Fields", 0, "allowed", "[0..121]")),
            Map.entry("a unit", d -> d.set("Fields", 0, "unit", "-")),
            Map.entry("a certainty", d -> d.set("Sources", 0, "certainty", "low")),
            Map.entry("the caution", d -> d.about("caution", "Use it.")))
        .map(entry -> arguments(entry.getKey(), entry.getValue()));
  }

  @ParameterizedTest(name = "{0}")
  @DisplayName("What changes no meaning changes no digest of the protocol")
  @MethodSource("sameMeaning")
  void same(String what, UnaryOperator<SampleDraft> edit) {
    assertThat(digest(edit.apply(new SampleDraft()))).isEqualTo(SAMPLE);
  }

  @ParameterizedTest(name = "{0}")
  @DisplayName("What changes the meaning changes the digest of the protocol")
  @MethodSource("otherMeaning")
  void other(String what, UnaryOperator<SampleDraft> edit) {
    assertThat(digest(edit.apply(new SampleDraft()))).isNotEqualTo(SAMPLE);
  }

  @Test
  @DisplayName("A digest is the SHA-256 in hexadecimal digits, and names its method")
  void form() {
    assertThat(SAMPLE).matches("sha256:[0-9a-f]{64}");
  }

  @Test
  @DisplayName(
      "Cases that state the same have one digest, whatever names, units and title they use")
  void cases() {
    Protocol protocol = new SampleDraft().protocol();
    FindingsReader reader = new FindingsReader(protocol);
    String digest = CaseDigest.of(reader.read(Case.of(Map.of("width", 34))));
    Given centimetres = Given.of(new BigDecimal("3.40"), "cm");
    Case spelt = Case.of(Map.of("WIDTH", centimetres)).titled("Another title");
    assertThat(CaseDigest.of(reader.read(spelt))).isEqualTo(digest);
    assertThat(CaseDigest.of(reader.read(spelt.atStage("theatre")))).isNotEqualTo(digest);
    assertThat(CaseDigest.of(reader.read(Case.of(Map.of("width", 35))))).isNotEqualTo(digest);
    assertThat(CaseDigest.of(reader.read(Case.of(Map.of())))).isNotEqualTo(digest);
  }
}
