package org.cotyla.compile;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.cotyla.draft.Line;
import org.cotyla.draft.ProtocolDraft;
import org.cotyla.expression.CellParser;
import org.cotyla.expression.Dialect;
import org.cotyla.expression.FormulaFunction;
import org.cotyla.expression.Symbol;
import org.cotyla.expression.Vocabulary;
import org.cotyla.issue.Issues;
import org.cotyla.name.Names;
import org.cotyla.protocol.About;
import org.cotyla.protocol.Calculation;
import org.cotyla.protocol.Change;
import org.cotyla.protocol.Checks;
import org.cotyla.protocol.DecisionTable;
import org.cotyla.protocol.Field;
import org.cotyla.protocol.Option;
import org.cotyla.protocol.Outcome;
import org.cotyla.protocol.Picture;
import org.cotyla.protocol.Protocol;
import org.cotyla.protocol.Ranking;
import org.cotyla.protocol.Reason;
import org.cotyla.protocol.Step;
import org.cotyla.value.Value;

/** Makes a protocol from a draft, reporting every fault of every part. Immutable. */
public final class ProtocolCompiler {

  private final Collection<FormulaFunction> functions;
  private final Dialect dialect;

  /**
   * @param functions what formulas may call
   * @param dialect how strictly cells are read
   */
  public ProtocolCompiler(Collection<FormulaFunction> functions, Dialect dialect) {
    this.functions = List.copyOf(functions);
    this.dialect = dialect;
  }

  /** The protocol, or nothing when there are errors; all faults are added to the issues. */
  public Optional<Protocol> compile(ProtocolDraft draft, Issues issues) {
    References references = new References(draft.sources(), issues);
    About about = new AboutCompiler(draft.about(), draft.origin(), issues).compile();
    NameRules names = new NameRules(issues);
    List<Field> fields =
        new FieldCompiler(about.stages(), names, references, issues).compile(draft.fields());
    Map<String, List<Option>> options =
        new OptionCompiler(references, issues).compile(draft.options());
    options.forEach(
        (ranking, list) ->
            names.accept(NamedThings.firstName(ranking), list.get(0).at(), "the ranking"));
    CalculationCompiler calculationCompiler =
        new CalculationCompiler(
            named(draft.calculations(), names),
            new NamedThings(fields, options, functions),
            dialect,
            references,
            issues);
    Vocabulary vocabulary = calculationCompiler.vocabulary();
    List<Calculation> calculations = calculationCompiler.compile(vocabulary);
    FormulaUnits units = new FormulaUnits(fields, calculations, issues);
    calculations.forEach(one -> units.check(one.expressionAt(), one.expression()));
    Tables tables = tables(draft, fields, options, calculations, vocabulary, references, issues);
    List<DecisionTable> decisions = tables.decisions();
    List<Picture> pictures =
        new PictureCompiler(
                new PictureParts(new CellParser(vocabulary, dialect), fields, decisions, issues),
                issues)
            .compile(draft.pictures());
    List<Ranking> rankings = rankings(options, decisions, vocabulary);
    HouseLists lists = new HouseLists(issues);
    List<Reason> reasons = lists.reasons(draft.reasons());
    List<Outcome> outcomes = lists.outcomes(draft.outcomes());
    List<Step> steps = new ArrayList<>(calculations);
    steps.addAll(decisions);
    steps.addAll(rankings);
    List<Step> ordered = OrderOfNeed.of(steps, issues);
    if (issues.hasErrors()) {
      return Optional.empty();
    }
    return Optional.of(
        new Protocol(
            about,
            fields,
            rankings,
            calculations,
            decisions,
            ordered,
            references.all(),
            tables.changes(),
            pictures,
            vocabulary,
            tables.checks(),
            reasons,
            outcomes,
            issues.list()));
  }

  /** What is written in the language of tests. */
  private record Tables(List<DecisionTable> decisions, Checks checks, List<Change> changes) {}

  private static List<Line> named(List<Line> lines, NameRules names) {
    return lines.stream()
        .filter(line -> names.accept(line.get("name"), "the calculation"))
        .toList();
  }

  private Tables tables(
      ProtocolDraft draft,
      List<Field> fields,
      Map<String, List<Option>> options,
      List<Calculation> calculations,
      Vocabulary vocabulary,
      References references,
      Issues issues) {
    Map<Symbol, Value> constants = new HashMap<>();
    calculations.forEach(
        calculation ->
            calculation.constant().ifPresent(value -> constants.put(calculation.symbol(), value)));
    OutputRules outputs = new OutputRules(fields, draft.decisions(), issues);
    RowCompiler rows =
        new RowCompiler(
            new CellParser(vocabulary, dialect),
            constants,
            new TestRemarks(fields, new FormulaUnits(fields, calculations, issues), issues),
            references,
            issues);
    DecisionCompiler compiler = new DecisionCompiler(vocabulary, outputs, options, rows, issues);
    List<DecisionTable> decisions = draft.decisions().stream().map(compiler::compile).toList();
    outputs.reportUngiven(fields);
    outputs.reportListsRead(calculations, decisions);
    WrittenResults written = new WrittenResults(draft.decisions());
    DemandCompiler demands =
        new DemandCompiler(vocabulary, fields, options, written, rows, outputs, issues);
    SafeguardCompiler safeguards =
        new SafeguardCompiler(compiler, rows, outputs, demands, references, issues);
    Checks checks =
        new Checks(
            safeguards.compile(draft.checks().safeguards()),
            new AcceptanceCompiler(issues).compile(draft.checks().accepted()),
            new CaseCompiler(
                    fields,
                    new Expectable(vocabulary, fields, options, draft.decisions(), written, issues),
                    issues)
                .compile(draft.checks().cases()));
    return new Tables(
        decisions, checks, new ChangeCompiler(compiler, issues).compile(draft.changes()));
  }

  private static List<Ranking> rankings(
      Map<String, List<Option>> options, List<DecisionTable> decisions, Vocabulary vocabulary) {
    return options.entrySet().stream()
        .map(
            entry ->
                new Ranking(
                    entry.getKey(),
                    entry.getValue(),
                    vocabulary.symbol(NamedThings.firstName(entry.getKey())).orElseThrow(),
                    voters(entry.getKey(), decisions).toList()))
        .toList();
  }

  private static Stream<DecisionTable> voters(String ranking, List<DecisionTable> decisions) {
    return decisions.stream()
        .filter(
            decision ->
                decision
                    .ranking()
                    .filter(name -> Names.key(name).equals(Names.key(ranking)))
                    .isPresent());
  }
}
