package org.cotyla.json;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.cotyla.compile.ProtocolCompiler;
import org.cotyla.draft.DecisionDraft;
import org.cotyla.draft.Headings;
import org.cotyla.draft.Line;
import org.cotyla.draft.ProtocolDraft;
import org.cotyla.draft.RowDraft;
import org.cotyla.draft.Text;
import org.cotyla.expression.Dialect;
import org.cotyla.expression.StandardFunctions;
import org.cotyla.issue.CellRef;
import org.cotyla.issue.Issues;
import org.cotyla.issue.RejectedException;
import org.cotyla.protocol.Protocol;

/** An invented protocol about sprained ankles with a field of every type and little else. */
final class AnkleFields {

  private static final String ABOUT =
      """
      identifier | title | version | status | owner | caution | stages
      ankle | Sprained ankle | 1.0 | draft | lead | Invented for tests. | first visit, review
      """;

  private static final String FIELDS =
      """
      name | kind | type | unit | allowed | usual | stage | group | meaning | source
      days since injury | given | number | d | [0..60] | [0..21] | first visit | History | Whole days. | HOUSE
      date of injury | given | date | - | - | - | first visit | History | The day itself. | HOUSE
      swelling | given | choice | - | none, mild, moderate, severe | - | first visit | Signs | By eye. | HOUSE
      able to walk | given | yes/no | - | - | - | first visit | Signs | Four steps. | HOUSE
      calf girth gain | given | number | mm | [0..80] | [0..40] | first visit | Signs | Against the other side. | HOUSE
      steps managed | given | number | 1 | [0..1000] | - | first visit | Signs | Counted. | HOUSE
      remark | given | text | - | - | - | first visit | Signs | Anything else. | HOUSE
      talar tilt | given | number | deg | [0..40] | - | review | Signs | On the stress film. | HOUSE
      grade | derived | choice | - | light, bad | - | first visit | Result | How bad it is. | HOUSE
      """;

  private AnkleFields() {}

  static Protocol protocol() {
    Issues issues = new Issues();
    return new ProtocolCompiler(StandardFunctions.all(), Dialect.KIND)
        .compile(draft(), issues)
        .orElseThrow(() -> new RejectedException(issues.list()));
  }

  private static ProtocolDraft draft() {
    Map<String, Text> about = new HashMap<>(lines("Protocol", ABOUT).get(0).cells());
    Headings.ABOUT.forEach(key -> about.putIfAbsent(key, text("", 0)));
    List<Line> sources =
        lines(
            "Sources",
            """
            key | citation | year | certainty
            HOUSE | Opinion of an invented department. | - | house opinion
            """);
    DecisionDraft grade =
        new DecisionDraft(
            text("Grade", 0),
            text("F", 1),
            text("How bad is it?", 2),
            text("", 3),
            text("", 4),
            List.of(text("swelling", 5)),
            List.of(text("grade", 6)),
            List.of(row("GR-1", "severe", "bad"), row("GR-2", "-", "light")));
    return new ProtocolDraft(
        "ankle",
        about,
        lines("Fields", FIELDS),
        List.of(),
        List.of(),
        sources,
        List.of(),
        List.of(grade));
  }

  private static RowDraft row(String id, String test, String result) {
    return new RowDraft(
        text(id, 7),
        List.of(text(test, 8)),
        List.of(text(result, 9)),
        text("Because of it.", 10),
        text("HOUSE", 11));
  }

  private static Text text(String text, int column) {
    return new Text(text, new CellRef("Grade", 0, column));
  }

  private static List<Line> lines(String sheet, String table) {
    List<String[]> rows = table.lines().map(line -> line.split("\\|")).toList();
    String[] heads = rows.get(0);
    return IntStream.range(1, rows.size())
        .mapToObj(row -> line(sheet, row, heads, rows.get(row)))
        .toList();
  }

  private static Line line(String sheet, int row, String[] heads, String[] values) {
    Map<String, Text> cells = new HashMap<>();
    for (int column = 0; column < heads.length; column++) {
      CellRef at = new CellRef(sheet, row, column);
      cells.put(heads[column].strip(), new Text(values[column], at));
    }
    return new Line(new CellRef(sheet, row, 0), cells);
  }
}
