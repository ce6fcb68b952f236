package org.cotyla.compare;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import org.cotyla.compare.Input.FormulaTest;
import org.cotyla.evaluate.AnswerScope;
import org.cotyla.evaluate.Recommendation;
import org.cotyla.finite.Claim;
import org.cotyla.value.PossibleValues;
import org.cotyla.value.Truth;

/**
 * Widens one case in which a decision differs to the findings in which it always differs so: first
 * inputs are dropped one by one, then those left are widened class by class, as long as it is
 * proven that no case with these findings does otherwise.
 */
final class WidestBox {

  /** The classes of one input on either side, and its tests against other names. */
  private record Stretch(Input input, TreeSet<Integer> before, TreeSet<Integer> after) {}

  private final Questions questions;
  private final Claim otherwise;
  private final Map<Input, Stretch> stretches = new LinkedHashMap<>();
  private final Map<FormulaTest, Condition> formulas = new LinkedHashMap<>();

  private WidestBox(Questions questions, Claim difference) {
    this.questions = questions;
    this.otherwise = new Claim.Not(difference);
  }

  /** What was found: the conditions, and whether they are proven to be enough. */
  record Found(List<Condition> conditions, boolean whole) {}

  static Found around(
      Questions questions, List<Input> inputs, List<Recommendation> answers, Claim difference) {
    WidestBox box = new WidestBox(questions, difference);
    inputs.forEach(input -> box.start(input, answers));
    boolean whole = box.isWhole();
    if (whole) {
      box.drop();
      box.widen();
    }
    return new Found(box.conditions(), whole);
  }

  private void start(Input input, List<Recommendation> answers) {
    Optional<Integer> was = input.before().flatMap(in -> classOf(input, in, answers.get(0)));
    Optional<Integer> is = input.after().flatMap(in -> classOf(input, in, answers.get(1)));
    if (was.isEmpty() && is.isEmpty()) {
      return;
    }
    int before = was.or(() -> is).orElseThrow();
    int after = is.orElse(before);
    stretches.put(
        input, new Stretch(input, new TreeSet<>(List.of(before)), new TreeSet<>(List.of(after))));
    for (FormulaTest formula : input.formulas()) {
      Claim holds = new Claim.Of(formula.side(), new Claim.Holds(formula.input(), formula.test()));
      Truth truth = holds.truth(answers);
      if (truth != Truth.OPEN) {
        formulas.put(
            formula,
            new Condition.Tested(
                input.name(),
                formula.side(),
                formula.input(),
                formula.test(),
                truth == Truth.TRUE));
      }
    }
  }

  private static Optional<Integer> classOf(
      Input input, org.cotyla.expression.Symbol symbol, Recommendation answer) {
    return input.classOf(AnswerScope.of(answer).valueOf(symbol));
  }

  private void drop() {
    for (FormulaTest formula : List.copyOf(formulas.keySet())) {
      Condition condition = formulas.remove(formula);
      if (condition != null && !isWhole()) {
        formulas.put(formula, condition);
      }
    }
    List<Input> inputs = new ArrayList<>(stretches.keySet());
    dropSome(inputs);
  }

  /** Many at once where that can be done, since most inputs have no part in it. */
  private void dropSome(List<Input> some) {
    Map<Input, Stretch> all = new LinkedHashMap<>(stretches);
    some.forEach(stretches::remove);
    if (isWhole()) {
      return;
    }
    stretches.clear();
    stretches.putAll(all);
    if (some.size() > 1) {
      int half = some.size() / 2;
      dropSome(some.subList(half, some.size()));
      dropSome(some.subList(0, half));
    }
  }

  private void widen() {
    for (Stretch stretch : List.copyOf(stretches.values())) {
      widen(stretch.input(), stretch.after(), stretch.before(), stretch.input().steady());
      if (!stretch.input().steady()) {
        widen(stretch.input(), stretch.before(), stretch.before(), false);
      }
    }
  }

  private void widen(Input input, TreeSet<Integer> side, TreeSet<Integer> both, boolean together) {
    boolean ordered = !input.all().values().isFinite();
    int start = side.first();
    for (int step : new int[] {1, -1}) {
      for (int i = start + step; i >= 0 && i < input.classes().size(); i += step) {
        if (!side.add(i)) {
          continue;
        }
        boolean alsoOther = together && both.add(i);
        if (!isWhole()) {
          side.remove(i);
          if (alsoOther) {
            both.remove(i);
          }
          if (ordered) {
            break;
          }
        }
      }
    }
  }

  private boolean isWhole() {
    List<Claim> all = new ArrayList<>();
    conditions().forEach(condition -> all.add(condition.claim()));
    all.add(otherwise);
    return questions.rulesOut(new Claim.All(all));
  }

  private List<Condition> conditions() {
    List<Condition> conditions = new ArrayList<>();
    stretches.values().forEach(stretch -> within(stretch).ifPresent(conditions::add));
    conditions.addAll(formulas.values());
    return conditions;
  }

  private static Optional<Condition> within(Stretch stretch) {
    Input input = stretch.input();
    PossibleValues before = union(input, stretch.before());
    PossibleValues after = union(input, stretch.after());
    int classes = input.classes().size();
    boolean everything = stretch.after().size() == classes && stretch.before().size() == classes;
    return everything
        ? Optional.empty()
        : Optional.of(
            new Condition.Within(
                input.name(),
                input.unit(),
                input.choices(),
                input.all(),
                input.before(),
                input.after(),
                input.steady(),
                input.given(),
                before,
                after));
  }

  private static PossibleValues union(Input input, TreeSet<Integer> some) {
    return some.stream().map(input.classes()::get).reduce(PossibleValues::union).orElseThrow();
  }
}
