package org.cotyla.workbook;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.cotyla.workbook.SampleWorkbook.soundBytes;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.OutputStream;
import java.util.Arrays;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.apache.poi.hssf.usermodel.HSSFWorkbook;
import org.apache.poi.poifs.crypt.EncryptionInfo;
import org.apache.poi.poifs.crypt.EncryptionMode;
import org.apache.poi.poifs.crypt.Encryptor;
import org.apache.poi.poifs.filesystem.POIFSFileSystem;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

@DisplayName("A file that is no sound workbook is refused with one message, which")
class FileRefusalTest {

  private static final String TYPES = "[Content_Types].xml";
  private static final String SHEET_TYPE =
      "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet.main+xml";

  record Bad(String what, Callable<byte[]> file, String message) {
    @Override
    public String toString() {
      return what;
    }
  }

  static Stream<Bad> files() {
    return Stream.concat(kinds(), archives());
  }

  static Stream<Bad> kinds() {
    return Stream.of(
        new Bad("says that an empty file is empty", () -> new byte[0], "W003 the file is empty"),
        new Bad(
            "knows a file that is too large",
            () -> new byte[(16 << 20) + 1],
            "W002 the file is larger than 16 MiB, the most that is read"),
        new Bad(
            "knows an old .xls workbook",
            FileRefusalTest::oldWorkbook,
            "W004 the file is a workbook of the old .xls kind"),
        new Bad(
            "knows an old .xls workbook that is cut short",
            () -> Arrays.copyOf(oldWorkbook(), 600),
            "W004 the file is a damaged file of the old Office kind"),
        new Bad(
            "knows another old Office file",
            () -> oldOffice("WordDocument"),
            "W008 the file is not an .xlsx workbook but a file of the old Office kind"),
        new Bad(
            "knows a password",
            FileRefusalTest::encrypted,
            "W005 the file is protected with a password"),
        new Bad(
            "knows a password on the archive itself",
            FileRefusalTest::encryptedPart,
            "W005 the file is protected with a password"),
        new Bad(
            "knows a renamed CSV file",
            () -> "name,kind\nrod,given\n".getBytes(UTF_8),
            "W008 the file is not an .xlsx workbook but plain text (CSV?)"),
        new Bad(
            "knows a renamed web page",
            () -> "<html><table></table></html>".getBytes(UTF_8),
            "W008 the file is not an .xlsx workbook but a web page"),
        new Bad(
            "knows a renamed XML file",
            () -> "<?xml version=\"1.0\"?><table/>".getBytes(UTF_8),
            "W008 the file is not an .xlsx workbook but an XML file"),
        new Bad(
            "knows a renamed PDF file",
            () -> "%PDF-1.7 \u0001\u0002".getBytes(UTF_8),
            "W008 the file is not an .xlsx workbook but a PDF file"),
        new Bad(
            "knows a renamed picture",
            () -> new byte[] {(byte) 0x89, 'P', 'N', 'G', 13, 10, 26, 10, 0, 0, 0, 0},
            "W008 the file is not an .xlsx workbook but a picture"),
        new Bad(
            "knows that random bytes are nothing",
            () -> new byte[] {1, 2, 3, 4, 5, 6, 7, 8, 9, 10},
            "W008 the file is not an .xlsx workbook but something else"));
  }

  static Stream<Bad> archives() {
    return Stream.of(
        new Bad(
            "knows a text document",
            () ->
                typed(
                    "application/vnd.openxmlformats-officedocument.wordprocessingml.document.main+xml"),
            "W008 the file is not an .xlsx workbook but a text document (.docx)"),
        new Bad(
            "knows a set of slides",
            () ->
                typed(
                    "application/vnd.openxmlformats-officedocument.presentationml.presentation.main+xml"),
            "W008 the file is not an .xlsx workbook but a set of slides (.pptx)"),
        new Bad(
            "knows an OpenDocument sheet",
            () -> Zips.of(Map.of("content.xml", xml("<a/>"), "META-INF/manifest.xml", xml("<a/>"))),
            "W008 the file is not an .xlsx workbook but an OpenDocument file"),
        new Bad(
            "knows any other zip archive",
            () -> Zips.of(Map.of("readme.txt", xml("hello"))),
            "W008 the file is not an .xlsx workbook but another zip archive"),
        new Bad(
            "knows an Office package of an unknown kind",
            () -> typed("application/vnd.example.other+xml"),
            "W008 the file is not an .xlsx workbook but something else"),
        new Bad(
            "knows a binary workbook",
            () -> typed("application/vnd.ms-excel.sheet.binary.macroEnabled.main"),
            "W006 the file is a workbook of the .xlsb kind"),
        new Bad(
            "knows a workbook that is made for macros",
            () -> typed("application/vnd.ms-excel.sheet.macroEnabled.main+xml"),
            "W007 the file holds macros"),
        new Bad(
            "knows a macro part that nothing announces",
            () -> Zips.changed(soundBytes(), parts -> parts.put("xl/vbaProject.bin", new byte[9])),
            "W007 the file holds macros"),
        new Bad(
            "knows a template",
            () ->
                typed(
                    "application/vnd.openxmlformats-officedocument.spreadsheetml.template.main+xml"),
            "W014 the file is a template"),
        new Bad(
            "knows the Strict form",
            () ->
                Zips.edited(
                    soundBytes(),
                    "_rels/.rels",
                    text ->
                        text.replace(
                            "http://schemas.openxmlformats.org/officeDocument/2006/relationships/officeDocument",
                            "http://purl.oclc.org/ooxml/officeDocument/relationships/officeDocument")),
            "W014 the file is of the Strict Open XML form"),
        new Bad(
            "knows that the workbook is not named",
            () ->
                Zips.edited(
                    soundBytes(),
                    "_rels/.rels",
                    text -> text.replace("/officeDocument\"", "/other\"")),
            "W009 the file is damaged or cut short: it does not say which part is the workbook"),
        new Bad(
            "names a part that is missing",
            () -> Zips.changed(soundBytes(), parts -> parts.remove("xl/worksheets/sheet2.xml")),
            "W009 the file is damaged or cut short: its part `xl/worksheets/sheet2.xml` is missing"),
        new Bad(
            "names a sheet that leads nowhere",
            () ->
                Zips.edited(
                    soundBytes(),
                    "xl/workbook.xml",
                    text ->
                        text.replaceFirst(
                            "r:id=\"rId\\d+\" sheetId=\"2\"|(name=\"Fields\" )r:id=\"rId\\d+\"",
                            "$1r:id=\"rId99\"")),
            "W009 the file is damaged or cut short: its sheet `Fields` is missing"),
        new Bad(
            "names a part that is no sound XML",
            () ->
                Zips.edited(
                    soundBytes(), "xl/worksheets/sheet2.xml", text -> text.replace("</c>", "</d>")),
            "W009 the file is damaged or cut short: its part `xl/worksheets/sheet2.xml` cannot be read"),
        new Bad(
            "names a part in which two cells are in one place",
            () ->
                Zips.edited(
                    soundBytes(),
                    "xl/worksheets/sheet2.xml",
                    text -> text.replace("\"B2\"", "\"A2\"")),
            "W009 the file is damaged or cut short: its part `xl/worksheets/sheet2.xml` cannot be read"),
        new Bad(
            "names a part that points to a text which is not there",
            () ->
                Zips.edited(
                    soundBytes(),
                    "xl/worksheets/sheet2.xml",
                    text -> text.replaceFirst("<v>\\d+</v>", "<v>9999</v>")),
            "W009 the file is damaged or cut short: its part `xl/worksheets/sheet2.xml` cannot be read"),
        new Bad(
            "names two sheets of one name",
            () ->
                Zips.edited(
                    soundBytes(),
                    "xl/workbook.xml",
                    text -> text.replace("\"Sources\"", "\"FIELDS\"")),
            "W030 two sheets have one name: `FIELDS`"));
  }

  @ParameterizedTest
  @MethodSource("files")
  @DisplayName("for each kind of file says what it is")
  void refusesFile(Bad bad) throws Exception {
    assertThat(Rejections.errors(bad.file().call()))
        .singleElement()
        .satisfies(
            issue -> {
              assertThat(issue.code() + " " + issue.message()).isEqualTo(bad.message());
              assertThat(issue.place().plain()).isEqualTo("rods.xlsx");
            });
  }

  private static byte[] typed(String mainType) {
    return Zips.edited(soundBytes(), TYPES, text -> text.replace(SHEET_TYPE, mainType));
  }

  private static byte[] xml(String text) {
    return text.getBytes(UTF_8);
  }

  private static byte[] oldWorkbook() throws Exception {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (HSSFWorkbook workbook = new HSSFWorkbook()) {
      workbook.createSheet("Protocol").createRow(0).createCell(0).setCellValue("identifier");
      workbook.write(out);
    }
    return out.toByteArray();
  }

  private static byte[] oldOffice(String entry) throws Exception {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (POIFSFileSystem office = new POIFSFileSystem()) {
      office.createDocument(new ByteArrayInputStream(new byte[5000]), entry);
      office.writeFilesystem(out);
    }
    return out.toByteArray();
  }

  private static byte[] encrypted() throws Exception {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (POIFSFileSystem office = new POIFSFileSystem()) {
      Encryptor encryptor = new EncryptionInfo(EncryptionMode.agile).getEncryptor();
      encryptor.confirmPassword("open sesame");
      try (OutputStream locked = encryptor.getDataStream(office)) {
        locked.write(soundBytes());
      }
      office.writeFilesystem(out);
    }
    return out.toByteArray();
  }

  /** Sets the 'encrypted' flag of the first part in the archive's directory. */
  private static byte[] encryptedPart() {
    byte[] file = soundBytes();
    int directory = new String(file, ISO_8859_1).indexOf("PK\u0001\u0002");
    file[directory + 8] |= 1;
    return file;
  }
}
