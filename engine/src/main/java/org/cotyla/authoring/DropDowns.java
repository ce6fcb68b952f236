package org.cotyla.authoring;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.apache.poi.ss.usermodel.DataValidation;
import org.apache.poi.ss.usermodel.DataValidationConstraint;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.ss.util.CellRangeAddressList;
import org.apache.poi.xssf.usermodel.XSSFDataValidation;
import org.apache.poi.xssf.usermodel.XSSFDataValidationHelper;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.cotyla.expression.Symbol;
import org.cotyla.issue.CellRef;
import org.cotyla.protocol.Certainty;
import org.cotyla.protocol.DemandWord;
import org.cotyla.protocol.Effect;
import org.cotyla.protocol.HitPolicy;
import org.cotyla.protocol.Option;
import org.cotyla.protocol.Protocol;
import org.cotyla.protocol.Ranking;
import org.cotyla.protocol.ShownAs;
import org.cotyla.protocol.Source;
import org.cotyla.protocol.Status;
import org.cotyla.value.ValueType;

/** Which words the cells of a protocol offer. Rules of people's own columns are kept. */
final class DropDowns {

  /** Room beneath the last row, so that a new row is offered its words as well. */
  private static final int ROWS_BELOW = 200;

  private static final int LONGEST_LIST = 250;
  private static final List<String> YES_NO = List.of("yes", "no");

  private final Protocol protocol;
  private final Map<XSSFSheet, List<Rule>> rules = new HashMap<>();

  /** What a range of cells offers, and whether it takes nothing else. */
  private record Rule(CellRangeAddress cells, String formula, List<String> words, boolean only) {}

  DropDowns(Protocol protocol) {
    this.protocol = protocol;
  }

  /** The words for a table's columns. */
  void offer(Sheets.Table table, int lastRow) {
    for (Sheets.Column column : table.columns()) {
      CellRangeAddress cells =
          new CellRangeAddress(
              table.firstRow(), lastRow + ROWS_BELOW, column.index(), column.index());
      offer(table, column, (XSSFSheet) table.sheet(), cells);
    }
  }

  private void offer(
      Sheets.Table table, Sheets.Column column, XSSFSheet sheet, CellRangeAddress cells) {
    switch (table.kind() + "/" + column.heading().toLowerCase(java.util.Locale.ROOT)) {
      case "Fields/kind" -> words(sheet, cells, List.of("given", "derived"), true);
      case "Fields/type" ->
          words(sheet, cells, List.of("number", "choice", "yes/no", "text", "date"), true);
      case "Fields/stage", "Cases/stage" -> words(sheet, cells, protocol.about().stages(), false);
      case "Options/ranking" -> words(sheet, cells, rankings(), false);
      case "Sources/certainty" -> words(sheet, cells, Certainty.words(), true);
      case "Safeguards/must" -> words(sheet, cells, DemandWord.words(), true);
      case "Fields/source",
          "Options/source",
          "Calculations/source",
          "Safeguards/source",
          "decision/source" ->
          range(sheet, cells, protocol.sources().stream().map(Source::at).toList());
      case "Safeguards/when", "decision/when", "decision/then", "Cases/given", "Cases/expect" ->
          named(table, column, sheet, cells);
      default -> {}
    }
  }

  private List<String> rankings() {
    return protocol.rankings().stream().map(Ranking::name).toList();
  }

  private void named(
      Sheets.Table table, Sheets.Column column, XSSFSheet sheet, CellRangeAddress cells) {
    boolean test = column.says("when");
    protocol
        .vocabulary()
        .symbol(column.name())
        .ifPresentOrElse(
            symbol -> values(symbol, test, sheet, cells), () -> vote(table, column, sheet, cells));
  }

  private void values(Symbol symbol, boolean test, XSSFSheet sheet, CellRangeAddress cells) {
    List<String> words = new ArrayList<>(test ? List.of("-") : List.of());
    if (symbol.isChoice()) {
      words.addAll(symbol.choices());
    } else if (symbol.type() == ValueType.YES_NO) {
      words.addAll(YES_NO);
    } else {
      return;
    }
    if (fits(words)) {
      words(sheet, cells, words, false);
    } else {
      protocol.rankings().stream()
          .filter(ranking -> names(ranking).equals(symbol.choices()))
          .findFirst()
          .ifPresent(ranking -> range(sheet, cells, places(ranking)));
    }
  }

  private void vote(
      Sheets.Table table, Sheets.Column column, XSSFSheet sheet, CellRangeAddress cells) {
    String name = org.cotyla.name.Names.key(column.name());
    if (!column.says("then")) {
      return;
    }
    if (name.equals("effect")) {
      words(sheet, cells, Effect.words(), true);
    } else if (name.equals("option")) {
      protocol.decisions().stream()
          .filter(decision -> decision.at().sheet().equals(table.sheet().getSheetName()))
          .flatMap(decision -> decision.ranking().stream())
          .flatMap(ranking -> protocol.ranking(ranking).stream())
          .forEach(ranking -> range(sheet, cells, places(ranking)));
    }
  }

  private static List<String> names(Ranking ranking) {
    return ranking.options().stream().map(Option::name).toList();
  }

  private static List<CellRef> places(Ranking ranking) {
    return ranking.options().stream().map(Option::at).toList();
  }

  /** The words for a key's value, such as a hit policy. */
  void offerKey(XSSFSheet sheet, String key, int row, int column) {
    CellRangeAddress cell = new CellRangeAddress(row, row, column, column);
    switch (key) {
      case "status" -> words(sheet, cell, Status.words(), true);
      case "hit policy" -> words(sheet, cell, HitPolicy.allLetters(), true);
      case "shown as" -> words(sheet, cell, ShownAs.words(), true);
      case "ranks" -> words(sheet, cell, rankings(), true);
      default -> {}
    }
  }

  private static boolean fits(List<String> words) {
    return String.join(",", words).length() <= LONGEST_LIST
        && words.stream().noneMatch(word -> word.contains(","));
  }

  private void words(XSSFSheet sheet, CellRangeAddress cells, List<String> words, boolean only) {
    if (fits(words) && !words.isEmpty()) {
      add(sheet, new Rule(cells, "", words, only));
    }
  }

  /** Words that stand in a column of the workbook are taken from there, when none is between. */
  private void range(XSSFSheet sheet, CellRangeAddress cells, List<CellRef> places) {
    TreeSet<Integer> rows = new TreeSet<>(places.stream().map(CellRef::row).toList());
    boolean unbroken = !rows.isEmpty() && rows.last() - rows.first() + 1 == places.size();
    if (unbroken) {
      CellRef first = places.stream().min(Comparator.naturalOrder()).orElseThrow();
      CellRangeAddress range =
          new CellRangeAddress(rows.first(), rows.last(), first.column(), first.column());
      add(sheet, new Rule(cells, range.formatAsString(first.sheet(), true), List.of(), false));
    }
  }

  private void add(XSSFSheet sheet, Rule rule) {
    rules.computeIfAbsent(sheet, key -> new ArrayList<>()).add(rule);
  }

  /** Writes the rules of a sheet in place of earlier ones on the same cells. */
  void write(XSSFSheet sheet) {
    List<Rule> wanted = rules.getOrDefault(sheet, List.of());
    List<XSSFDataValidation> old = sheet.getDataValidations();
    for (int i = old.size() - 1; i >= 0; i--) {
      if (isReplaced(old.get(i), wanted)) {
        sheet.getCTWorksheet().getDataValidations().removeDataValidation(i);
      }
    }
    boolean none =
        sheet.getCTWorksheet().isSetDataValidations()
            && sheet.getCTWorksheet().getDataValidations().sizeOfDataValidationArray() == 0;
    if (none) {
      sheet.getCTWorksheet().unsetDataValidations();
    }
    XSSFDataValidationHelper helper = new XSSFDataValidationHelper(sheet);
    for (Rule rule : wanted) {
      DataValidationConstraint constraint =
          rule.formula().isEmpty()
              ? helper.createExplicitListConstraint(rule.words().toArray(String[]::new))
              : helper.createFormulaListConstraint(rule.formula());
      CellRangeAddressList cells = new CellRangeAddressList();
      cells.addCellRangeAddress(rule.cells());
      DataValidation validation = helper.createValidation(constraint, cells);
      validation.setSuppressDropDownArrow(true);
      validation.setEmptyCellAllowed(true);
      validation.setShowErrorBox(rule.only());
      if (rule.only()) {
        validation.createErrorBox("Not a word of the format", "One of the words of the list.");
      }
      sheet.addValidationData(validation);
    }
  }

  private static boolean isReplaced(XSSFDataValidation old, List<Rule> wanted) {
    for (CellRangeAddress cells : old.getRegions().getCellRangeAddresses()) {
      if (wanted.stream().anyMatch(rule -> rule.cells().intersects(cells))) {
        return true;
      }
    }
    return false;
  }
}
