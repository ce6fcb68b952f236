package org.cotyla.workbook;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Set;
import org.apache.poi.poifs.filesystem.FileMagic;
import org.apache.poi.poifs.filesystem.POIFSFileSystem;

/**
 * Tells by its first bytes what a file is, whatever its name ends in, and refuses all but a zip
 * archive.
 */
final class FileKind {

  private static final String SAVE_AS = "open it in a spreadsheet program and save it as .xlsx";

  private final Refusal refusal;

  FileKind(Refusal refusal) {
    this.refusal = refusal;
  }

  void requireZip(byte[] file) {
    if (file.length == 0) {
      throw refusal.because("W003", "the file is empty");
    }
    if (!startsAsZip(file)) {
      throw otherThanZip(file);
    }
  }

  private static boolean startsAsZip(byte[] file) {
    return file.length > 3 && file[0] == 'P' && file[1] == 'K' && file[2] == 3 && file[3] == 4;
  }

  private RuntimeException otherThanZip(byte[] file) {
    return switch (FileMagic.valueOf(file)) {
      case OLE2 -> oldOffice(file);
      case BIFF2, BIFF3, BIFF4 ->
          refusal.because("W004", "the file is a workbook of the old .xls kind", SAVE_AS);
      case HTML -> notWorkbook("a web page");
      case XML -> notWorkbook("an XML file");
      case PDF -> notWorkbook("a PDF file");
      case RTF -> notWorkbook("a text document (RTF)");
      case JPEG, GIF, PNG, TIFF, BMP, WMF, EMF -> notWorkbook("a picture");
      default -> notWorkbook(isPlainText(file) ? "plain text (CSV?)" : "something else");
    };
  }

  private RuntimeException oldOffice(byte[] file) {
    Set<String> entries;
    try (POIFSFileSystem office = new POIFSFileSystem(new ByteArrayInputStream(file))) {
      entries = Set.copyOf(office.getRoot().getEntryNames());
    } catch (IOException | RuntimeException damaged) {
      // What a broken file of this kind throws is the library's affair; all of it means the same.
      return refusal.because("W004", "the file is a damaged file of the old Office kind", SAVE_AS);
    }
    if (entries.contains("EncryptedPackage")) {
      return passwordProtected();
    }
    if (entries.contains("Workbook") || entries.contains("Book")) {
      return refusal.because("W004", "the file is a workbook of the old .xls kind", SAVE_AS);
    }
    return notWorkbook("a file of the old Office kind");
  }

  RuntimeException passwordProtected() {
    return refusal.because(
        "W005",
        "the file is protected with a password",
        "take the password off in the spreadsheet program and save it again");
  }

  RuntimeException notWorkbook(String what) {
    return refusal.because("W008", "the file is not an .xlsx workbook but " + what, SAVE_AS);
  }

  private static boolean isPlainText(byte[] file) {
    String start = new String(file, 0, Math.min(file.length, 4096), StandardCharsets.ISO_8859_1);
    return start.chars().allMatch(c -> c >= ' ' || Character.isWhitespace(c));
  }
}
