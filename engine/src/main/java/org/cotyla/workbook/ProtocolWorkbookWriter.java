package org.cotyla.workbook;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.poi.ss.util.WorkbookUtil;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.cotyla.draft.DecisionDraft;
import org.cotyla.draft.Headings;
import org.cotyla.draft.Line;
import org.cotyla.draft.ProtocolDraft;
import org.cotyla.draft.RowDraft;
import org.cotyla.draft.Text;
import org.cotyla.name.Names;

/**
 * Writes the answering part of a protocol's draft as a workbook that reads back to the same: what
 * it is, its fields, options, calculations, decisions, sources and changes. What only checks or
 * draws (safeguards, cases, accepted warnings, pictures, reasons and outcomes) is not written.
 */
public final class ProtocolWorkbookWriter {

  private static final int SHEET_NAME = 31;
  private static final String RESERVED_BY_EXCEL = "History";

  private final ProtocolDraft draft;
  private final XSSFWorkbook workbook = new XSSFWorkbook();
  private final WrittenStyles styles = new WrittenStyles(workbook);
  private final Set<String> sheetNames =
      Stream.concat(DraftReader.sheetNames(), Stream.of(RESERVED_BY_EXCEL))
          .map(Names::key)
          .collect(Collectors.toCollection(HashSet::new));

  private ProtocolWorkbookWriter(ProtocolDraft draft) {
    this.draft = draft;
  }

  /** The workbook's file. What is blank in the draft is blank in it. */
  public static byte[] write(ProtocolDraft draft) {
    return new ProtocolWorkbookWriter(draft).write();
  }

  private byte[] write() {
    try (workbook;
        ByteArrayOutputStream out = new ByteArrayOutputStream()) {
      about();
      headed("Fields", Headings.FIELDS, draft.fields());
      headed("Options", Headings.OPTIONS, draft.options());
      headed("Calculations", Headings.CALCULATIONS, draft.calculations());
      draft.decisions().forEach(this::decision);
      headed("Sources", Headings.SOURCES, draft.sources());
      headed("Changes", Headings.CHANGES, draft.changes());
      workbook.write(out);
      return out.toByteArray();
    } catch (IOException impossible) {
      throw new UncheckedIOException("a workbook could not be written into memory", impossible);
    }
  }

  private void about() {
    WrittenSheet sheet = new WrittenSheet(workbook.createSheet("Protocol"), styles);
    Map<String, Text> about = draft.about();
    for (String key : Headings.ABOUT) {
      String value = about.containsKey(key) ? about.get(key).text() : "";
      sheet.keyed(key, value);
    }
    sheet.finish(0, 1);
  }

  private void headed(String name, List<String> headings, List<Line> lines) {
    WrittenSheet sheet = new WrittenSheet(workbook.createSheet(name), styles);
    sheet.heading(headings);
    lines.forEach(
        line -> sheet.row(headings.stream().map(heading -> line.get(heading).text()).toList()));
    sheet.finish(1, 1);
  }

  private void decision(DecisionDraft decision) {
    XSSFSheet created = workbook.createSheet(sheetName(decision.name().text()));
    WrittenSheet sheet = new WrittenSheet(created, styles);
    sheet.keyed("decision", decision.name().text());
    sheet.keyed("hit policy", decision.hitPolicy().text());
    sheet.keyed("asks", decision.asks().text());
    if (!decision.ranks().isBlank()) {
      sheet.keyed("ranks", decision.ranks().text());
    }
    if (!decision.shownAs().isBlank()) {
      sheet.keyed("shown as", decision.shownAs().text());
    }
    sheet.heading(parts(decision));
    sheet.heading(
        Stream.of(List.of(""), words(decision.when()), words(decision.then()), List.of("", ""))
            .flatMap(List::stream)
            .toList());
    int top = created.getLastRowNum() + 1;
    decision.rows().forEach(row -> sheet.row(cells(row)));
    sheet.finish(top, 1);
  }

  private static List<String> parts(DecisionDraft decision) {
    List<String> parts = new ArrayList<>();
    parts.add("id");
    decision.when().forEach(column -> parts.add("when"));
    decision.then().forEach(column -> parts.add("then"));
    parts.addAll(List.of("because", "source"));
    return parts;
  }

  private static List<String> cells(RowDraft row) {
    return Stream.of(
            List.of(row.id().text()),
            words(row.tests()),
            words(row.results()),
            List.of(row.because().text(), row.sources().text()))
        .flatMap(List::stream)
        .toList();
  }

  private static List<String> words(List<Text> texts) {
    return texts.stream().map(Text::text).toList();
  }

  /** The decision's name as far as a tab can bear it, and no name twice. */
  private String sheetName(String decision) {
    String safe = WorkbookUtil.createSafeSheetName(decision.isBlank() ? "Decision" : decision, ' ');
    String name = safe.strip();
    for (int i = 2; !sheetNames.add(Names.key(name)); i++) {
      String number = " " + i;
      int room = Math.min(safe.length(), SHEET_NAME - number.length());
      name = safe.substring(0, room).strip() + number;
    }
    return name;
  }
}
