package org.cotyla.caseform;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.cotyla.protocol.About;
import org.cotyla.protocol.Field;
import org.cotyla.protocol.Protocol;

/** Writes an empty form: what it is, the case's title and stage, and a row for every finding. */
final class FormWriter {

  static final int NAME = 0;
  static final int VALUE = 1;
  static final int UNIT = 2;
  static final int ALLOWED = 3;
  static final int MEANING = 4;

  private static final String HELP =
      "Write under value what is known and leave blank what is not: it is never guessed. For a"
          + " range write 70..80, for what is one of several 2A or 2B (any of the allowed words)."
          + " If you measured in another unit, change the unit beside the value.";

  private final Protocol protocol;
  private final XSSFWorkbook workbook = new XSSFWorkbook();
  private final XSSFSheet sheet = workbook.createSheet(CaseForm.LAYOUT.sheet());
  private final FormStyles styles = new FormStyles(workbook);
  private final EntryRules rules = new EntryRules(workbook, sheet);
  private int next;

  FormWriter(Protocol protocol) {
    this.protocol = protocol;
  }

  XSSFWorkbook workbook() {
    About about = protocol.about();
    top(about);
    int heading = next;
    headings();
    List<String> stages = about.stages();
    for (int stage = 0; stage < stages.size(); stage++) {
      fieldsOf(stage, stages);
    }
    new FormPage(sheet).set(about, heading, next - 1);
    return workbook;
  }

  private void top(About about) {
    wide(about.title() + ": case form", styles.title);
    wide(about.caution(), styles.caution);
    wide(HELP, styles.help);
    XSSFRow title = row();
    text(title, NAME, CaseForm.TITLE, styles.name);
    text(title, VALUE, "", styles.word);
    note(title, "Nothing that identifies a patient: no name, number or date of birth.");
    XSSFRow stage = row();
    text(stage, NAME, CaseForm.STAGE, styles.name);
    text(stage, VALUE, about.stages().get(0), styles.word);
    rules.addStages(about.stages(), stage.getRowNum(), VALUE);
    note(stage, "Where the case stands: " + String.join(", ", about.stages()) + ".");
  }

  private void headings() {
    XSSFRow row = row();
    text(row, NAME, CaseForm.FINDING, styles.heading);
    text(row, VALUE, CaseForm.VALUE, styles.heading);
    text(row, UNIT, CaseForm.UNIT, styles.indentedHeading);
    text(row, ALLOWED, "allowed", styles.indentedHeading);
    text(row, MEANING, "what it means", styles.heading);
  }

  private void fieldsOf(int stage, List<String> stages) {
    Map<String, List<Field>> groups = new LinkedHashMap<>();
    protocol.givenFields().stream()
        .filter(field -> field.stage() == stage)
        .forEach(
            field -> groups.computeIfAbsent(field.group(), key -> new ArrayList<>()).add(field));
    if (stage > 0 && !groups.isEmpty()) {
      String name = stages.get(stage);
      sheet.setRowBreak(next - 1);
      wide(
          "Only at the stage " + name + ": then write " + name + " as the stage above",
          styles.section);
    }
    groups.forEach(
        (group, fields) -> {
          if (!group.isBlank()) {
            wide(group, styles.group);
          }
          fields.forEach(this::field);
        });
  }

  private void field(Field field) {
    XSSFRow row = row();
    text(row, NAME, field.name(), styles.name);
    text(row, VALUE, "", valueStyle(field));
    rules.add(field, row.getRowNum(), VALUE);
    text(row, UNIT, field.unit(), styles.unit);
    text(row, ALLOWED, AllowedWords.of(field), styles.small);
    text(row, MEANING, field.meaning(), styles.plain);
    RowHeight.fit(row);
  }

  private CellStyle valueStyle(Field field) {
    return switch (field.symbol().type()) {
      case NUMBER -> styles.number;
      case DATE -> styles.date;
      case TEXT, YES_NO -> styles.word;
    };
  }

  private void note(XSSFRow row, String words) {
    text(row, UNIT, words, styles.small);
    text(row, ALLOWED, "", styles.small);
    text(row, MEANING, "", styles.small);
    sheet.addMergedRegion(new CellRangeAddress(row.getRowNum(), row.getRowNum(), UNIT, MEANING));
  }

  /** A line over all columns; a merged cell does not find its height by itself. */
  private void wide(String words, CellStyle style) {
    XSSFRow row = row();
    text(row, NAME, words, style);
    for (int column = VALUE; column <= MEANING; column++) {
      text(row, column, "", style);
    }
    int number = row.getRowNum();
    sheet.addMergedRegion(new CellRangeAddress(number, number, NAME, MEANING));
    RowHeight.fitOverAll(row);
  }

  private XSSFRow row() {
    return sheet.createRow(next++);
  }

  private static void text(XSSFRow row, int column, String words, CellStyle style) {
    XSSFCell cell = row.createCell(column);
    cell.setCellStyle(style);
    if (!words.isEmpty()) {
      cell.setCellValue(words);
    }
  }
}
