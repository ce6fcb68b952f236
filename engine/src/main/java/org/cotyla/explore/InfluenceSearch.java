package org.cotyla.explore;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.cotyla.evaluate.Engine;
import org.cotyla.evaluate.MissingDatum;
import org.cotyla.evaluate.Recommendation;
import org.cotyla.expression.Symbol;
import org.cotyla.finding.Datum;
import org.cotyla.finite.Answer;
import org.cotyla.finite.CaseSearch;
import org.cotyla.finite.Claim;
import org.cotyla.finite.Domain;
import org.cotyla.finite.Effort;
import org.cotyla.protocol.DecisionTable;
import org.cotyla.protocol.Field;
import org.cotyla.value.Truth;
import org.jspecify.annotations.Nullable;

/** What one open datum can change. Used for one datum; not thread-safe. */
final class InfluenceSearch {

  private static final int RESULTS_AT_MOST = 12;

  private final Engine engine;
  private final Recommendation advice;
  private final MissingDatum missing;
  private final Field field;
  private final Effort effort;
  private final Map<Facet, FacetResults> results;
  private @Nullable CaseSearch pairs;

  /**
   * @param results what each part can come to; the same for every datum of a case
   */
  InfluenceSearch(
      Engine engine,
      Recommendation advice,
      MissingDatum missing,
      Effort effort,
      Map<Facet, FacetResults> results) {
    this.engine = engine;
    this.advice = advice;
    this.missing = missing;
    this.field = missing.datum().field();
    this.effort = effort;
    this.results = results;
  }

  Influence influence() {
    List<Reach> reaches = new ArrayList<>();
    boolean first = true;
    for (Facet facet : Facet.of(engine.protocol())) {
      Reach reach = reach(facet);
      if (first && reach.verdict() == Reach.Verdict.CAN) {
        reach = byItself(reach);
        first = false;
      }
      reaches.add(reach);
    }
    reaches.add(
        reaches.stream()
            .filter(reach -> reach.verdict() == Reach.Verdict.CAN)
            .findFirst()
            .map(InfluenceSearch::alsoShown)
            .orElseGet(() -> reach(Facet.SHOWN)));
    return new Influence(missing.datum(), reaches);
  }

  /** What changes a part changes what is shown. */
  private static Reach alsoShown(Reach part) {
    return new Reach(
        Facet.SHOWN, Reach.Verdict.CAN, List.of(), false, part.witness(), part.byItself());
  }

  private boolean may(Facet facet) {
    return switch (facet.kind()) {
      case FIRST -> missing.mayChangeFirst().contains(facet.name());
      case DECISION -> missing.mayChange().contains(facet.name());
      case RULED_OUT -> missing.mayChangePoints().contains(facet.name());
      case SHOWN -> missing.mayMatter();
    };
  }

  private Reach reach(Facet facet) {
    FacetResults all = results.computeIfAbsent(facet, part -> FacetResults.of(advice, part));
    if (!may(facet) || all.isCertain()) {
      return Reach.cannot(facet);
    }
    boolean formulas =
        !Dependence.on(engine.protocol(), field.symbol()).stream()
            .filter(all.formulas()::contains)
            .toList()
            .isEmpty();
    if (facet.kind() == Facet.Kind.SHOWN) {
      return shown(all, formulas);
    }
    return all.results().isEmpty() ? formulas(facet, formulas) : search(facet, all, formulas);
  }

  /** So much is shown that two cases drawn by lot nearly always tell. */
  private Reach shown(FacetResults all, boolean formulas) {
    Optional<Reach.Witness> drawn = new Trials(engine, advice, field, 3).differing(Facet.SHOWN);
    if (drawn.isPresent()) {
      return Reach.shown(Facet.SHOWN, drawn.get());
    }
    Set<Symbol> changing = Dependence.on(engine.protocol(), field.symbol());
    List<Result> hanging = all.results().stream().filter(one -> hangs(one, changing)).toList();
    FacetResults left = new FacetResults(hanging, all.formulas());
    return hanging.isEmpty()
        ? formulas(Facet.SHOWN, formulas)
        : search(Facet.SHOWN, left, formulas);
  }

  private static boolean hangs(Result result, Set<Symbol> changing) {
    DecisionTable table =
        result.claim() instanceof Claim.Counts counts
            ? counts.table()
            : result.claim() instanceof Claim.NoRow none ? none.table() : null;
    return table == null || table.needs().stream().anyMatch(changing::contains);
  }

  private Reach search(Facet facet, FacetResults all, boolean formulas) {
    Set<Result> among = new LinkedHashSet<>();
    Optional<Reach.Witness> witness = Optional.empty();
    boolean ended = false;
    boolean whole = false;
    boolean hidden = false;
    while (!ended && among.size() < RESULTS_AT_MOST) {
      List<Result> left = all.results().stream().filter(one -> !among.contains(one)).toList();
      Answer answer = left.isEmpty() ? new Answer.Impossible() : pairs().find(differ(left));
      if (answer instanceof Answer.Found found) {
        Set<Result> told = alike(found, facet) ? Set.of() : told(found, left);
        if (witness.isEmpty() && (!told.isEmpty() || formulas)) {
          witness = Optional.of(witness(facet, all, found));
        }
        // Rows that contradict each other can leave the result open in both cases.
        hidden = told.isEmpty();
        ended = hidden || facet.kind() == Facet.Kind.SHOWN;
        among.addAll(told);
      } else if (answer instanceof Answer.Undecided && among.isEmpty()) {
        return Reach.undecided(facet);
      } else {
        ended = true;
        whole = answer instanceof Answer.Impossible;
      }
    }
    whole = all.formulas().isEmpty() && (whole || among.containsAll(all.results()));
    boolean differs = witness.filter(two -> !two.oneResult().equals(two.otherResult())).isPresent();
    if (among.isEmpty() || (!differs && !all.formulas().isEmpty())) {
      return formulas(facet, formulas || hidden || !among.isEmpty());
    }
    if (facet.kind() == Facet.Kind.SHOWN) {
      return Reach.shown(facet, witness.orElseThrow());
    }
    List<String> words = all.results().stream().filter(among::contains).map(Result::words).toList();
    return new Reach(facet, Reach.Verdict.CAN, words, whole, witness, false);
  }

  /** Whether formulas give another result although the same rows count: tried, never proven. */
  private Reach formulas(Facet facet, boolean reached) {
    if (!reached) {
      return Reach.cannot(facet);
    }
    return new Trials(engine, advice, field, 12)
        .differing(facet)
        .map(witness -> Reach.shown(facet, witness))
        .orElse(Reach.undecided(facet));
  }

  private CaseSearch pairs() {
    CaseSearch known = pairs;
    if (known == null) {
      Domain domain = Domain.of(engine.protocol(), advice.findings());
      known = CaseSearch.pair(engine, domain, Set.of(field), effort);
      pairs = known;
    }
    return known;
  }

  /** One of the results is that of the first case and not of the second. */
  static Claim differ(List<Result> results) {
    return new Claim.Any(
        results.stream()
            .map(
                result ->
                    (Claim)
                        new Claim.All(
                            List.of(
                                result.claim(), new Claim.Of(1, new Claim.Not(result.claim())))))
            .toList());
  }

  /** Whether rows that contradict each other leave the part the same in both answers. */
  private static boolean alike(Answer.Found found, Facet facet) {
    boolean contradiction = found.answers().stream().anyMatch(one -> !one.faults().isEmpty());
    return contradiction
        && FacetWords.of(found.answers().get(0), facet)
            .equals(FacetWords.of(found.answers().get(1), facet));
  }

  /** The results that the two cases differ in. */
  private static Set<Result> told(Answer.Found found, List<Result> results) {
    return results.stream()
        .filter(
            result -> {
              Truth one = result.claim().truth(found.answers(), 0);
              Truth other = result.claim().truth(found.answers(), 1);
              return one != other;
            })
        .collect(Collectors.toCollection(LinkedHashSet::new));
  }

  private static Reach.Witness witness(Facet facet, FacetResults all, Answer.Found found) {
    Recommendation one = found.answers().get(0);
    Recommendation other = found.answers().get(1);
    if (facet.kind() == Facet.Kind.SHOWN || !all.formulas().isEmpty()) {
      return new Reach.Witness(one, FacetWords.of(one, facet), other, FacetWords.of(other, facet));
    }
    return new Reach.Witness(one, words(all, found, 0), other, words(all, found, 1));
  }

  private static String words(FacetResults all, Answer.Found found, int side) {
    String words =
        all.results().stream()
            .filter(result -> result.claim().truth(found.answers(), side) != Truth.FALSE)
            .map(Result::words)
            .distinct()
            .collect(Collectors.joining(" or "));
    return words.isEmpty() ? "none" : words;
  }

  /** Runs the case with nothing but this datum filled in, as in the witness. */
  private Reach byItself(Reach reach) {
    if (reach.witness().isEmpty()) {
      return reach;
    }
    Reach.Witness two = reach.witness().get();
    List<Recommendation> answers = List.of(alone(value(two.one())), alone(value(two.other())));
    boolean byItself =
        results
            .getOrDefault(reach.facet(), FacetResults.of(advice, reach.facet()))
            .results()
            .stream()
            .anyMatch(
                result -> {
                  Truth one = result.claim().truth(answers, 0);
                  Truth other = result.claim().truth(answers, 1);
                  return one != Truth.OPEN && other != Truth.OPEN && one != other;
                });
    return new Reach(
        reach.facet(), reach.verdict(), reach.among(), reach.whole(), reach.witness(), byItself);
  }

  private Datum value(Recommendation answer) {
    return answer.findings().datum(field.name()).orElseThrow();
  }

  private Recommendation alone(Datum datum) {
    return engine.decide(Changed.with(advice.findings(), field, datum.value().values()));
  }
}
