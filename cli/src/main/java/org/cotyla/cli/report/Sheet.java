package org.cotyla.cli.report;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.cotyla.cli.text.KnownValues;
import org.cotyla.evaluate.AnswerScope;
import org.cotyla.evaluate.DecisionResult;
import org.cotyla.evaluate.Firing;
import org.cotyla.evaluate.Recommendation;
import org.cotyla.evaluate.Standing;
import org.cotyla.expression.Expression;
import org.cotyla.expression.Symbol;
import org.cotyla.protocol.Row;
import org.cotyla.value.PossibleValues;
import org.cotyla.value.Value;
import org.cotyla.value.ValueType;

/**
 * What all parts of one report share: where they write, what they tell of, and the rows' places.
 */
final class Sheet {

  private static final int MOST_OPEN = 3;
  private static final int NO_NAME = -1;
  private static final int LONGEST_UNBROKEN = 12;

  private final Markup markup;
  private final Recommendation advice;
  private final KnownValues known;
  private final AnswerScope scope;
  private final Map<String, String> anchors = new LinkedHashMap<>();
  private int pictures;

  Sheet(Markup markup, Recommendation advice) {
    this.markup = markup;
    this.advice = advice;
    this.known = new KnownValues(advice);
    this.scope = AnswerScope.of(advice);
    advice.decisions().stream()
        .flatMap(result -> inTrace(result).stream())
        .forEach(firing -> anchors.putIfAbsent(firing.row().id(), "row-" + (anchors.size() + 1)));
  }

  Markup markup() {
    return markup;
  }

  Recommendation advice() {
    return advice;
  }

  KnownValues known() {
    return known;
  }

  AnswerScope scope() {
    return scope;
  }

  /** An id that no other picture of the report has. */
  String nextPicture() {
    pictures++;
    return "picture-" + pictures;
  }

  /** The rows that the trace shows whole: those that decide, and the first that may. */
  static List<Firing> inTrace(DecisionResult result) {
    List<Firing> shown = new ArrayList<>();
    int open = 0;
    for (Firing firing : result.counting()) {
      open += firing.standing() == Standing.MAY_DECIDE ? 1 : 0;
      if (firing.standing() == Standing.DECIDES || open <= MOST_OPEN) {
        shown.add(firing);
      }
    }
    return shown;
  }

  /** The place of the row in the trace, when it stands there. */
  Optional<String> anchor(Row row) {
    return Optional.ofNullable(anchors.get(row.id()));
  }

  /** The row's id, leading to its place in the trace. */
  void rowLink(Row row) {
    // A short id stays in one piece; a long one must be free to break.
    boolean isShort = row.id().length() <= LONGEST_UNBROKEN;
    markup.start("span", "class", isShort ? "row short" : "row");
    String text = "[" + row.id() + "]";
    anchor(row).ifPresentOrElse(id -> markup.link(id, text), () -> markup.text(text));
    markup.end();
  }

  /** What a formula comes to, with the unit of its name, shortened for reading. */
  String inWords(Expression expression) {
    PossibleValues value = expression.evaluate(scope);
    Symbol symbol =
        expression instanceof Expression.Reference name
            ? name.symbol()
            : new Symbol("", NO_NAME, value.type(), List.of());
    if (value.isNothing()) {
      return "not applicable";
    }
    String words = known.inWords(symbol, rounded(value));
    boolean open = !value.isCertain() && !words.equals("not stated");
    Optional<NumberRange> range = open ? NumberRange.of(value) : Optional.empty();
    return range
        .map(ends -> "open, " + known.withUnit(symbol, ends.plain()))
        .orElse(open ? "open: " + words : words);
  }

  /** One number to one decimal; all digits stand in the trace. */
  private static PossibleValues rounded(PossibleValues value) {
    if (value.type() != ValueType.NUMBER) {
      return value;
    }
    return value
        .single()
        .map(one -> PossibleValues.of(Value.of(round(((Value.NumberValue) one).number()))))
        .orElse(value);
  }

  static BigDecimal round(BigDecimal number) {
    return number.scale() <= 1 ? number : number.setScale(1, RoundingMode.HALF_UP);
  }
}
