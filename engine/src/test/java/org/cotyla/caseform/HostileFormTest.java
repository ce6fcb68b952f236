package org.cotyla.caseform;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Consumer;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import org.cotyla.issue.RejectedException;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("A hostile form is refused as a hostile protocol is")
class HostileFormTest {

  @Test
  @DisplayName("when a part unpacks to more than 200 times its size")
  void bomb() throws IOException {
    assertThat(code(changed(parts -> parts.put("xl/media/a.png", new byte[2 << 20]))))
        .isEqualTo("W011");
  }

  @Test
  @DisplayName("when a part declares a document type")
  void documentType() throws IOException {
    byte[] hostile =
        "<!DOCTYPE a [<!ENTITY b SYSTEM 'file:///etc/hosts'>]><a>&b;</a>".getBytes(UTF_8);
    assertThat(code(changed(parts -> parts.put("xl/styles.xml", hostile)))).isEqualTo("W013");
  }

  @Test
  @DisplayName("when a path leads out of the archive")
  void pathEscape() throws IOException {
    assertThat(code(changed(parts -> parts.put("../x", new byte[1])))).isEqualTo("W012");
  }

  @Test
  @DisplayName("when it is cut short, anywhere")
  void cutShort() {
    byte[] whole = Filled.blank();
    for (int length = 4; length < whole.length; length += whole.length / 20) {
      assertThat(code(Arrays.copyOf(whole, length))).isEqualTo("W009");
    }
  }

  @Test
  @DisplayName("when it is of the old kind, whatever it is called")
  void oldKind() {
    byte[] old = new byte[2048];
    byte[] magic = {(byte) 0xD0, (byte) 0xCF, 0x11, (byte) 0xE0};
    System.arraycopy(magic, 0, old, 0, magic.length);
    assertThat(CaseForm.isForm(old)).isTrue();
    assertThat(code(old)).startsWith("W0");
  }

  @Test
  @DisplayName("when it is larger than 16 MiB")
  void tooLarge() {
    byte[] large = Arrays.copyOf(Filled.blank(), CaseForm.MOST_BYTES + 1);
    assertThat(code(large)).isEqualTo("W002");
  }

  @Test
  @DisplayName("and JSON is never taken for a form")
  void jsonIsNoForm() {
    assertThat(CaseForm.isForm("{\"findings\": {}}".getBytes(UTF_8))).isFalse();
    assertThat(CaseForm.isForm(new byte[0])).isFalse();
    assertThat(CaseForm.isForm(Filled.blank())).isTrue();
  }

  private static String code(byte[] file) {
    RejectedException refused =
        catchThrowableOfType(RejectedException.class, () -> CaseForm.read("form.xlsx", file));
    assertThat(refused).isNotNull();
    assertThat(refused.issues()).hasSize(1);
    return refused.issues().get(0).code();
  }

  private static byte[] changed(Consumer<Map<String, byte[]>> change) throws IOException {
    Map<String, byte[]> parts = new LinkedHashMap<>();
    try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(Filled.blank()))) {
      for (ZipEntry part = in.getNextEntry(); part != null; part = in.getNextEntry()) {
        parts.put(part.getName(), in.readAllBytes());
      }
    }
    change.accept(parts);
    ByteArrayOutputStream file = new ByteArrayOutputStream();
    try (ZipOutputStream out = new ZipOutputStream(file)) {
      for (Map.Entry<String, byte[]> part : parts.entrySet()) {
        out.putNextEntry(new ZipEntry(part.getKey()));
        out.write(part.getValue());
        out.closeEntry();
      }
    }
    return file.toByteArray();
  }
}
