package org.cotyla.cli.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TimeZone;
import org.cotyla.cli.AnkleCases;
import org.cotyla.cli.Golden;
import org.cotyla.cli.TextProtocol;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Element;

@DisplayName("The report as HTML")
class HtmlReportTest {

  static Iterable<String> cases() {
    return AnkleCases.names();
  }

  @ParameterizedTest(name = "{0}")
  @ValueSource(strings = {"complete", "incomplete"})
  @DisplayName("says and draws what it should on each case")
  void says(String name) {
    String page = AnkleReport.of(name);
    String style = page.substring(page.indexOf("<style>"), page.indexOf("</style>"));
    assertThat(style).contains("@page {").doesNotContain("var(");
    Golden.matches("report-" + name + ".html", page.replace(style, "<style>"));
  }

  @ParameterizedTest(name = "{0}, {1}")
  @CsvSource({"tr-TR, Asia/Kolkata", "ar-EG, UTC", "th-TH-u-nu-thai, America/Adak"})
  @DisplayName("is the same to the byte in every language and time zone")
  void isTheSameEverywhere(String language, String zone) {
    String here = AnkleReport.of("incomplete");
    Locale locale = Locale.getDefault();
    TimeZone timeZone = TimeZone.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag(language));
      TimeZone.setDefault(TimeZone.getTimeZone(zone));
      assertThat(AnkleReport.of("incomplete")).isEqualTo(here);
    } finally {
      Locale.setDefault(locale);
      TimeZone.setDefault(timeZone);
    }
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("cases")
  @DisplayName("loads nothing and runs nothing")
  void loadsNothing(String name) {
    Page page = Page.of(AnkleReport.of(name));
    assertThat(page.elements())
        .doesNotContain("script", "img", "image", "iframe", "link", "object");
    for (Element element : page.all("*")) {
      for (int i = 0; i < element.getAttributes().getLength(); i++) {
        String attribute = element.getAttributes().item(i).getNodeName();
        String value = element.getAttributes().item(i).getNodeValue();
        assertThat(attribute).doesNotStartWith("on").isNotIn("src", "style");
        if (attribute.endsWith("href")) {
          assertThat(value).startsWith("#");
        }
      }
    }
    assertThat(page.all("style").get(0).getTextContent()).doesNotContain("url(", "@import");
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("cases")
  @DisplayName("gives every picture a title and a description that its label names")
  void describesPictures(String name) {
    Page page = Page.of(AnkleReport.of(name));
    assertThat(page.all("svg")).isNotEmpty();
    for (Element picture : page.all("svg")) {
      List<String> own = new ArrayList<>();
      for (String part : List.of("title", "desc")) {
        Element text = (Element) picture.getElementsByTagNameNS("*", part).item(0);
        assertThat(text.getTextContent()).as(part).isNotBlank();
        own.add(text.getAttribute("id"));
      }
      assertThat(picture.getAttribute("aria-labelledby")).isEqualTo(String.join(" ", own));
      assertThat(picture.getAttribute("role")).isIn("img", "group");
    }
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("cases")
  @DisplayName("has a language, one first heading, and no heading that skips a level")
  void headings(String name) {
    Page page = Page.of(AnkleReport.of(name));
    assertThat(page.document().getDocumentElement().getAttribute("lang")).isEqualTo("en-GB");
    List<Integer> levels =
        page.elements().stream()
            .filter(element -> element.matches("h[1-6]"))
            .map(element -> element.charAt(1) - '0')
            .toList();
    assertThat(levels).startsWith(1);
    assertThat(levels.stream().filter(level -> level == 1)).hasSize(1);
    for (int i = 1; i < levels.size(); i++) {
      assertThat(levels.get(i)).isLessThanOrEqualTo(levels.get(i - 1) + 1);
    }
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("cases")
  @DisplayName("has a scope on every table heading, and every link and label leads somewhere")
  void linksAndLabels(String name) {
    Page page = Page.of(AnkleReport.of(name));
    Set<String> ids = new HashSet<>();
    page.all("*").forEach(element -> ids.add(element.getAttribute("id")));
    assertThat(page.all("th")).allMatch(heading -> !heading.getAttribute("scope").isEmpty());
    for (Element link : page.all("a")) {
      assertThat(ids).contains(link.getAttribute("href").substring(1));
    }
    for (Element element : page.all("*")) {
      String labels = element.getAttribute("aria-labelledby");
      if (!labels.isEmpty()) {
        assertThat(ids).contains(labels.split(" "));
      }
    }
    assertThat(page.all("a").get(0).getAttribute("href")).isEqualTo("#advice");
  }

  @Test
  @DisplayName("carries the caution at its top, at its end and at the foot of each printed page")
  void caution() {
    Page page = Page.of(AnkleReport.of("complete"));
    String caution = "Invented for tests of this program; not for treating anybody.";
    List<String> paragraphs =
        page.all("p").stream()
            .filter(one -> one.getAttribute("class").equals("caution"))
            .map(Element::getTextContent)
            .toList();
    assertThat(paragraphs).containsExactly(caution, caution);
    assertThat(page.all("style").get(0).getTextContent())
        .contains("content: " + Stylesheet.string(caution));
  }

  @Test
  @DisplayName("says on its face what is ruled out, by which row, and what each plan is")
  void ruledOut() {
    String text = Page.of(AnkleReport.of("ruled-out")).text();
    assertThat(text).contains("× plaster cast").contains("Blisters must be seen. [SS-2]");
    assertThat(text).contains("semi-rigid brace", "protocol digest".substring(0, 8));
  }

  @Test
  @DisplayName("names the decisions that contradict each other, before anything else")
  void contradiction() {
    String text = Page.of(AnkleReport.of("contradiction")).text();
    assertThat(text.indexOf("contradicts itself")).isBetween(0, text.indexOf("The decision"));
  }

  @Test
  @DisplayName("is whole without any picture of the workbook, and then lists its lists")
  void withoutPictures() {
    Page page = Page.of(AnkleReport.of(TextProtocol.ankle(), AnkleCases.named("ruled-out")));
    assertThat(page.text())
        .contains("Points for and against", "Do not open the blisters.", "Trace")
        .doesNotContain("Where it hurts");
  }

  @Test
  @DisplayName("draws no sector, point or curve that is not known, and says so")
  void drawsNothingUnknown() {
    String text = Page.of(AnkleReport.of("blank")).text();
    assertThat(text).contains("No sector is recorded, so none is drawn.");
    assertThat(text).contains("so no way is drawn");
  }
}
