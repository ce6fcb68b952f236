package org.cotyla.workbook;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.cotyla.draft.ChecksDraft;
import org.cotyla.draft.DecisionDraft;
import org.cotyla.draft.Line;
import org.cotyla.draft.ProtocolDraft;
import org.cotyla.draft.TableDraft;
import org.cotyla.draft.Text;
import org.cotyla.issue.Issues;
import org.cotyla.issue.Place;
import org.cotyla.name.Names;

/** From the grid to the draft of a protocol. Used once. */
final class DraftReader {

  private static final String PROTOCOL = "Protocol";
  private static final List<HeadedSheet> HEADED =
      List.of(
          HeadedSheet.FIELDS,
          HeadedSheet.OPTIONS,
          HeadedSheet.CALCULATIONS,
          HeadedSheet.SOURCES,
          HeadedSheet.CHANGES,
          HeadedSheet.ACCEPTED,
          HeadedSheet.PICTURES,
          HeadedSheet.REASONS,
          HeadedSheet.OUTCOMES);
  private static final String SAFEGUARDS = "Safeguards";
  private static final String CASES = "Cases";

  private final Grid grid;
  private final Issues issues;
  private final Map<String, Sheet> known = new LinkedHashMap<>();
  private final List<Sheet> others = new ArrayList<>();
  private boolean sound = true;

  private DraftReader(Grid grid, Issues issues) {
    this.grid = grid;
    this.issues = issues;
  }

  /**
   * The draft; nothing when a sheet is missing or its headings are wrong. Then what the other
   * sheets say would be judged wrongly.
   */
  static Optional<ProtocolDraft> read(Grid grid, Issues issues) {
    return new DraftReader(grid, issues).read();
  }

  private Optional<ProtocolDraft> read() {
    sortSheets();
    requireSheets();
    CellReading reading = new CellReading(issues);
    known.values().forEach(reading::noteHidden);
    Map<String, Text> about =
        Optional.ofNullable(known.get(Names.key(PROTOCOL)))
            .map(new ProtocolSheet(issues)::read)
            .orElse(Map.of());
    List<List<Line>> headed = HEADED.stream().map(this::lines).toList();
    TableDraft safeguards = table(SAFEGUARDS, TableColumns.Layout.SAFEGUARDS);
    TableDraft cases = table(CASES, TableColumns.Layout.CASES);
    List<DecisionDraft> decisions = new ArrayList<>();
    for (Sheet sheet : others) {
      if (DecisionSheets.is(sheet)) {
        reading.noteHidden(sheet);
        Optional<DecisionDraft> decision = new DecisionSheet(sheet, issues).read();
        decision.ifPresent(decisions::add);
        sound &= decision.isPresent();
      } else if (!isSlipOfKnownName(sheet)) {
        sound &= !DecisionSheets.refuseSlip(sheet, issues);
      }
    }
    return sound
        ? Optional.of(
            new ProtocolDraft(
                grid.origin(),
                about,
                headed.get(0),
                headed.get(1),
                headed.get(2),
                headed.get(3),
                headed.get(4),
                decisions,
                headed.get(6),
                new ChecksDraft(safeguards, headed.get(5), cases),
                headed.get(7),
                headed.get(8)))
        : Optional.empty();
  }

  private void sortSheets() {
    Set<String> names = sheetNames().map(Names::key).collect(Collectors.toSet());
    for (Sheet sheet : grid.sheets()) {
      String key = Names.key(sheet.name());
      if (!names.contains(key)) {
        others.add(sheet);
      } else {
        Sheet earlier = known.putIfAbsent(key, sheet);
        if (earlier != null) {
          issues.error(
              "W030",
              sheet.corner(),
              "two sheets have one name: `" + earlier.name() + "` and `" + sheet.name() + "`");
          sound = false;
        }
      }
    }
  }

  private void requireSheets() {
    Stream.concat(
            Stream.of(PROTOCOL),
            HEADED.stream().filter(HeadedSheet::required).map(HeadedSheet::name))
        .filter(name -> !known.containsKey(Names.key(name)))
        .forEach(
            name -> {
              sound = false;
              Optional<String> slip =
                  others.stream()
                      .map(Sheet::name)
                      .filter(other -> NearMiss.of(other, List.of(name)).isPresent())
                      .findFirst();
              issues.error(
                  "W031",
                  new Place.Whole(grid.origin()),
                  "the workbook has no sheet `" + name + "`",
                  slip.map(other -> "rename the sheet `" + other + "` if that is meant"));
            });
  }

  /** Whether the sheet's name is nearly that of a sheet that the workbook lacks. */
  private boolean isSlipOfKnownName(Sheet sheet) {
    List<String> missing =
        withHeadings().filter(name -> !known.containsKey(Names.key(name))).toList();
    Optional<String> meant = NearMiss.of(sheet.name(), missing);
    meant.ifPresent(
        name -> {
          sound = false;
          issues.error(
              "W032",
              sheet.corner(),
              "the sheet is not read: `" + sheet.name() + "` is not a sheet of the format",
              "did you mean `" + name + "`?");
        });
    return meant.isPresent();
  }

  /** The names of the sheets that are no decision's. */
  static Stream<String> sheetNames() {
    return Stream.concat(Stream.of(PROTOCOL), withHeadings());
  }

  private static Stream<String> withHeadings() {
    return Stream.concat(HEADED.stream().map(HeadedSheet::name), Stream.of(SAFEGUARDS, CASES));
  }

  private TableDraft table(String name, TableColumns.Layout layout) {
    Sheet sheet = known.get(Names.key(name));
    if (sheet == null) {
      return TableDraft.empty();
    }
    Optional<TableDraft> table = new TableSheet(layout, issues).read(sheet);
    sound &= table.isPresent();
    return table.orElse(TableDraft.empty());
  }

  private List<Line> lines(HeadedSheet kind) {
    Sheet sheet = known.get(Names.key(kind.name()));
    if (sheet == null) {
      return List.of();
    }
    Optional<List<Line>> lines = kind.read(sheet, issues);
    sound &= lines.isPresent();
    return lines.orElse(List.of());
  }
}
