package org.cotyla.cli.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import java.util.function.UnaryOperator;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.text.PDFTextStripper;
import org.cotyla.cli.AnkleCases;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;

@DisplayName("The report as PDF")
class PdfReportTest {

  private static final String CAUTION =
      "Invented for tests of this program; not for treating anybody.";

  @Test
  @DisplayName("carries the caution and the page's number on every page")
  void caution() throws IOException {
    try (PDDocument document = Loader.loadPDF(PdfReport.of(AnkleReport.of("complete")))) {
      int pages = document.getNumberOfPages();
      assertThat(pages).isGreaterThan(1);
      for (int page = 1; page <= pages; page++) {
        assertThat(text(document, page)).contains(CAUTION, page + " / " + pages);
      }
    }
  }

  @Test
  @DisplayName("says every word of every heading, cell and list entry of the page")
  void saysTheSame() throws IOException {
    String html = AnkleReport.of("incomplete");
    Page page = Page.of(html);
    try (PDDocument document = Loader.loadPDF(PdfReport.of(html))) {
      String pdf = letters(text(document, 0));
      for (String name : List.of("h1", "h2", "h3", "h4", "th", "td", "li", "dd", "figcaption")) {
        for (Element element : page.all(name)) {
          // A bold word or a link is drawn after the rest of its line, so words are compared.
          if (!element.getTextContent().isBlank()) {
            assertThat(pdf).contains(element.getTextContent().strip().split("\\s+"));
          }
        }
      }
    }
  }

  @Test
  @DisplayName("is the same to the byte each time, without date or random number")
  void sameBytes() throws IOException {
    String html = AnkleReport.of("tie");
    assertThat(PdfReport.of(html)).isEqualTo(PdfReport.of(html));
  }

  @Test
  @DisplayName("is on A4, tagged, with its language, and every font is embedded")
  void form() throws IOException {
    try (PDDocument document = Loader.loadPDF(PdfReport.of(AnkleReport.of("complete")))) {
      assertThat(document.getDocumentCatalog().getMarkInfo().isMarked()).isTrue();
      assertThat(document.getDocumentCatalog().getLanguage()).isEqualTo("en-GB");
      for (PDPage page : document.getPages()) {
        assertThat(page.getMediaBox().getWidth()).isCloseTo(PDRectangle.A4.getWidth(), within());
        for (COSName font : page.getResources().getFontNames()) {
          assertThat(page.getResources().getFont(font).isEmbedded()).isTrue();
        }
      }
    }
  }

  @Test
  @DisplayName("shows the signs that protocols use, and survives markup and odd characters")
  void signs() throws IOException {
    String signs = "≥ ≤ ö ° – − × ½ µ <b> ]]> & \u202E";
    String html =
        AnkleReport.of(
            AnkleReport.protocol(UnaryOperator.identity()),
            AnkleCases.named("complete").titled(signs));
    try (PDDocument document = Loader.loadPDF(PdfReport.of(html))) {
      assertThat(letters(text(document, 1))).contains(letters("≥ ≤ ö ° – − × ½ µ <b> ]]> & ?"));
    }
  }

  private static org.assertj.core.data.Offset<Float> within() {
    return org.assertj.core.api.Assertions.within(1f);
  }

  private static String text(PDDocument document, int page) throws IOException {
    PDFTextStripper stripper = new PDFTextStripper();
    if (page > 0) {
      stripper.setStartPage(page);
      stripper.setEndPage(page);
    }
    return stripper.getText(document);
  }

  /** Lines break elsewhere in a PDF, so spaces count for nothing. */
  private static String letters(String text) {
    return text.replaceAll("\\s+", "");
  }
}
