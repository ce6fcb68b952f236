package org.cotyla.firing;

import static org.drools.model.DSL.entryPoint;
import static org.drools.model.PatternDSL.declarationOf;
import static org.drools.model.PatternDSL.on;
import static org.drools.model.PatternDSL.pattern;
import static org.drools.model.PatternDSL.rule;

import java.util.ArrayList;
import java.util.List;
import org.cotyla.protocol.DecisionTable;
import org.cotyla.protocol.Row;
import org.drools.model.PatternDSL.PatternDef;
import org.drools.model.Rule;
import org.drools.model.Variable;
import org.drools.model.impl.ModelImpl;
import org.drools.modelcompiler.KieBaseBuilder;
import org.kie.api.KieBase;

/**
 * The rules of all tables, built once from their cells as Drools' canonical model: no rule text is
 * written and nothing is compiled. Immutable and safe to share between threads.
 *
 * <p>Each table has an entry point of its own, so that a fact meets only the rules of its table.
 * The rows' order of firing means nothing; {@link Session#fire} gives them in the order of the
 * sheet.
 */
public final class RuleBase {

  private static final String PACKAGE = "org.cotyla.protocol";

  private final KieBase kieBase;
  private final List<DistinctTests> tests;

  private RuleBase(KieBase kieBase, List<DistinctTests> tests) {
    this.kieBase = kieBase;
    this.tests = List.copyOf(tests);
  }

  public static RuleBase of(List<DecisionTable> tables) {
    ModelImpl model = new ModelImpl("protocol");
    List<DistinctTests> tests = new ArrayList<>();
    for (DecisionTable table : tables) {
      String entryPoint = entryPointOf(tests.size());
      DistinctTests distinct = DistinctTests.of(table);
      table.rows().forEach(row -> model.addRule(ruleFor(row, distinct, entryPoint)));
      tests.add(distinct);
    }
    return new RuleBase(KieBaseBuilder.createKieBaseFromModel(model), tests);
  }

  static String entryPointOf(int table) {
    return "table " + table;
  }

  private static Rule ruleFor(Row row, DistinctTests tests, String entryPoint) {
    Variable<TableFact> fact = declarationOf(TableFact.class, "fact", entryPoint(entryPoint));
    PatternDef<TableFact> pattern = pattern(fact);
    int[] telling = tests.telling(row);
    if (telling.length > 0) {
      RowPredicate predicate = new RowPredicate(telling, row);
      pattern = pattern.expr(entryPoint + ": " + predicate.identity(), predicate);
    }
    // A rule whose name repeats would silently replace the earlier one, so it holds the table too.
    return rule(PACKAGE, entryPoint + " row " + row.position())
        .build(pattern, on(fact).execute(matched -> matched.fired(row)));
  }

  /** Opens the working memory of one evaluation; it must be closed. */
  public Session open() {
    return new Session(kieBase, tests);
  }
}
