package org.cotyla.workbook;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static java.nio.charset.StandardCharsets.UTF_16;
import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.cotyla.workbook.SampleWorkbook.soundBytes;
import static org.junit.jupiter.api.Assertions.assertTimeout;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.Charset;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.zip.ZipException;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("A hostile archive")
class HostileArchiveTest {

  @Test
  @DisplayName("with a part that unpacks to more than 200 times its size is refused")
  void bombInOnePart() {
    byte[] file =
        Zips.changed(soundBytes(), parts -> parts.put("xl/media/image1.png", new byte[2 << 20]));

    assertThat(Rejections.text(file))
        .isEqualTo(
            """
            error W011 rods.xlsx: a part of the file unpacks to more than 200 times its packed size
                  help: no workbook that people wrote is packed so tightly; do not trust the file""");
  }

  @Test
  @DisplayName("whose many small parts share their packed bytes is refused at 256 MiB")
  void bombOfOverlappingParts() {
    assertThat(Rejections.text(overlapping(300, 1_000_000)))
        .isEqualTo(
            "error W011 rods.xlsx: the file unpacks to more than 256 MiB, the most that is read");
  }

  @Test
  @DisplayName("that lies about the size of what it unpacks to is not believed")
  void declaredSizeIsNotBelieved() {
    byte[] file = soundBytes();
    int directory = new String(file, ISO_8859_1).indexOf("PK\u0001\u0002");
    ByteBuffer.wrap(file).order(ByteOrder.LITTLE_ENDIAN).putInt(directory + 24, 1);

    assertThat(Workbooks.read("rods.xlsx", file, List.of()).allRows()).hasSize(2);
  }

  @Test
  @DisplayName("with 3,000 parts is refused")
  void manyParts() {
    byte[] file =
        Zips.changed(
            soundBytes(),
            parts -> {
              for (int i = 0; i < 3000; i++) {
                parts.put("xl/media/image" + i + ".png", new byte[1]);
              }
            });

    assertThat(Rejections.text(file))
        .isEqualTo(
            "error W010 rods.xlsx: the file has more than 2,000 parts, the most that is read");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"../x", "xl/../../x", "..\\x", "/etc/passwd", "C:\\x", "c:x", "xl\\..\\..\\x"})
  @DisplayName("with a path that leads out of it is refused")
  void pathEscape(String path) {
    byte[] file = Zips.changed(soundBytes(), parts -> parts.put(path, new byte[1]));

    assertThat(Rejections.text(file))
        .startsWith(
            "error W012 rods.xlsx: a part of the file has a path that leads out of it: `"
                + path
                + "`");
  }

  @Test
  @DisplayName("with two parts whose names differ only in case is refused")
  void equalNames() {
    byte[] file =
        Zips.changed(
            soundBytes(), parts -> parts.put("XL/Workbook.xml", parts.get("xl/workbook.xml")));

    assertThat(Rejections.text(file))
        .isEqualTo("error W012 rods.xlsx: two parts of the file have one name: `xl/workbook.xml`");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "xl/workbook.xml",
        "xl/worksheets/sheet2.xml",
        "xl/sharedStrings.xml",
        "xl/styles.xml",
        "[Content_Types].xml",
        "_rels/.rels",
        "docProps/app.xml"
      })
  @DisplayName(
      "with an external entity in any part is refused, and the file it points at is not read")
  void externalEntity(String part, @TempDir Path folder) throws Exception {
    Path secret = Files.writeString(folder.resolve("secret.txt"), "the-secret");
    byte[] file = Zips.edited(soundBytes(), part, text -> withEntity(text, secret));

    assertThat(Rejections.text(file))
        .isEqualTo(
            "error W013 rods.xlsx: a part of the file declares a document type: `"
                + part.toLowerCase(Locale.ROOT)
                + "`\n      help: no spreadsheet program writes that; do not trust the file");
  }

  @ParameterizedTest
  @ValueSource(strings = {"UTF-16", "UTF-16LE", "UTF-16BE"})
  @DisplayName("with a document type in another encoding is refused")
  void documentTypeInOtherEncoding(String encoding) {
    String text =
        "<?xml version=\"1.0\" encoding=\""
            + encoding
            + "\"?><!DOCTYPE a [<!ENTITY b 'c'>]><a>&b;</a>";
    byte[] file =
        Zips.changed(
            soundBytes(),
            parts -> parts.put("customXml/item1.xml", text.getBytes(Charset.forName(encoding))));

    assertThat(Rejections.errors(file)).singleElement().matches(i -> i.code().equals("W013"));
  }

  @Test
  @DisplayName("that hides a sheet with a document type under a picture's name is refused")
  void documentTypeUnderAnyName() {
    byte[] hidden = "\n\n<!DOCTYPE a><a/>".getBytes(UTF_8);
    byte[] file = Zips.changed(soundBytes(), parts -> parts.put("xl/media/image1.png", hidden));

    assertThat(Rejections.errors(file)).singleElement().matches(i -> i.code().equals("W013"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "xl/workbook.xml",
        "xl/worksheets/sheet2.xml",
        "xl/sharedStrings.xml",
        "xl/styles.xml"
      })
  @DisplayName("with elements nested 200,000 deep is refused or read, never a stack overflow")
  void deepNesting(String part) {
    byte[] file =
        Zips.edited(
            soundBytes(),
            part,
            text -> {
              int root = text.lastIndexOf("</");
              String inner = "<a>".repeat(200_000) + "</a>".repeat(200_000);
              return text.substring(0, root) + inner + text.substring(root);
            });

    assertThat(Rejections.errors(file)).allMatch(issue -> issue.code().startsWith("W0"));
  }

  @Test
  @DisplayName("with a number format that is made to keep a pattern busy is refused at once")
  void longNumberFormat() {
    byte[] file =
        Zips.edited(
            soundBytes(),
            "xl/styles.xml",
            text ->
                text.replaceFirst(
                    "<fonts",
                    "<numFmts><numFmt numFmtId=\"200\" formatCode=\""
                        + "[y".repeat(100_000)
                        + "\"/></numFmts><cellXfs><xf numFmtId=\"200\"/></cellXfs><fonts"));

    assertTimeout(
        Duration.ofSeconds(5),
        () ->
            assertThat(Rejections.text(file)).contains("its part `xl/styles.xml` cannot be read"));
  }

  @Test
  @DisplayName("with a text of a million spaces is tidied at once")
  void manySpaces() {
    byte[] file =
        Zips.edited(
            soundBytes(),
            "xl/sharedStrings.xml",
            text -> text.replaceFirst("rod length", "rod" + " ".repeat(1_000_000) + "length"));

    assertTimeout(
        Duration.ofSeconds(5),
        () ->
            assertThat(Rejections.errors(file))
                .singleElement()
                .matches(i -> i.code().equals("W019")));
  }

  @Test
  @DisplayName("with a binary part that only looks like XML is read")
  void binaryPart() {
    byte[] file =
        Zips.changed(
            soundBytes(),
            parts -> parts.put("xl/media/image1.png", "\u0000<\u0001 not xml".getBytes(UTF_16)));

    assertThat(Rejections.text(file)).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(ints = {4, 30, 100, 1000, 3000, -1, -22, -23, -60, -400})
  @DisplayName("that is cut short is refused")
  void truncated(int length) {
    byte[] whole = soundBytes();
    byte[] file = Arrays.copyOf(whole, length > 0 ? length : whole.length + length);

    assertThat(Rejections.text(file))
        .isEqualTo(
            """
            error W009 rods.xlsx: the file is damaged or cut short: it cannot be unpacked
                  help: fetch it again from where it came, or open and save it in a spreadsheet program""");
  }

  @Test
  @DisplayName("whose directory says that a part lies elsewhere is refused")
  void directoryLeadsOut() {
    byte[] file = soundBytes();
    int directory = new String(file, ISO_8859_1).indexOf("PK\u0001\u0002");
    ByteBuffer bytes = ByteBuffer.wrap(file).order(ByteOrder.LITTLE_ENDIAN);
    for (int offset : new int[] {Integer.MAX_VALUE, -2, -1, 7}) {
      bytes.putInt(directory + 42, offset);

      assertThatThrownBy(() -> ZipDirectory.entries(file, 100)).isInstanceOf(ZipException.class);
    }
  }

  private static String withEntity(String xml, Path secret) {
    int root = xml.indexOf("?>") + 2;
    String declared = root < 2 ? "" : xml.substring(0, root);
    return declared
        + "<!DOCTYPE a [<!ENTITY secret SYSTEM \""
        + secret.toUri()
        + "\">]>"
        + xml.substring(Math.max(root, 0));
  }

  /** An archive of which all directory entries point to one packed part of zeros. */
  private static byte[] overlapping(int parts, int size) {
    byte[] one = Zips.of(Map.of("a00000", new byte[size]));
    int directory = new String(one, ISO_8859_1).indexOf("PK\u0001\u0002");
    int end = new String(one, ISO_8859_1).indexOf("PK\u0005\u0006");
    ByteArrayOutputStream file = new ByteArrayOutputStream();
    file.write(one, 0, directory);
    for (int i = 0; i < parts; i++) {
      byte[] entry = Arrays.copyOfRange(one, directory, end);
      byte[] name = String.format("a%05d", i).getBytes(UTF_8);
      System.arraycopy(name, 0, entry, 46, name.length);
      file.writeBytes(entry);
    }
    byte[] tail = Arrays.copyOfRange(one, end, one.length);
    ByteBuffer.wrap(tail)
        .order(ByteOrder.LITTLE_ENDIAN)
        .putShort(8, (short) parts)
        .putShort(10, (short) parts);
    file.writeBytes(tail);
    return file.toByteArray();
  }
}
