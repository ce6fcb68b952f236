package org.cotyla.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import org.cotyla.compile.ProtocolCompiler;
import org.cotyla.draft.ChecksDraft;
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

/** The sheets of a workbook written as plain text, one line per row, cells parted by bars. */
public final class TextProtocol {

  private final Map<String, List<List<Text>>> sheets = new LinkedHashMap<>();

  private TextProtocol(String text) {
    List<List<Text>> sheet = new ArrayList<>();
    String name = "";
    for (String line : text.lines().filter(one -> !one.isBlank()).toList()) {
      if (line.startsWith("== ")) {
        name = line.substring(3);
        sheet = new ArrayList<>();
        sheets.put(name, sheet);
      } else {
        List<Text> row = new ArrayList<>();
        for (String cell : line.split("\\|", -1)) {
          row.add(new Text(cell, new CellRef(name, sheet.size(), row.size())));
        }
        sheet.add(row);
      }
    }
  }

  /** The invented protocol about sprained ankles. */
  public static Protocol ankle() {
    return ankle(UnaryOperator.identity());
  }

  /** The same with its text changed. */
  public static Protocol ankle(UnaryOperator<String> change) {
    try (InputStream in = TextProtocol.class.getResourceAsStream("ankle.txt")) {
      String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
      return new TextProtocol(change.apply(text)).compile();
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  private Protocol compile() {
    Issues issues = new Issues();
    Map<String, Text> about = new HashMap<>();
    sheets.remove("Protocol").forEach(row -> about.put(row.get(0).text(), row.get(1)));
    List<Line> pictures = sheets.containsKey("Pictures") ? table("Pictures") : List.of();
    ProtocolDraft draft =
        new ProtocolDraft(
            "ankle.txt",
            about,
            table("Fields"),
            table("Options"),
            table("Calculations"),
            table("Sources"),
            List.of(),
            sheets.values().stream().map(TextProtocol::decision).toList(),
            pictures,
            ChecksDraft.none(),
            List.of(),
            List.of());
    return new ProtocolCompiler(StandardFunctions.all(), Dialect.KIND)
        .compile(draft, issues)
        .orElseThrow(() -> new RejectedException(issues.list()));
  }

  private List<Line> table(String name) {
    List<List<Text>> rows = sheets.remove(name);
    List<Line> lines = new ArrayList<>();
    for (List<Text> row : rows.subList(1, rows.size())) {
      Map<String, Text> cells = new HashMap<>();
      for (int column = 0; column < row.size(); column++) {
        cells.put(rows.get(0).get(column).text(), row.get(column));
      }
      lines.add(new Line(row.get(0).at(), cells));
    }
    return lines;
  }

  private static DecisionDraft decision(List<List<Text>> rows) {
    Text none = new Text("", rows.get(0).get(0).at());
    Map<String, Text> head = new HashMap<>();
    int parts = 0;
    while (!rows.get(parts).get(0).text().equals("id")) {
      head.put(rows.get(parts).get(0).text(), rows.get(parts).get(1));
      parts++;
    }
    int[] when = columns(rows.get(parts), "when");
    int[] then = columns(rows.get(parts), "then");
    List<RowDraft> drafts = new ArrayList<>();
    for (List<Text> row : rows.subList(parts + 2, rows.size())) {
      drafts.add(
          new RowDraft(
              row.get(0),
              cells(row, when),
              cells(row, then),
              row.get(row.size() - 2),
              row.get(row.size() - 1)));
    }
    List<Text> names = rows.get(parts + 1);
    List<Text> keys =
        Headings.DECISION_HEAD.stream().map(key -> head.getOrDefault(key, none)).toList();
    return new DecisionDraft(
        keys.get(0),
        keys.get(1),
        keys.get(2),
        keys.get(3),
        keys.get(4),
        cells(names, when),
        cells(names, then),
        drafts);
  }

  private static int[] columns(List<Text> parts, String part) {
    int[] columns = new int[parts.size()];
    int found = 0;
    for (int column = 0; column < parts.size(); column++) {
      if (parts.get(column).text().equals(part)) {
        columns[found++] = column;
      }
    }
    return Arrays.copyOf(columns, found);
  }

  private static List<Text> cells(List<Text> row, int[] columns) {
    return Arrays.stream(columns).mapToObj(row::get).toList();
  }
}
