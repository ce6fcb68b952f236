package org.cotyla.testcases.benchmarks;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.IntStream;
import org.cotyla.compile.ProtocolCompiler;
import org.cotyla.draft.DecisionDraft;
import org.cotyla.draft.Line;
import org.cotyla.draft.ProtocolDraft;
import org.cotyla.draft.RowDraft;
import org.cotyla.draft.Text;
import org.cotyla.expression.Dialect;
import org.cotyla.expression.StandardFunctions;
import org.cotyla.finding.Case;
import org.cotyla.issue.CellRef;
import org.cotyla.issue.Issues;
import org.cotyla.protocol.Protocol;

/**
 * A protocol of one table that votes for 12 options: 12 inputs, half of them numbers and half
 * choices of four, and three tests a row on average. The same seed gives the same protocol.
 */
final class GeneratedProtocol {

  private static final int INPUTS = 12;
  private static final List<String> CHOICES = List.of("one", "two", "three", "four");

  private final Random random;

  private GeneratedProtocol(long seed) {
    this.random = new Random(seed);
  }

  static ProtocolDraft draft(int rows) {
    return draft(rows, "C");
  }

  static ProtocolDraft draft(int rows, String hitPolicy) {
    return new GeneratedProtocol(rows).build(rows, hitPolicy);
  }

  static Protocol compiled(ProtocolDraft draft) {
    Issues issues = new Issues();
    return new ProtocolCompiler(StandardFunctions.all(), Dialect.KIND)
        .compile(draft, issues)
        .orElseThrow(() -> new IllegalStateException(issues.list().toString()));
  }

  /** Cases in which each datum is missing with the given probability. */
  static List<Case> cases(int count, double missing) {
    Random random = new Random(7);
    return IntStream.range(0, count).mapToObj(i -> oneCase(random, missing)).toList();
  }

  private static Case oneCase(Random random, double missing) {
    Map<String, Object> findings = new LinkedHashMap<>();
    for (int i = 0; i < INPUTS; i++) {
      if (random.nextDouble() >= missing) {
        findings.put(name(i), isNumber(i) ? random.nextInt(101) : CHOICES.get(random.nextInt(4)));
      }
    }
    return Case.of(findings);
  }

  private static boolean isNumber(int input) {
    return input % 2 == 0;
  }

  private static String name(int input) {
    return (isNumber(input) ? "number " : "choice ") + (char) ('a' + input);
  }

  private ProtocolDraft build(int rows, String hitPolicy) {
    List<Line> fields = IntStream.range(0, INPUTS).mapToObj(GeneratedProtocol::field).toList();
    List<Line> options =
        IntStream.range(0, 12)
            .mapToObj(
                i -> line("ranking", "kit", "option", option(i), "meaning", "m", "source", "S"))
            .toList();
    List<Text> when = IntStream.range(0, INPUTS).mapToObj(i -> text(name(i))).toList();
    DecisionDraft votes =
        new DecisionDraft(
            text("votes"),
            text(hitPolicy),
            text("which option"),
            text("kit"),
            text(""),
            when,
            List.of(text("option"), text("effect"), text("points")),
            IntStream.range(0, rows).mapToObj(this::row).toList());
    Map<String, Text> about = new HashMap<>();
    List.of("identifier", "title", "version", "caution").forEach(key -> about.put(key, text("x")));
    about.put("status", text("draft"));
    Line source = line("key", "S", "citation", "invented", "certainty", "house opinion");
    return new ProtocolDraft(
        "generated", about, fields, options, List.of(), List.of(source), List.of(), List.of(votes));
  }

  private RowDraft row(int number) {
    List<Text> tests = new ArrayList<>();
    for (int i = 0; i < INPUTS; i++) {
      boolean tested = random.nextInt(4) == 0;
      tests.add(text(!tested ? "-" : isNumber(i) ? numberTest() : choiceTest()));
    }
    String effect = random.nextBoolean() ? "favour" : "oppose";
    List<Text> results =
        List.of(
            text(option(random.nextInt(12))),
            text(effect),
            text(String.valueOf(1 + random.nextInt(5))));
    return new RowDraft(text("R-" + number), tests, results, text("invented"), text("S"));
  }

  private String numberTest() {
    return random.nextBoolean()
        ? "> " + random.nextInt(20) * 5
        : "[" + random.nextInt(10) * 5 + ".." + (50 + random.nextInt(10) * 5) + "]";
  }

  private String choiceTest() {
    return random.nextBoolean()
        ? CHOICES.get(random.nextInt(4))
        : CHOICES.get(random.nextInt(2)) + ", " + CHOICES.get(2 + random.nextInt(2));
  }

  private static Line field(int input) {
    return line(
        "name",
        name(input),
        "kind",
        "given",
        "type",
        isNumber(input) ? "number" : "choice",
        "allowed",
        isNumber(input) ? "[0..100]" : String.join(", ", CHOICES),
        "meaning",
        "m",
        "source",
        "S");
  }

  private static String option(int number) {
    return "option " + (char) ('a' + number);
  }

  private static Text text(String text) {
    return new Text(text, new CellRef("generated", 0, 0));
  }

  private static Line line(String... cells) {
    Map<String, Text> map = new HashMap<>();
    for (int i = 0; i < cells.length; i += 2) {
      map.put(cells[i], text(cells[i + 1]));
    }
    return new Line(new CellRef("generated", 0, 0), map);
  }
}
