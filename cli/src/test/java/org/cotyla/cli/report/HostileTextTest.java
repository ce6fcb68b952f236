package org.cotyla.cli.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.function.UnaryOperator;
import org.cotyla.cli.AnkleCases;
import org.cotyla.protocol.Protocol;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("Text of a workbook or a case in a report")
class HostileTextTest {

  private static final String LONG = "w".repeat(3000);

  /** The same protocol, with the text in every sentence that its author may choose. */
  private static Protocol protocol(String text) {
    UnaryOperator<String> change =
        sheets ->
            sheets
                .replace("Sprained ankle: first treatment (invented for tests)", text)
                .replace("Invented for tests of this program; not for treating anybody.", text)
                .replace("A full tear heals at rest.", text)
                .replace("Blisters must be seen.", text)
                .replace("Invented trial of supports, tests only.", text)
                .replace("Do not open the blisters.", text)
                .replace("| Go on when", "| " + text)
                .replace("| Rest as a share", "| " + text)
                .replace("| fresh\n", "| " + text + "\n")
                .replace("What to do |", text + " |");
    return AnkleReport.protocol(change);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "<script>alert(1)</script>",
        "</style><script>alert(1)</script>",
        "\"><img src=x onerror=alert(1)>",
        "' onload='alert(1)",
        "]]> &amp; &#60;b&#62; <!-- x",
        "</svg></title><svg onload=alert(1)>",
        "\\\"; } body { display: none } /*",
        "javascript:alert(1)"
      })
  @DisplayName("stays text, whatever markup it looks like")
  void staysText(String text) {
    List<String> plain =
        Page.of(AnkleReport.of(protocol("plain words"), AnkleCases.named("ruled-out").titled("a")))
            .elements();
    Page page = Page.of(AnkleReport.of(protocol(text), AnkleCases.named("ruled-out").titled(text)));
    // Wrapped lines may differ in number, so lines of drawn text are left out.
    assertThat(withoutLines(page.elements())).isEqualTo(withoutLines(plain));
    assertThat(page.all("h1").get(0).getTextContent()).isEqualTo(text);
    assertThat(page.all("title").get(0).getTextContent()).startsWith(text);
  }

  private static List<String> withoutLines(List<String> elements) {
    return elements.stream().filter(name -> !name.equals("text")).toList();
  }

  @Test
  @DisplayName("cannot turn the line round or hold characters that XML forbids")
  void oddCharacters() {
    String text = "a\u202Eb\u2066c\u0000d\u0007e\uFFFEf\uD800g\u200Bh\u0085i\nj";
    Page page =
        Page.of(AnkleReport.of(protocol("plain words"), AnkleCases.named("tie").titled(text)));
    assertThat(page.all("h1").get(0).getTextContent()).isEqualTo("a?b?c?d?e?f?g?h?i j");
  }

  @Test
  @DisplayName("may be one very long word, and no picture gets wider for it")
  void longWords() {
    Page page = Page.of(AnkleReport.of(protocol(LONG), AnkleCases.named("tie").titled(LONG)));
    assertThat(page.all("h1").get(0).getTextContent()).isEqualTo(LONG);
    assertThat(page.all("svg"))
        .allSatisfy(
            picture ->
                assertThat(Double.parseDouble(picture.getAttribute("width")))
                    .isLessThanOrEqualTo(680));
    assertThat(page.all("text"))
        .allSatisfy(text -> assertThat(text.getTextContent().length()).isLessThan(90));
  }

  @Test
  @DisplayName("cannot end the style sheet that carries the caution")
  void styleSheet() {
    String css = Stylesheet.with("\"}</style>\\ * {} ü\n");
    assertThat(css).doesNotContain("</style>", "\"}<").contains("\\22 \\7d \\3c \\2f style");
    assertThat(css).contains("\\fc ");
  }

  @Test
  @DisplayName("has no way round the writer: what runs or loads is refused")
  void writerRefuses() {
    assertThatThrownBy(() -> new Markup().start("script"))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new Markup().start("p", "onclick", "x"))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new Markup().start("a", "href", "https://example.org"))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new Markup().start("a", "xlink:href", "javascript:x"))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new Markup().start("b><i"))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new Markup().style("</style>"))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
