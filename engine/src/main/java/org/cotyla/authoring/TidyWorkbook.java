package org.cotyla.authoring;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.cotyla.caseform.SameBytes;
import org.cotyla.draft.Headings;
import org.cotyla.expression.FormulaFunction;
import org.cotyla.identity.ProtocolDigest;
import org.cotyla.issue.RejectedException;
import org.cotyla.name.Names;
import org.cotyla.protocol.Protocol;
import org.cotyla.workbook.WorkbookText;
import org.cotyla.workbook.Workbooks;

/**
 * Puts a protocol's workbook in order: lists of words, widths, headings and frozen panes. What it
 * says is not touched, which is proven by reading it again; comments, other sheets and people's
 * columns stay.
 */
public final class TidyWorkbook {

  private final XSSFWorkbook workbook;
  private final Set<String> decisions;
  private final Dress dress;
  private final DropDowns dropDowns;

  private TidyWorkbook(XSSFWorkbook workbook, Protocol protocol) {
    this.workbook = workbook;
    this.decisions =
        protocol.decisions().stream()
            .map(decision -> decision.at().sheet())
            .collect(Collectors.toUnmodifiableSet());
    this.dress = new Dress(workbook);
    this.dropDowns = new DropDowns(protocol);
  }

  /**
   * The workbook in order.
   *
   * @param name what to call the file in messages
   * @param functions what its formulas may call besides the standard functions
   * @throws RejectedException with every fault of the workbook, of which one must be free
   */
  public static byte[] of(String name, byte[] file, Collection<FormulaFunction> functions) {
    Protocol protocol = Workbooks.read(name, file, functions);
    byte[] once = inOrder(file, protocol);
    // The library orders what it has made itself otherwise than what it has read.
    byte[] tidy = Arrays.equals(once, file) ? file : inOrder(once, protocol);
    Protocol again = Workbooks.read(name, tidy, functions);
    boolean same =
        ProtocolDigest.of(protocol).equals(ProtocolDigest.of(again))
            && WorkbookText.of(name, file).equals(WorkbookText.of(name, tidy));
    if (!same) {
      throw new IllegalStateException("tidying would have changed what the workbook says");
    }
    return tidy;
  }

  private static byte[] inOrder(byte[] file, Protocol protocol) {
    try (XSSFWorkbook workbook = new XSSFWorkbook(new ByteArrayInputStream(file))) {
      new TidyWorkbook(workbook, protocol).run();
      return SameBytes.packed(workbook);
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
  }

  private void run() {
    for (int i = 0; i < workbook.getNumberOfSheets(); i++) {
      XSSFSheet sheet = workbook.getSheetAt(i);
      boolean isDecision = decisions.contains(sheet.getSheetName());
      if (Names.key(sheet.getSheetName()).equals("protocol")) {
        keys(sheet, Headings.ABOUT, sheet.getLastRowNum() + 1);
        sheet.setColumnWidth(0, 18 * 256);
        sheet.setColumnWidth(1, 70 * 256);
        dropDowns.write(sheet);
      }
      Optional<Sheets.Table> table = Sheets.table(sheet, isDecision);
      table.ifPresent(
          found -> {
            if (isDecision) {
              keys(sheet, Headings.DECISION_HEAD, found.headingRow());
            }
            table(found);
            dropDowns.write(sheet);
          });
    }
  }

  private void keys(XSSFSheet sheet, List<String> keys, int before) {
    for (Row row : sheet) {
      if (row.getRowNum() >= before) {
        return;
      }
      Optional<Cell> key = first(row);
      Optional<String> word =
          key.flatMap(cell -> keys.stream().filter(k -> Sheets.says(cell, k)).findFirst());
      if (word.isPresent()) {
        int column = key.get().getColumnIndex();
        dress.put(key.get(), Dress.Part.KEY);
        Cell value = row.getCell(column + 1, Row.MissingCellPolicy.CREATE_NULL_AS_BLANK);
        dress.put(value, keys == Headings.ABOUT ? Dress.Part.BODY : Dress.Part.VALUE);
        dropDowns.offerKey(sheet, word.get(), row.getRowNum(), column + 1);
      }
    }
  }

  private static Optional<Cell> first(Row row) {
    for (Cell cell : row) {
      if (!Sheets.text(cell).isEmpty()) {
        return Optional.of(cell);
      }
    }
    return Optional.empty();
  }

  private void table(Sheets.Table table) {
    int last = table.firstRow() - 1;
    for (Row row : table.sheet()) {
      for (Sheets.Column column : table.columns()) {
        Cell cell = row.getCell(column.index());
        if (cell != null && !Sheets.text(cell).isEmpty() && row.getRowNum() >= table.firstRow()) {
          last = Math.max(last, row.getRowNum());
        }
      }
    }
    for (Row row : table.sheet()) {
      if (row.getRowNum() >= table.headingRow() && row.getRowNum() <= last) {
        dress(table, row);
      }
    }
    Measure.fit(table);
    int key = table.columns().get(0).index();
    table.sheet().createFreezePane(key + 1, table.firstRow());
    dropDowns.offer(table, last);
  }

  private void dress(Sheets.Table table, Row row) {
    for (Sheets.Column column : table.columns()) {
      Cell cell = row.getCell(column.index(), Row.MissingCellPolicy.CREATE_NULL_AS_BLANK);
      boolean key = column == table.columns().get(0);
      if (row.getRowNum() == table.headingRow()) {
        dress.put(cell, Dress.Part.HEADING);
      } else if (row.getRowNum() == table.namesRow()) {
        dress.put(cell, Dress.Part.KEY);
      } else {
        dress.put(cell, key ? Dress.Part.NAME : Dress.Part.BODY);
      }
    }
  }
}
