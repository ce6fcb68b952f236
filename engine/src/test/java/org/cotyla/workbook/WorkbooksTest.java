package org.cotyla.workbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.cotyla.workbook.SampleWorkbook.set;
import static org.cotyla.workbook.SampleWorkbook.soundBytes;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.poi.openxml4j.util.ZipSecureFile;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.streaming.SXSSFWorkbook;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.cotyla.issue.RejectedException;
import org.cotyla.protocol.Protocol;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayName("Reading a workbook")
class WorkbooksTest {

  @Test
  @DisplayName("gives the protocol, each thing with its cell")
  void givesProtocol(@TempDir Path folder) throws Exception {
    Path file = Files.write(folder.resolve("rods.xlsx"), soundBytes());

    Protocol protocol = Workbooks.read(file);

    assertThat(protocol.about().identifier()).isEqualTo("rods");
    assertThat(protocol.about().stages()).containsExactly("planning", "workshop");
    assertThat(protocol.fields()).hasSize(3);
    assertThat(protocol.decision("grade of the rod").orElseThrow().at().plain())
        .isEqualTo("Grading!B1");
    assertThat(protocol.remarks()).isEmpty();
  }

  @Test
  @DisplayName("leaves the file as it was, free to be deleted, and no other file behind")
  void leavesNothing(@TempDir Path folder) throws Exception {
    byte[] written = soundBytes();
    Path file = Files.write(folder.resolve("rods.xlsx"), written);
    String temporary = System.getProperty("java.io.tmpdir");
    long before = countPoiFiles(temporary);

    Workbooks.read(file);

    assertThat(Files.readAllBytes(file)).isEqualTo(written);
    assertThat(countPoiFiles(temporary)).isEqualTo(before);
    Files.delete(file);
    assertThat(folder).isEmptyDirectory();
  }

  @Test
  @DisplayName("from a stream leaves the stream open for its owner")
  void streamStaysOpen() {
    boolean[] closed = {false};
    InputStream in =
        new ByteArrayInputStream(soundBytes()) {
          @Override
          public void close() {
            closed[0] = true;
          }
        };

    assertThat(Workbooks.read("rods.xlsx", in, List.of()).fields()).hasSize(3);
    assertThat(closed[0]).isFalse();
  }

  @Test
  @DisplayName("reads what a streaming writer with 64-bit sizes writes")
  void sizes64() throws Exception {
    byte[] plain = soundBytes();
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (SXSSFWorkbook book =
        new SXSSFWorkbook(new XSSFWorkbook(new ByteArrayInputStream(plain)))) {
      Sheet notes = book.createSheet("Scribbles");
      Row row = notes.createRow(0);
      row.createCell(0).setCellValue("x");
      book.write(out);
    }

    assertThat(Workbooks.read("rods.xlsx", out.toByteArray(), List.of()).allRows()).hasSize(2);
  }

  @Test
  @DisplayName(
      "does not depend on the host program's limits for its own workbooks, nor change them")
  void hostLimits() {
    double before = ZipSecureFile.getMinInflateRatio();
    try {
      ZipSecureFile.setMinInflateRatio(0.99);

      assertThat(Workbooks.read("rods.xlsx", soundBytes(), List.of()).fields()).hasSize(3);
      assertThat(ZipSecureFile.getMinInflateRatio()).isEqualTo(0.99);
    } finally {
      ZipSecureFile.setMinInflateRatio(before);
    }
  }

  @Test
  @DisplayName("says of a file that is not there that it is not there")
  void missingFile(@TempDir Path folder) {
    assertThatThrownBy(() -> Workbooks.read(folder.resolve("none.xlsx")))
        .isInstanceOf(RejectedException.class)
        .hasMessage("error W001 none.xlsx: there is no such file");
  }

  @Test
  @DisplayName("says of a folder that it is one")
  void folder(@TempDir Path folder) throws Exception {
    Path inner = Files.createDirectory(folder.resolve("rules"));

    assertThatThrownBy(() -> Workbooks.read(inner))
        .isInstanceOf(RejectedException.class)
        .hasMessage("error W001 rules: this is a folder and not a file");
  }

  @Test
  @DisplayName("says of a stream that breaks that it cannot be read")
  void brokenStream() {
    InputStream broken =
        new InputStream() {
          @Override
          public int read() throws IOException {
            throw new IOException("gone");
          }

          @Override
          public int read(byte[] into, int from, int length) throws IOException {
            return read();
          }
        };

    assertThatThrownBy(() -> Workbooks.read("rods.xlsx", broken, List.of()))
        .isInstanceOf(RejectedException.class)
        .hasMessage("error W001 rods.xlsx: the file cannot be read");
  }

  @Test
  @DisplayName("says what is wrong with a cell's meaning in the same way, at the cell")
  void meaning() {
    assertThat(Rejections.errors(SampleWorkbook.changed(set("Grading!D7", "C"))))
        .singleElement()
        .satisfies(issue -> assertThat(issue.place().plain()).isEqualTo("Grading!D7"));
  }

  private static long countPoiFiles(String folder) throws IOException {
    try (var files = Files.list(Path.of(folder))) {
      return files.filter(file -> file.getFileName().toString().contains("poi")).count();
    }
  }
}
