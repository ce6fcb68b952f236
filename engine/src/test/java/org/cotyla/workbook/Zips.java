package org.cotyla.workbook;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;

/**
 * Takes archives apart and puts them together, for tests that a spreadsheet library cannot write.
 */
final class Zips {

  private Zips() {}

  static Map<String, byte[]> parts(byte[] archive) {
    Map<String, byte[]> parts = new LinkedHashMap<>();
    try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(archive))) {
      for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
        parts.put(entry.getName(), zip.readAllBytes());
      }
      return parts;
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
  }

  static byte[] of(Map<String, byte[]> parts) {
    ByteArrayOutputStream archive = new ByteArrayOutputStream();
    try (ZipOutputStream zip = new ZipOutputStream(archive)) {
      for (Map.Entry<String, byte[]> part : parts.entrySet()) {
        zip.putNextEntry(new ZipEntry(part.getKey()));
        zip.write(part.getValue());
        zip.closeEntry();
      }
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
    return archive.toByteArray();
  }

  /** The archive after its parts were changed. */
  static byte[] changed(byte[] archive, Consumer<Map<String, byte[]>> change) {
    Map<String, byte[]> parts = parts(archive);
    change.accept(parts);
    return of(parts);
  }

  /** The archive after the text of one part was changed; the text must really change. */
  static byte[] edited(byte[] archive, String part, UnaryOperator<String> edit) {
    return changed(
        archive,
        parts -> {
          String text = new String(parts.get(part), StandardCharsets.UTF_8);
          String edited = edit.apply(text);
          if (edited.equals(text)) {
            throw new IllegalArgumentException("nothing to edit in " + part + ": " + text);
          }
          parts.put(part, edited.getBytes(StandardCharsets.UTF_8));
        });
  }
}
