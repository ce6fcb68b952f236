package org.cotyla.caseform;

import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import java.util.Set;
import org.cotyla.finding.Case;
import org.cotyla.issue.RejectedException;
import org.cotyla.protocol.Protocol;
import org.cotyla.workbook.FormSheet;

/** A case as a form in a spreadsheet, for people who do not write JSON. */
public final class CaseForm {

  static final String TITLE = "case title";
  static final String STAGE = "stage";
  static final String FINDING = "finding";
  static final String VALUE = "value";
  static final String UNIT = "unit";

  static final FormSheet.Layout LAYOUT =
      new FormSheet.Layout(
          "Case", List.of(TITLE, STAGE), List.of(FINDING, VALUE, UNIT), Set.of(UNIT));

  /** The most bytes that a file may have to be read as a form. */
  public static final int MOST_BYTES = FormSheet.MOST_BYTES;

  private CaseForm() {}

  /**
   * Writes an empty form for a protocol as an {@code .xlsx} workbook. The same protocol always
   * gives the same bytes.
   *
   * @throws IOException when the stream fails, which stays open
   */
  public static void write(Protocol protocol, OutputStream out) throws IOException {
    out.write(SameBytes.of(new FormWriter(protocol).workbook()));
  }

  /** Whether the bytes are a workbook by their beginning, whatever the file is called. */
  public static boolean isForm(byte[] file) {
    return FormSheet.looksLikeWorkbook(file);
  }

  /**
   * Reads a form that was filled in. A finding whose value is blank is not recorded. Faults that
   * show only when the case is read against a protocol name the form's cells as well.
   *
   * @param name what to call the file in messages
   * @throws RejectedException with every fault of the form, each with its cell
   */
  public static Case read(String name, byte[] file) {
    return new FilledForm(FormSheet.read(name, file, LAYOUT)).toCase();
  }
}
