package org.cotyla.check;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.cotyla.evaluate.Recommendation;
import org.cotyla.expression.PreparedTest;
import org.cotyla.expression.Symbol;
import org.cotyla.finite.Answer;
import org.cotyla.finite.Region;
import org.cotyla.protocol.DecisionTable;
import org.cotyla.protocol.HitPolicy;
import org.cotyla.protocol.Row;
import org.cotyla.value.PossibleValues;
import org.cotyla.value.Truth;
import org.cotyla.value.ValueSet;

/** Two rows that match one case where the hit policy allows that to none, or only if they agree. */
final class Clashes {

  private static final int PAIRS_AT_MOST = 20;

  private final TableCheck check;
  private final DecisionTable table;
  private final ClashSearch clashes;

  Clashes(TableCheck check) {
    this.check = check;
    this.table = check.table();
    this.clashes = new ClashSearch(table, check.search());
  }

  void check() {
    boolean unique = table.hitPolicy() == HitPolicy.UNIQUE;
    if (!unique && table.hitPolicy() != HitPolicy.ANY) {
      return;
    }
    int found = 0;
    for (int i = 0; i < table.rows().size(); i++) {
      for (int j = i + 1; j < table.rows().size(); j++) {
        Row a = table.rows().get(i);
        Row b = table.rows().get(j);
        boolean suspects = meet(a, b) && (unique || !agree(a, b));
        if (suspects && isClash(a, b)) {
          found++;
          if (found == PAIRS_AT_MOST) {
            check
                .remarks()
                .note(
                    "K113",
                    table.at(),
                    table.name(),
                    "more rows may clash; only the first " + PAIRS_AT_MOST + " pairs are shown");
            return;
          }
        }
      }
    }
  }

  private boolean isClash(Row a, Row b) {
    Answer answer = clashes.of(a, b);
    String rows = "rows `" + a.id() + "` and `" + b.id() + "` (" + b.at().plain() + ")";
    if (answer instanceof Answer.Found found) {
      Recommendation example = found.answers().get(0);
      check
          .remarks()
          .error(
              "K111",
              a.at(),
              a.id(),
              rows + " both match " + check.words().plain(common(a, b, example)) + rule(a, b),
              Optional.of("narrow one of them, or choose a hit policy that says which one counts"),
              Remarks.Example.of(example));
      return true;
    }
    if (answer instanceof Answer.Undecided undecided) {
      String result = table.hitPolicy() == HitPolicy.ANY ? " and give different results" : "";
      check
          .remarks()
          .warning(
              "K112",
              a.at(),
              a.id(),
              "whether " + rows + " can both match" + result + " is undecided: " + undecided.why(),
              Optional.empty(),
              Remarks.Example.none());
      return true;
    }
    return false;
  }

  private String rule(Row a, Row b) {
    boolean same = agree(a, b);
    return table.hitPolicy() == HitPolicy.UNIQUE
        ? ", but hit policy U allows one" + (same ? "; they give the same" : "")
        : " and give different results, which hit policy A forbids";
  }

  private static boolean agree(Row a, Row b) {
    return SameResult.of(a, b);
  }

  /** Whether the cells alone leave room for a case of both. */
  private boolean meet(Row a, Row b) {
    for (int i = 0; i < a.tests().size(); i++) {
      PreparedTest one = a.tests().get(i).prepared();
      PreparedTest other = b.tests().get(i).prepared();
      Optional<ValueSet> here = one.region();
      Optional<ValueSet> there = other.region();
      if (here.isPresent() && there.isPresent()) {
        boolean nothing = one.forNothing() == Truth.TRUE && other.forNothing() == Truth.TRUE;
        if (!nothing && !here.get().intersects(there.get())) {
          return false;
        }
      }
    }
    return true;
  }

  /** What both rows test, where both say something. */
  private Region common(Row a, Row b, Recommendation example) {
    Region around = check.classes().around(example);
    Map<Symbol, PossibleValues> sides = new LinkedHashMap<>();
    for (int i = 0; i < a.tests().size(); i++) {
      List<ValueSet> regions = new ArrayList<>();
      for (Row row : List.of(a, b)) {
        PreparedTest test = row.tests().get(i).prepared();
        if (!test.isAnything()) {
          test.region().ifPresent(regions::add);
        }
      }
      Symbol input = table.inputs().get(i).symbol();
      PossibleValues side = around.sides().get(input);
      if (!regions.isEmpty() && side != null) {
        ValueSet both =
            regions.stream().reduce(check.search().reach(input).values(), ValueSet::intersect);
        sides.put(input, side.isNothing() ? side : PossibleValues.of(both));
      }
    }
    return new Region(sides);
  }
}
