package org.cotyla.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("The command report")
class ReportCommandTest {

  private static final Path CASES = Run.HOME.resolve("test-cases/cases");

  @TempDir private Path folder;

  @Test
  @DisplayName(
      "writes one page for a case by the house protocol, with every picture that it asks for")
  void html() throws IOException {
    Path page = folder.resolve("plan.html");
    Run run =
        Run.of("report", CASES.resolve("loose-cup-up-and-out.json").toString(), "-o", page + "");
    assertThat(run).isEqualTo(new Run(0, "", ""));
    assertThat(Files.readString(page))
        .startsWith("<!DOCTYPE html>\n<html")
        .contains("Loose cup, up and out, second revision")
        .contains("cup with porous metal augments")
        .contains("The rim as a clock face", "Cup orientation", "Jump distance against head size")
        .contains("The point lies at 22 across (radiographic anteversion, degrees) and 40 up")
        .contains("From 9.3 at 22 to 20.3 at 48.", "Line: house floor 10.")
        .contains("written on 2026-12-15");
  }

  @Test
  @DisplayName("draws the recorded sector of a left hip anticlockwise, with both contacts")
  void clockFace() {
    Path given = CASES.resolve("geometry/left-hip-less-contact-than-stated.json");
    Run run = Run.of("report", given.toString());
    assertThat(run.out())
        .contains("o&#39;clock, anticlockwise, from 0 degrees off the pole to the rim.")
        .contains("Host bone contact as stated: 55 %. Host bone contact by the sectors: 33.3 %.");
  }

  @Test
  @DisplayName("writes a PDF when the file is called so, or when that is asked for")
  void pdf() throws IOException {
    String given = CASES.resolve("infection/i01-all-markers-raised.json").toString();
    Path byName = folder.resolve("plan.pdf");
    Path byFormat = folder.resolve("plan");
    assertThat(Run.of("report", given, "--output", byName.toString()).code()).isZero();
    assertThat(Run.of("report", given, "-o", byFormat + "", "--format", "pdf").code()).isZero();
    byte[] bytes = Files.readAllBytes(byName);
    assertThat(new String(bytes, 0, 5, StandardCharsets.US_ASCII)).isEqualTo("%PDF-");
    assertThat(Files.readAllBytes(byFormat)).isEqualTo(bytes);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"discontinuity/chronic-everything-gone", "instability/abductors-absent-new-cup"})
  @DisplayName("says on its first sheet what, why, what if not, and with what kit")
  void firstSheet(String name) throws IOException {
    Path file = folder.resolve("plan.pdf");
    Run.of("report", CASES.resolve(name + ".json").toString(), "-o", file.toString());
    try (PDDocument document = Loader.loadPDF(Files.readAllBytes(file))) {
      PDFTextStripper first = new PDFTextStripper();
      first.setEndPage(1);
      assertThat(first.getText(document))
          .contains("What the findings point to", "Points for and against", "ruled out")
          .contains("Cautions", "Plan A, B and C", "Kit and lead times", "Cell salvage");
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"geometry/sectors-and-floor", "instability/abductors-absent-new-cup"})
  @DisplayName("leaves no decision's heading alone at the foot of a sheet")
  void headingsAtTheFoot(String name) throws IOException {
    Path file = folder.resolve("plan.pdf");
    Run.of("report", CASES.resolve(name + ".json").toString(), "-o", file.toString());
    try (PDDocument document = Loader.loadPDF(Files.readAllBytes(file))) {
      PDFTextStripper text = new PDFTextStripper();
      text.setSortByPosition(true);
      for (int page = 1; page <= document.getNumberOfPages(); page++) {
        text.setStartPage(page);
        text.setEndPage(page);
        List<String> lines = text.getText(document).lines().filter(one -> !one.isBlank()).toList();
        String foot = lines.get(lines.size() - 1);
        assertThat(foot).endsWith(page + " / " + document.getNumberOfPages());
        assertThat(lines.get(lines.size() - 2)).doesNotContain("(hit policy");
      }
    }
  }

  @Test
  @DisplayName("names the data for want of which a picture, its point or its sector is not drawn")
  void notDrawn() {
    Path given = CASES.resolve("intrapelvic/cup-inside-the-pelvis.json");
    assertThat(Run.of("report", given.toString()).out())
        .contains(
            "The sector is not drawn: it hangs on defect clock from, defect clock to, which are",
            "The point is not drawn: it hangs on planned inclination, planned anteversion, which",
            "Not drawn: it hangs on planned inclination, planned anteversion, head centre offset,");
  }

  @Test
  @DisplayName("gives no reason of a row that only may match, and names units for people")
  void openAndUnits() {
    Path given = CASES.resolve("incomplete/almost-nothing-known.json");
    String page = Run.of("report", given.toString()).out();
    String decision = page.substring(0, page.indexOf("Points for and against"));
    assertThat(decision)
        .contains("18 rows may still match. Hangs on: hip centre migration")
        .doesNotContain("the full picture of 3B")
        .contains("inclination 40°; anteversion from 15, 20, 25 or 30°")
        .doesNotContain("deg");
    assertThat(page).doesNotContain(", 1 points");
  }

  @Test
  @DisplayName("reports a case in which nothing is known, and names no option first")
  void blank() {
    Run run = Run.with("{\"findings\": {}}", false, "report", "-");
    assertThat(run.code()).isZero();
    assertThat(run.out()).contains("open: 13 of 13 can still come first", "Untitled case");
  }

  @Test
  @DisplayName("answers wrong usage in two lines, and writes over no file")
  void usage() throws IOException {
    String given = CASES.resolve("loose-cup-up-and-out.json").toString();
    assertThat(Run.of("report", given, "--format", "pdf").err())
        .startsWith("error: --format pdf needs --output FILE: a PDF is no text\n");
    Path there = Files.writeString(folder.resolve("there.html"), "kept");
    Run run = Run.of("report", given, "--output", there.toString());
    assertThat(run.code()).isEqualTo(2);
    assertThat(run.err()).contains("is there already");
    assertThat(Files.readString(there)).isEqualTo("kept");
    Run help = Run.of("report", "--help");
    assertThat(help.out()).startsWith("Usage: cotyla report");
    assertThat(help.out().lines()).allSatisfy(line -> assertThat(line.length()).isLessThan(81));
  }
}
