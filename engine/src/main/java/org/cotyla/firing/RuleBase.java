package org.cotyla.firing;

import static org.drools.model.DSL.entryPoint;
import static org.drools.model.PatternDSL.declarationOf;
import static org.drools.model.PatternDSL.on;
import static org.drools.model.PatternDSL.pattern;
import static org.drools.model.PatternDSL.rule;

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

  private RuleBase(KieBase kieBase) {
    this.kieBase = kieBase;
  }

  public static RuleBase of(List<DecisionTable> tables) {
    ModelImpl model = new ModelImpl("protocol");
    for (int i = 0; i < tables.size(); i++) {
      String entryPoint = entryPointOf(i);
      for (Row row : tables.get(i).rows()) {
        model.addRule(ruleFor(tables.get(i), row, entryPoint));
      }
    }
    return new RuleBase(KieBaseBuilder.createKieBaseFromModel(model));
  }

  static String entryPointOf(int table) {
    return "table " + table;
  }

  private static Rule ruleFor(DecisionTable table, Row row, String entryPoint) {
    Variable<TableFact> fact = declarationOf(TableFact.class, "fact", entryPoint(entryPoint));
    PatternDef<TableFact> pattern = pattern(fact);
    for (int i = 0; i < row.tests().size(); i++) {
      Row.Test test = row.tests().get(i);
      if (!test.prepared().isAnything()) {
        CellPredicate predicate =
            new CellPredicate(table.inputs().get(i).symbol(), test.prepared(), test.at());
        pattern = pattern.expr(predicate.identity(), predicate);
      }
    }
    // A rule whose name repeats would silently replace the earlier one, so the name holds the table
    // too.
    return rule(PACKAGE, entryPoint + " row " + row.position())
        .build(pattern, on(fact).execute(matched -> matched.fired(row)));
  }

  /** Opens the working memory of one evaluation; it must be closed. */
  public Session open() {
    return new Session(kieBase.newKieSession());
  }
}
