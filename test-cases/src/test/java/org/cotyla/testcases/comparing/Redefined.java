package org.cotyla.testcases.comparing;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.function.UnaryOperator;
import org.cotyla.draft.DecisionDraft;
import org.cotyla.draft.Line;
import org.cotyla.draft.ProtocolDraft;
import org.cotyla.draft.RowDraft;
import org.cotyla.draft.Text;

/**
 * Copies of a protocol's text with one edit of what its rows are written over: fields,
 * calculations, options, hit policies, and where a name has its value from. Some are faulty.
 */
final class Redefined {

  /** The sorts of edit. */
  enum Sort {
    RANGE,
    OTHER_RANGE,
    VALUES,
    CALCULATION,
    OPTIONS_TURNED,
    OPTION_GONE,
    VOTES_ELSEWHERE,
    HIT_POLICY,
    FORMULA_RESULT,
    DECISION_TO_CALCULATION,
    CALCULATION_TO_DECISION,
    GIVEN_TO_CALCULATION,
    CALCULATION_TO_GIVEN
  }

  private static final List<List<String>> POLICIES =
      List.of(List.of("U", "A", "F"), List.of("R", "C"), List.of("C<", "C>"), List.of("C+", "C#"));

  private final ProtocolDraft draft;
  private final Random random;

  Redefined(ProtocolDraft draft, long seed) {
    this.draft = draft;
    this.random = new Random(seed);
  }

  /** The edited text; nothing when there is nothing to edit so. */
  Optional<ProtocolDraft> with(Sort sort) {
    return switch (sort) {
      case RANGE -> field("number", "given", "allowed", "[1..4]");
      case OTHER_RANGE -> field("number", "given", "allowed", "[20..30]");
      case VALUES -> field("choice", "given", "allowed", "very high, low");
      case CALCULATION -> calculation();
      case OPTIONS_TURNED -> Optional.of(options(turned(draft.options())));
      case OPTION_GONE -> Optional.of(options(less(draft.options())));
      case VOTES_ELSEWHERE -> votesElsewhere();
      case HIT_POLICY -> hitPolicy();
      case FORMULA_RESULT -> formulaResult();
      case DECISION_TO_CALCULATION -> decisionToCalculation();
      case CALCULATION_TO_DECISION -> calculationToDecision();
      case GIVEN_TO_CALCULATION -> givenToCalculation();
      case CALCULATION_TO_GIVEN -> calculationToGiven();
    };
  }

  private <T> Optional<T> any(List<T> list) {
    return list.isEmpty() ? Optional.empty() : Optional.of(list.get(random.nextInt(list.size())));
  }

  private List<Line> fields(String type, String kind) {
    return draft.fields().stream()
        .filter(field -> field.get("type").text().equals(type))
        .filter(field -> field.get("kind").text().equals(kind))
        .toList();
  }

  private Optional<ProtocolDraft> field(String type, String kind, String heading, String text) {
    return any(fields(type, kind))
        .map(field -> fields(replaced(draft.fields(), field, changed(field, heading, text))));
  }

  private Optional<ProtocolDraft> calculation() {
    return any(draft.calculations())
        .map(
            line -> {
              String formula = line.get("expression").text();
              String other = random.nextBoolean() ? formula + " + 1" : "(" + formula + ") * 1";
              return calculations(
                  replaced(draft.calculations(), line, changed(line, "expression", other)));
            });
  }

  private static List<Line> turned(List<Line> lines) {
    List<Line> turned = new ArrayList<>(lines);
    Collections.reverse(turned);
    return turned;
  }

  private static List<Line> less(List<Line> lines) {
    return lines.isEmpty() ? lines : lines.subList(0, lines.size() - 1);
  }

  /** Its votes go to the options of the other ranking that have the same letter. */
  private Optional<ProtocolDraft> votesElsewhere() {
    return any(draft.decisions().stream().filter(one -> !one.ranks().text().equals("-")).toList())
        .map(
            voter -> {
              String was = voter.ranks().text();
              String is = was.equals("plan") ? "second plan" : "plan";
              List<RowDraft> rows = new ArrayList<>();
              for (RowDraft row : voter.rows()) {
                List<Text> results = new ArrayList<>(row.results());
                String option = results.get(0).text();
                results.set(0, text(results.get(0), is + option.substring(was.length())));
                rows.add(withResults(row, results));
              }
              return decision(voter, head(voter, voter.hitPolicy(), text(voter.ranks(), is), rows));
            });
  }

  private Optional<ProtocolDraft> hitPolicy() {
    return any(draft.decisions())
        .flatMap(
            decision ->
                POLICIES.stream()
                    .filter(alike -> alike.contains(decision.hitPolicy().text()))
                    .findFirst()
                    .flatMap(this::any)
                    .map(
                        policy ->
                            decision(
                                decision,
                                head(
                                    decision,
                                    text(decision.hitPolicy(), policy),
                                    decision.ranks(),
                                    decision.rows()))));
  }

  /** A number that a row gives, most often the default row, becomes a formula. */
  private Optional<ProtocolDraft> formulaResult() {
    List<String> numbers =
        fields("number", "derived").stream().map(field -> field.get("name").text()).toList();
    Optional<String> given =
        any(fields("number", "given")).map(field -> field.get("name").text() + " + 1");
    List<DecisionDraft> giving =
        draft.decisions().stream()
            .filter(one -> one.then().stream().map(Text::text).anyMatch(numbers::contains))
            .toList();
    return given.flatMap(
        formula ->
            any(giving)
                .map(
                    decision -> {
                      List<RowDraft> rows = new ArrayList<>(decision.rows());
                      int at = random.nextInt(4) > 0 ? rows.size() - 1 : 0;
                      List<Text> results = new ArrayList<>(rows.get(at).results());
                      for (int i = 0; i < results.size(); i++) {
                        if (numbers.contains(decision.then().get(i).text())) {
                          results.set(i, text(results.get(i), formula));
                        }
                      }
                      rows.set(at, withResults(rows.get(at), results));
                      return decision(
                          decision, head(decision, decision.hitPolicy(), decision.ranks(), rows));
                    }));
  }

  private Optional<ProtocolDraft> decisionToCalculation() {
    List<DecisionDraft> single =
        draft.decisions().stream()
            .filter(one -> one.then().size() == 1)
            .filter(
                one ->
                    fields("number", "derived").stream()
                        .anyMatch(
                            field -> field.get("name").text().equals(one.then().get(0).text())))
            .toList();
    return any(single)
        .map(
            decision -> {
              String name = decision.then().get(0).text();
              List<DecisionDraft> rest = new ArrayList<>(draft.decisions());
              rest.remove(decision);
              return copy(
                  without(draft.fields(), name),
                  draft.options(),
                  more(draft.calculations(), calculation(name)),
                  rest);
            });
  }

  private Optional<ProtocolDraft> calculationToDecision() {
    return any(draft.calculations())
        .flatMap(
            line ->
                any(draft.decisions())
                    .map(
                        shape -> {
                          String name = line.get("name").text();
                          String input = draft.fields().get(0).get("name").text();
                          List<Text> row = cells(shape, "N-1", "-", "3");
                          RowDraft only =
                              new RowDraft(
                                  row.get(0),
                                  row.subList(1, 2),
                                  row.subList(2, 3),
                                  text(row.get(0), "Reason."),
                                  text(row.get(0), "S"));
                          List<DecisionDraft> all = new ArrayList<>(draft.decisions());
                          all.add(
                              new DecisionDraft(
                                  text(shape.name(), "In place of it"),
                                  text(shape.hitPolicy(), "F"),
                                  shape.asks(),
                                  text(shape.ranks(), "-"),
                                  text(shape.shownAs(), "headline"),
                                  cells(shape, input),
                                  cells(shape, name),
                                  List.of(only)));
                          return copy(
                              more(draft.fields(), newField(name, "derived", "-")),
                              draft.options(),
                              without(draft.calculations(), name),
                              all);
                        }));
  }

  private Optional<ProtocolDraft> givenToCalculation() {
    return any(fields("number", "given"))
        .map(
            field -> {
              String name = field.get("name").text();
              return copy(
                  without(draft.fields(), name),
                  draft.options(),
                  more(draft.calculations(), calculation(name)),
                  draft.decisions());
            });
  }

  private Optional<ProtocolDraft> calculationToGiven() {
    return any(draft.calculations())
        .map(
            line -> {
              String name = line.get("name").text();
              return copy(
                  more(draft.fields(), newField(name, "given", "[0..6]")),
                  draft.options(),
                  without(draft.calculations(), name),
                  draft.decisions());
            });
  }

  private Line calculation(String name) {
    Line line = draft.calculations().get(0);
    return changed(changed(line, "name", name), "expression", "1 + 2");
  }

  private Line newField(String name, String kind, String allowed) {
    Line line = changed(changed(draft.fields().get(0), "name", name), "kind", kind);
    return changed(changed(changed(line, "type", "number"), "allowed", allowed), "stage", "-");
  }

  private static List<Line> without(List<Line> lines, String name) {
    return lines.stream().filter(line -> !line.get("name").text().equals(name)).toList();
  }

  private static List<Line> more(List<Line> lines, Line line) {
    List<Line> more = new ArrayList<>(lines);
    more.add(line);
    return more;
  }

  private static List<Line> replaced(List<Line> lines, Line was, Line is) {
    return lines.stream().map(line -> line == was ? is : line).toList();
  }

  private static Line changed(Line line, String heading, String text) {
    Map<String, Text> cells = new HashMap<>(line.cells());
    cells.put(heading, text(line.get(heading), text));
    return new Line(line.at(), cells);
  }

  private static List<Text> cells(DecisionDraft shape, String... texts) {
    return java.util.Arrays.stream(texts).map(text -> text(shape.name(), text)).toList();
  }

  private static Text text(Text cell, String text) {
    return new Text(text, cell.at());
  }

  private static RowDraft withResults(RowDraft row, List<Text> results) {
    return new RowDraft(row.id(), row.tests(), results, row.because(), row.sources());
  }

  private static DecisionDraft head(
      DecisionDraft decision, Text hitPolicy, Text ranks, List<RowDraft> rows) {
    return new DecisionDraft(
        decision.name(),
        hitPolicy,
        decision.asks(),
        ranks,
        decision.shownAs(),
        decision.when(),
        decision.then(),
        rows);
  }

  private ProtocolDraft fields(List<Line> fields) {
    return copy(fields, draft.options(), draft.calculations(), draft.decisions());
  }

  private ProtocolDraft options(List<Line> options) {
    return copy(draft.fields(), options, draft.calculations(), draft.decisions());
  }

  private ProtocolDraft calculations(List<Line> calculations) {
    return copy(draft.fields(), draft.options(), calculations, draft.decisions());
  }

  private ProtocolDraft decision(DecisionDraft was, DecisionDraft is) {
    UnaryOperator<DecisionDraft> edit = decision -> decision == was ? is : decision;
    return copy(
        draft.fields(),
        draft.options(),
        draft.calculations(),
        draft.decisions().stream().map(edit).toList());
  }

  private ProtocolDraft copy(
      List<Line> fields,
      List<Line> options,
      List<Line> calculations,
      List<DecisionDraft> decisions) {
    return new ProtocolDraft(
        draft.origin(),
        draft.about(),
        fields,
        options,
        calculations,
        draft.sources(),
        draft.changes(),
        decisions);
  }
}
