package org.cotyla.dmn;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.nio.charset.StandardCharsets;
import org.cotyla.issue.Issue;
import org.cotyla.issue.RejectedException;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("A DMN file that cannot be trusted")
class HostileDmnTest {

  private static final String NAMESPACE = "https://www.omg.org/spec/DMN/20230324/MODEL/";
  private static final String OPEN = "<definitions xmlns=\"" + NAMESPACE + "\" name=\"m\">";

  private static String refusal(byte[] file) {
    RejectedException refused =
        catchThrowableOfType(RejectedException.class, () -> DmnImport.read("bad.dmn", file));
    return refused.getMessage();
  }

  private static String refusal(String file) {
    return refusal(file.getBytes(StandardCharsets.UTF_8));
  }

  @Test
  @DisplayName("is refused when it declares a document type, be it a bomb or a door to other files")
  void documentType() {
    String bomb =
        "<!DOCTYPE d [<!ENTITY a \"aaaa\"><!ENTITY b \"&a;&a;\">]>" + OPEN + "&b;</definitions>";
    String door = "<!DOCTYPE d SYSTEM \"file:///etc/hostname\">" + OPEN + "</definitions>";
    String expected =
        "error D001 bad.dmn: the file declares a document type, which no DMN file needs\n"
            + "      help: do not trust the file";
    assertThat(refusal(bomb)).isEqualTo(expected);
    assertThat(refusal(door)).isEqualTo(expected);
  }

  @Test
  @DisplayName("is refused when it is empty, cut off, no XML or no DMN, and the message says which")
  void otherFiles() {
    assertThat(refusal("")).startsWith("error D001 bad.dmn: the file is empty");
    assertThat(refusal(OPEN + "\n<decision name=\"a\">"))
        .isEqualTo(
            "error D001 bad.dmn: the file is not sound XML: it breaks off or goes wrong at line 2");
    assertThat(refusal("PK\u0003\u0004")).startsWith("error D001 bad.dmn: the file is not sound");
    assertThat(refusal("<html/>"))
        .isEqualTo(
            "error D002 bad.dmn: this is not a DMN model: its first element is `html`\n"
                + "      help: expected `definitions` of DMN 1.1, 1.2, 1.3, 1.4 or 1.5");
    assertThat(refusal(OPEN + "</definitions>"))
        .isEqualTo("error D003 bad.dmn: the model has no decision table that can be brought in");
  }

  @Test
  @DisplayName("is refused when it is too large, too deep or has too long a text")
  void tooMuch() {
    assertThat(refusal(new byte[DmnImport.MOST_BYTES + 1])).contains("larger than 16 MiB");
    assertThat(refusal(OPEN + "<a>".repeat(200))).contains("nested more than 100 deep");
    assertThat(refusal(OPEN + "<a/>".repeat(400_001))).contains("more than 400,000 elements");
    assertThat(refusal(OPEN + "<a>" + "x".repeat(40_000) + "</a></definitions>"))
        .contains("longer than 32,767 characters");
  }

  @Test
  @DisplayName("or has attributes of somebody's own is read by those of the standard alone")
  void foreignAttributes() {
    XmlElement root =
        XmlInput.read(
            "own.dmn",
            "<decision xmlns:own=\"urn:own\" name=\"A\" own:name=\"B\" own:label=\"C\"/>"
                .getBytes(StandardCharsets.UTF_8));
    assertThat(root.shown()).isEqualTo("A");
    assertThat(root.attributes()).containsOnlyKeys("name");
  }

  @Test
  @DisplayName("ends, and says what it left out, when names lack and types go in a circle")
  void namesAndCircles() {
    String model =
        OPEN
            + "<itemDefinition name=\"tA\"><typeRef>tB</typeRef></itemDefinition>"
            + "<itemDefinition name=\"tB\"><typeRef>tA</typeRef></itemDefinition>"
            + "<inputData name=\"side\"><variable name=\"side\" typeRef=\"tA\"/></inputData>"
            + "<inputData id=\"nameless\"/>"
            + "<decision name=\"boxed\"><context/></decision>"
            + "<decision id=\"d1\"><decisionTable/></decision>"
            + "<decision name=\"plan\"><decisionTable><input><inputExpression><text>side</text>"
            + "</inputExpression></input><output typeRef=\"string\"/>"
            + "<rule><inputEntry><text>\"left\"</text></inputEntry>"
            + "<outputEntry><text>\"cup\"</text></outputEntry></rule>"
            + "</decisionTable></decision></definitions>";
    DmnImport brought = DmnImport.read("odd.dmn", model.getBytes(StandardCharsets.UTF_8));
    assertThat(brought.draft().decisions()).hasSize(1);
    assertThat(brought.remarks().stream().map(Issue::message))
        .contains(
            "inputData `side` has the type `tA`, which a workbook has not; it is brought in as a"
                + " text",
            "inputData `nameless` has no name, and is not brought in",
            "decision `boxed` is a boxed context, which a workbook has no place for",
            "decision `d1` has no name, and is not brought in");
  }
}
