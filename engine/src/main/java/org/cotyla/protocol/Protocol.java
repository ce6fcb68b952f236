package org.cotyla.protocol;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.cotyla.expression.Vocabulary;
import org.cotyla.issue.Issue;
import org.cotyla.name.NameIndex;

/**
 * A whole protocol, checked: every name is known, every cell parsed, nothing goes in a circle.
 * Immutable.
 *
 * @param about what it says of itself
 * @param fields every field in the order of the workbook
 * @param rankings what is weighed, in the order of the workbook
 * @param calculations in the order of the workbook
 * @param decisions in the order of the workbook
 * @param steps everything that is worked out, in order of need
 * @param sources in the order of the workbook
 * @param changes its history
 * @param pictures what a report draws, in the order of the workbook
 * @param vocabulary the names that cells may use
 * @param checks what stands beside it so that an edit can be trusted; changes no answer
 * @param reasons reasons for departing from it, in the order of the workbook
 * @param outcomes what may come of a decision, in the order of the workbook
 * @param remarks warnings and notes that were made when it was read
 */
public record Protocol(
    About about,
    List<Field> fields,
    List<Ranking> rankings,
    List<Calculation> calculations,
    List<DecisionTable> decisions,
    List<Step> steps,
    List<Source> sources,
    List<Change> changes,
    List<Picture> pictures,
    Vocabulary vocabulary,
    Checks checks,
    List<Reason> reasons,
    List<Outcome> outcomes,
    List<Issue> remarks) {

  public Protocol {
    fields = List.copyOf(fields);
    rankings = List.copyOf(rankings);
    calculations = List.copyOf(calculations);
    decisions = List.copyOf(decisions);
    steps = List.copyOf(steps);
    sources = List.copyOf(sources);
    changes = List.copyOf(changes);
    pictures = List.copyOf(pictures);
    reasons = List.copyOf(reasons);
    outcomes = List.copyOf(outcomes);
    remarks = List.copyOf(remarks);
  }

  /** The fields that a case states, in the order of the workbook. */
  public List<Field> givenFields() {
    return fields.stream().filter(Field::isGiven).toList();
  }

  public Optional<Source> source(String key) {
    return sources.stream().filter(source -> source.key().equals(key)).findFirst();
  }

  public Optional<Ranking> ranking(String name) {
    return NameIndex.of(rankings, Ranking::name).find(name);
  }

  public Optional<Reason> reason(String name) {
    return NameIndex.of(reasons, Reason::name).find(name);
  }

  public Optional<Outcome> outcome(String name) {
    return NameIndex.of(outcomes, Outcome::name).find(name);
  }

  public Optional<DecisionTable> decision(String name) {
    return NameIndex.of(decisions, DecisionTable::name).find(name);
  }

  /** Every row of every table, default rows among them, in the order of the workbook. */
  public Stream<Row> allRows() {
    return decisions.stream()
        .flatMap(
            decision -> Stream.concat(decision.rows().stream(), decision.otherwise().stream()));
  }
}
