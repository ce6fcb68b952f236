package org.cotyla.testcases.library;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.cotyla.evaluate.Engine;
import org.cotyla.evaluate.Recommendation;
import org.cotyla.finite.Answer;
import org.cotyla.finite.CaseSearch;
import org.cotyla.finite.Claim;
import org.cotyla.finite.Domain;
import org.cotyla.finite.Effort;
import org.cotyla.protocol.DecisionTable;
import org.cotyla.protocol.Option;
import org.cotyla.protocol.Protocol;
import org.cotyla.protocol.Ranking;
import org.cotyla.testcases.house.House;
import org.cotyla.value.Truth;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

@DisplayName("Every way to fill in what a case of the library leaves open")
class ProvenCasesTest {

  /** Every so many cases of the library is taken, so that the run stays short. */
  private static final int STEP = 12;

  @TestFactory
  @DisplayName("what the answer says is so can be found, and its opposite is proven impossible")
  Stream<DynamicTest> sample() {
    List<LibraryCase> cases = CaseLibrary.cases();
    return IntStream.range(0, cases.size())
        .filter(i -> i % STEP == 0)
        .mapToObj(cases::get)
        .map(one -> dynamicTest(one.displayName(), one.file().toUri(), () -> agree(one)));
  }

  private static void agree(LibraryCase one) {
    Engine engine = House.engine();
    Recommendation answer = engine.evaluate(one.read());
    CaseSearch search =
        CaseSearch.of(engine, Domain.of(engine.protocol(), answer.findings()), Effort.usual());
    List<Claim> certain = new ArrayList<>();
    for (Claim claim : claims(engine.protocol())) {
      Truth truth = claim.truth(answer);
      if (truth != Truth.OPEN) {
        certain.add(truth == Truth.TRUE ? claim : new Claim.Not(claim));
      }
    }
    assertThat(certain).isNotEmpty();
    assertThat(search.find(new Claim.All(certain))).isInstanceOf(Answer.Found.class);
    for (Claim claim : certain) {
      assertThat(search.find(new Claim.Not(claim)))
          .as("the opposite of %s", claim)
          .isInstanceOf(Answer.Impossible.class);
    }
  }

  private static List<Claim> claims(Protocol protocol) {
    List<Claim> claims = new ArrayList<>();
    for (DecisionTable table : protocol.decisions()) {
      table.rows().forEach(row -> claims.add(new Claim.Matches(table, row)));
      table.rows().forEach(row -> claims.add(new Claim.Counts(table, row)));
      claims.add(new Claim.NoRow(table));
    }
    for (Ranking ranking : protocol.rankings()) {
      for (Option option : ranking.options()) {
        claims.add(new Claim.First(ranking, option.name()));
        claims.add(new Claim.RuledOut(ranking, option.name()));
      }
    }
    return claims;
  }
}
