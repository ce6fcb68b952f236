package org.cotyla.caseform;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.time.Instant;
import java.time.LocalDateTime;
import java.util.Date;
import java.util.Optional;
import java.util.zip.CRC32;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import org.apache.poi.ooxml.POIXMLProperties.CoreProperties;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** Writes a workbook without a trace of when and where that was done. */
public final class SameBytes {

  /** The earliest time that an archive can hold; it says nothing, and is the same everywhere. */
  private static final LocalDateTime NO_TIME = LocalDateTime.of(1980, 1, 1, 0, 0);

  private static final Instant NO_INSTANT = Instant.parse("1980-01-01T00:00:00Z");

  private SameBytes() {}

  /** The workbook's bytes; the workbook is closed. */
  public static byte[] of(XSSFWorkbook workbook) throws IOException {
    try (workbook;
        ByteArrayOutputStream out = new ByteArrayOutputStream()) {
      CoreProperties about = workbook.getProperties().getCoreProperties();
      about.setCreator("Cotyla");
      about.setCreated(Optional.of(Date.from(NO_INSTANT)));
      about.setModified(Optional.of(Date.from(NO_INSTANT)));
      workbook.write(out);
      return withoutTimes(out.toByteArray());
    }
  }

  /** The bytes of a workbook that stays its author's, packed, without the times of its parts. */
  public static byte[] packed(XSSFWorkbook workbook) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    workbook.write(out);
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ZipInputStream from = new ZipInputStream(new ByteArrayInputStream(out.toByteArray()));
        ZipOutputStream to = new ZipOutputStream(bytes)) {
      for (ZipEntry part = from.getNextEntry(); part != null; part = from.getNextEntry()) {
        ZipEntry entry = new ZipEntry(part.getName());
        entry.setTimeLocal(NO_TIME);
        to.putNextEntry(entry);
        from.transferTo(to);
        to.closeEntry();
      }
    }
    return bytes.toByteArray();
  }

  /** Stored and not packed, since what packing gives differs between releases of Java. */
  private static byte[] withoutTimes(byte[] archive) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ZipInputStream from = new ZipInputStream(new ByteArrayInputStream(archive));
        ZipOutputStream to = new ZipOutputStream(bytes)) {
      to.setMethod(ZipOutputStream.STORED);
      for (ZipEntry part = from.getNextEntry(); part != null; part = from.getNextEntry()) {
        byte[] content = from.readAllBytes();
        to.putNextEntry(stored(part.getName(), content));
        to.write(content);
        to.closeEntry();
      }
    }
    return bytes.toByteArray();
  }

  private static ZipEntry stored(String name, byte[] content) {
    CRC32 sum = new CRC32();
    sum.update(content);
    ZipEntry entry = new ZipEntry(name);
    entry.setTimeLocal(NO_TIME);
    entry.setSize(content.length);
    entry.setCompressedSize(content.length);
    entry.setCrc(sum.getValue());
    return entry;
  }
}
