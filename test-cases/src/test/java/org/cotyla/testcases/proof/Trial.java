package org.cotyla.testcases.proof;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.cotyla.evaluate.Engine;
import org.cotyla.evaluate.RankingResult;
import org.cotyla.evaluate.Recommendation;
import org.cotyla.expression.Symbol;
import org.cotyla.finding.Datum;
import org.cotyla.finding.Datum.Knowledge;
import org.cotyla.finding.Findings;
import org.cotyla.finite.Answer;
import org.cotyla.finite.CaseSearch;
import org.cotyla.finite.Claim;
import org.cotyla.finite.Domain;
import org.cotyla.finite.Effort;
import org.cotyla.protocol.Field;
import org.cotyla.protocol.Protocol;
import org.cotyla.value.PossibleValues;
import org.cotyla.value.Truth;
import org.cotyla.value.Value;

/** Protocols that are asked together: random claims are searched for, and tried case by case. */
final class Trial {

  private static final Effort EFFORT = new Effort(20_000, 60, 24);

  private final List<Protocol> protocols;
  private final List<Engine> engines;
  private final Random random;
  private final CaseSearch search;
  private final List<List<Recommendation>> tried = new ArrayList<>();
  private final Tally tally;
  private final String name;

  Trial(String name, List<Protocol> protocols, Random random, int cases, Tally tally) {
    this.name = name;
    this.protocols = protocols;
    this.engines = protocols.stream().map(Engine::of).toList();
    this.random = random;
    this.tally = tally;
    this.search = CaseSearch.of(engines, Domain.shared(protocols), EFFORT);
    for (Findings findings : Grid.of(protocols.get(0), cases, random).cases()) {
      tried.add(answers(findings));
    }
  }

  /** The answer of each protocol to the same case. */
  private List<Recommendation> answers(Findings findings) {
    return engines.stream().map(engine -> engine.evaluate(ofProtocol(findings, engine))).toList();
  }

  private static Findings ofProtocol(Findings findings, Engine engine) {
    int stage = engine.protocol().about().stages().indexOf(findings.stage());
    List<Datum> data = new ArrayList<>();
    for (Field field : engine.protocol().givenFields()) {
      boolean notYet = field.stage() > stage;
      Datum datum =
          findings.data().stream()
              .filter(other -> other.field().name().equals(field.name()))
              .findFirst()
              .orElseThrow();
      data.add(
          notYet
              ? new Datum(field, Knowledge.NOT_YET, PossibleValues.nothing(field.symbol().type()))
              : new Datum(field, datum.knowledge(), datum.value()));
    }
    return new Findings("", findings.stage(), data, List.of());
  }

  void run(int claims) {
    RandomClaims source = new RandomClaims(random, protocols);
    for (int i = 0; i < claims; i++) {
      check(source.next(2));
    }
  }

  /** Cases with all that is certain of them, after all that the search has learnt by now. */
  void runCases(int count) {
    for (int i = 0; i < count; i++) {
      List<Recommendation> answers = tried.get(random.nextInt(tried.size()));
      List<Claim> claims = new ArrayList<>();
      for (int side = 0; side < protocols.size(); side++) {
        for (Symbol symbol : protocols.get(side).vocabulary().symbols()) {
          PossibleValues value = valueOf(symbol, answers.get(side));
          if (value.isCertain()) {
            claims.add(new Claim.Of(side, new Claim.Is(symbol, value)));
          }
        }
      }
      assertThat(search.find(new Claim.All(claims)))
          .as("%s, the case %s", name, answers.get(0).findings())
          .isInstanceOf(Answer.Found.class);
    }
  }

  private static PossibleValues valueOf(Symbol symbol, Recommendation answer) {
    return answer
        .findings()
        .datum(symbol.name())
        .map(Datum::value)
        .or(() -> answer.value(symbol.name()))
        .or(() -> Optional.ofNullable(answer.calculations().get(symbol.name())))
        .or(
            () ->
                answer.rankings().stream()
                    .filter(ranking -> ranking.ranking().first().equals(symbol))
                    .map(RankingResult::first)
                    .findFirst())
        .orElseGet(() -> PossibleValues.nothing(symbol.type()));
  }

  private void check(Claim claim) {
    List<Truth> truths = tried.stream().map(claim::truth).toList();
    int place = truths.indexOf(Truth.TRUE);
    Answer answer = search.find(claim);
    tally.count(answer, place >= 0);
    if (place >= 0) {
      assertThat(answer)
          .as("%s, %s, though true of %s", name, claim(claim), tried.get(place).get(0).findings())
          .isNotInstanceOf(Answer.Impossible.class);
    }
    if (answer instanceof Answer.Found found) {
      assertBearsOut(found, claim);
      assertSmallest(found, claim);
    }
  }

  private void assertBearsOut(Answer.Found found, Claim claim) {
    List<Recommendation> again = answers(found.findings());
    Truth truth = claim.truth(again);
    boolean faulty = again.stream().anyMatch(answer -> !answer.faults().isEmpty());
    assertThat(truth)
        .as("%s, %s, of %s", name, claim(claim), found.findings())
        .isIn(faulty ? List.of(Truth.TRUE, Truth.OPEN) : List.of(Truth.TRUE));
    for (Datum datum : found.findings().data()) {
      assertThat(datum.field().allowed().containsAll(datum.value().values())).isTrue();
    }
  }

  /** No stated finding can be left out, and however the rest is filled in the claim stays true. */
  private void assertSmallest(Answer.Found found, Claim claim) {
    Answer.Found smallest = search.smallest(found, claim);
    Truth truth = claim.truth(found.answers());
    assertThat(claim.truth(answers(smallest.findings())))
        .as("%s, %s, smallest %s of %s", name, claim(claim), smallest.findings(), found.findings())
        .isEqualTo(truth);
    for (Datum datum : smallest.findings().data()) {
      if (truth == Truth.TRUE && datum.knowledge() == Knowledge.RECORDED) {
        assertThat(claim.truth(answers(without(smallest.findings(), datum))))
            .as("%s, %s, %s without %s", name, claim(claim), smallest.findings(), datum.field())
            .isNotEqualTo(Truth.TRUE);
      }
    }
    for (int i = 0; i < 12; i++) {
      assertThat(claim.truth(answers(filledIn(smallest.findings()))))
          .as("%s, %s, filled in from %s", name, claim(claim), smallest.findings())
          .isEqualTo(truth);
    }
  }

  private static Findings without(Findings findings, Datum left) {
    List<Datum> data =
        findings.data().stream()
            .map(
                datum ->
                    datum == left && datum.field().allowed().single().isEmpty()
                        ? new Datum(
                            datum.field(),
                            Knowledge.MISSING,
                            PossibleValues.of(datum.field().allowed()))
                        : datum)
            .toList();
    return new Findings("", findings.stage(), data, List.of());
  }

  private Findings filledIn(Findings findings) {
    List<Datum> data = new ArrayList<>();
    for (Datum datum : findings.data()) {
      List<Value> values = GridValues.of(datum.field());
      boolean open = datum.value().single().isEmpty() && !datum.value().isNothing();
      data.add(
          open
              ? new Datum(
                  datum.field(),
                  Knowledge.RECORDED,
                  PossibleValues.of(values.get(random.nextInt(values.size()))))
              : datum);
    }
    return new Findings("", findings.stage(), data, List.of());
  }

  /** The claim as short as a message can have it. */
  static String claim(Claim claim) {
    if (claim instanceof Claim.Matches matches) {
      return matches.row().id() + " matches";
    } else if (claim instanceof Claim.Counts counts) {
      return counts.row().id() + " of " + counts.table().name() + " counts";
    } else if (claim instanceof Claim.NoRow none) {
      return "no row of " + none.table().name();
    } else if (claim instanceof Claim.Is is) {
      return is.name().name() + " is " + is.among().plain();
    } else if (claim instanceof Claim.Holds holds) {
      return holds.input().name() + " meets " + holds.test().test().print();
    } else if (claim instanceof Claim.First first) {
      return "first " + first.option();
    } else if (claim instanceof Claim.RuledOut out) {
      return "ruled out " + out.option();
    } else if (claim instanceof Claim.Not not) {
      return "not(" + claim(not.claim()) + ")";
    } else if (claim instanceof Claim.Of of) {
      return of.other() + ": " + claim(of.claim());
    } else if (claim instanceof Claim.All all) {
      return "all" + all.claims().stream().map(Trial::claim).toList();
    }
    return "any" + ((Claim.Any) claim).claims().stream().map(Trial::claim).toList();
  }
}
