package org.cotyla.workbook;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.cotyla.workbook.PackageStructure.Relation;
import org.cotyla.workbook.WorkbookPart.SheetEntry;

/** From the bytes of a file to the grid, or one refusal. */
final class GridReader {

  private final Refusal refusal;
  private final Parts parts;
  private final PackageStructure structure;
  private final CellCount count;

  private GridReader(byte[] file, Refusal refusal) {
    this.refusal = refusal;
    if (file.length > Limits.FILE_BYTES) {
      throw tooLarge(refusal);
    }
    new FileKind(refusal).requireZip(file);
    this.parts = new Parts(Archive.unpack(file, refusal), refusal);
    this.structure = new PackageStructure(parts, refusal);
    this.count = new CellCount(refusal);
  }

  static RuntimeException tooLarge(Refusal refusal) {
    return refusal.because("W002", "the file is larger than 16 MiB, the most that is read");
  }

  static Grid read(String name, byte[] file) {
    return new GridReader(file, new Refusal(name)).grid();
  }

  private Grid grid() {
    String workbookPart = structure.workbookPart();
    WorkbookPart workbook = parts.read(workbookPart, WorkbookPart::from);
    count.sheets(workbook.sheets().size());
    refuseEqualNames(workbook.sheets());
    Map<String, Relation> relations = structure.relationsOf(workbookPart);
    CellValues values =
        new CellValues(
            parts
                .readIfThere(partOf(relations, "sharedStrings"), SharedStrings::from)
                .orElse(List.of()),
            parts
                .readIfThere(partOf(relations, "styles"), CellStyles::from)
                .orElse(CellStyles.NONE),
            workbook.from1904(),
            workbook.linkingNames());
    List<Sheet> sheets = new ArrayList<>();
    for (SheetEntry entry : workbook.sheets()) {
      Relation relation = relations.get(entry.relation());
      if (relation == null) {
        throw refusal.damaged("its sheet `" + entry.name() + "` is missing");
      }
      // A sheet of another kind (a chart on a tab of its own) has no cells.
      if (relation.kind().equals("worksheet")) {
        SheetPart part = new SheetPart(entry.name(), values, count);
        sheets.add(parts.read(relation.part(), xml -> part.from(xml, entry.hidden())));
      }
    }
    return new Grid(refusal.file(), sheets);
  }

  private static String partOf(Map<String, Relation> relations, String kind) {
    return relations.values().stream()
        .filter(relation -> relation.kind().equals(kind))
        .map(Relation::part)
        .findFirst()
        .orElse("");
  }

  /** Places are named by sheet, so a name must mean one sheet. */
  private void refuseEqualNames(List<SheetEntry> sheets) {
    Set<String> names = new HashSet<>();
    for (SheetEntry sheet : sheets) {
      if (!names.add(sheet.name().toLowerCase(Locale.ROOT))) {
        throw refusal.because("W030", "two sheets have one name: `" + sheet.name() + "`");
      }
    }
  }
}
