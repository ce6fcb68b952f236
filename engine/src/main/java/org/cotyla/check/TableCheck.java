package org.cotyla.check;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.cotyla.evaluate.Engine;
import org.cotyla.expression.Symbol;
import org.cotyla.finite.CaseSearch;
import org.cotyla.finite.Domain;
import org.cotyla.finite.Effort;
import org.cotyla.finite.RegionWords;
import org.cotyla.finite.TableClasses;
import org.cotyla.protocol.DecisionTable;
import org.cotyla.value.PossibleValues;

/** All that is asked of one decision table, with one search for all of it. */
final class TableCheck {

  private final DecisionTable table;
  private final CaseSearch search;
  private final TableClasses classes;
  private final RegionWords words;
  private final SeenRows seen;
  private final Runnable step;
  private final Remarks remarks = new Remarks();

  /**
   * @param seen rows that are known to count in some case; what is found on top of them stays here,
   *     since tables are checked side by side and what one says may not hang on how far others are
   * @param step run after each row
   */
  TableCheck(
      Engine engine,
      Domain domain,
      DecisionTable table,
      Effort effort,
      SeenRows seen,
      Runnable step) {
    this.seen = seen.copy();
    this.step = step;
    this.table = table;
    this.search = CaseSearch.of(engine, domain, effort);
    this.words = new RegionWords(engine.protocol());
    Map<Symbol, PossibleValues> whole = new HashMap<>();
    for (DecisionTable.Input input : table.inputs()) {
      whole.put(input.symbol(), search.reach(input.symbol()));
    }
    this.classes = new TableClasses(table, whole);
  }

  List<Remark> run() {
    new Gaps(this).check();
    new Clashes(this).check();
    new IdleRows(this).check();
    new Twins(table, remarks).check();
    new UnreachedValues(this).check();
    return remarks.list();
  }

  DecisionTable table() {
    return table;
  }

  CaseSearch search() {
    return search;
  }

  TableClasses classes() {
    return classes;
  }

  SeenRows seen() {
    return seen;
  }

  /** Run when a row is done. */
  Runnable step() {
    return step;
  }

  RegionWords words() {
    return words;
  }

  Remarks remarks() {
    return remarks;
  }
}
