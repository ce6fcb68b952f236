package org.cotyla.testcases.proof;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import org.cotyla.evaluate.Engine;
import org.cotyla.expression.Symbol;
import org.cotyla.finding.Datum.Knowledge;
import org.cotyla.finite.Answer;
import org.cotyla.finite.CaseSearch;
import org.cotyla.finite.Claim;
import org.cotyla.finite.Domain;
import org.cotyla.finite.Effort;
import org.cotyla.protocol.DecisionTable;
import org.cotyla.protocol.Protocol;
import org.cotyla.testcases.generated.Sheets;
import org.cotyla.value.PossibleValues;
import org.cotyla.value.Truth;
import org.cotyla.value.Value;
import org.cotyla.value.ValueSet;
import org.cotyla.value.ValueType;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class SearchExampleTest {

  private static CaseSearch search(Protocol protocol) {
    return CaseSearch.of(Engine.of(protocol), Domain.of(protocol), Effort.usual());
  }

  private static Answer find(Sheets sheets, java.util.function.Function<Protocol, Claim> claim) {
    Protocol protocol = sheets.protocol();
    return search(protocol).find(claim.apply(protocol));
  }

  private static Claim counts(Protocol protocol, String decision, int row) {
    DecisionTable table = protocol.decision(decision).orElseThrow();
    return new Claim.Counts(table, table.rows().get(row));
  }

  private static Claim isNumber(Protocol protocol, String name, String number) {
    return is(protocol, name, PossibleValues.of(Value.of(new BigDecimal(number))));
  }

  private static Claim above(Protocol protocol, String name, int number) {
    return is(
        protocol,
        name,
        PossibleValues.of(
            ValueSet.between(ValueType.NUMBER, Value.of(number), false, null, false)));
  }

  private static Claim is(Protocol protocol, String name, PossibleValues among) {
    Symbol symbol = protocol.vocabulary().symbol(name).orElseThrow();
    return new Claim.Is(symbol, among);
  }

  @Nested
  @DisplayName("Tables that add up, count or take an extreme")
  class Aggregates {

    private static Sheets sheets(String policy, String... rows) {
      return new Sheets()
          .field("width", "number", "[0..6]")
          .derived("load", "number", "-")
          .decision("Loads", policy, "-", "width", "load", rows);
    }

    @Test
    @DisplayName("A default row's formula is the result when no row matches")
    void defaultFormula() {
      for (String policy : List.of("C+", "C#", "C<", "C>")) {
        Sheets sheets = sheets(policy, "R-1|> 3|5", "default|-|width + 10");
        assertThat(find(sheets, p -> above(p, "load", 12))).isInstanceOf(Answer.Found.class);
        assertThat(find(sheets, p -> above(p, "load", 13))).isInstanceOf(Answer.Impossible.class);
      }
    }

    @Test
    @DisplayName("A row that never matches has no say in a smallest or largest result")
    void deadRow() {
      for (String policy : List.of("C<", "C>")) {
        Sheets sheets = sheets(policy, "R-1|> 3|5", "R-2|> 6|9");
        assertThat(find(sheets, p -> isNumber(p, "load", "9")))
            .isInstanceOf(Answer.Impossible.class);
        assertThat(
                find(
                    sheets,
                    p ->
                        new Claim.All(
                            List.of(
                                new Claim.NoRow(p.decision("Loads").orElseThrow()),
                                new Claim.Not(isNumber(p, "load", "9"))))))
            .isInstanceOf(Answer.Found.class);
      }
    }

    @Test
    @DisplayName("Rows that give formulas are added up, and the smallest and largest taken")
    void formulas() {
      Sheets sum = sheets("C+", "R-1|> 3|width", "R-2|> 4|width * 2");
      assertThat(find(sum, p -> above(p, "load", 17))).isInstanceOf(Answer.Found.class);
      assertThat(find(sum, p -> above(p, "load", 18))).isInstanceOf(Answer.Impossible.class);
      assertThat(find(sum, p -> isNumber(p, "load", "15"))).isInstanceOf(Answer.Found.class);
      assertThat(find(sum, p -> isNumber(p, "load", "8"))).isInstanceOf(Answer.Impossible.class);
      Sheets least = sheets("C<", "R-1|> 3|width", "R-2|> 4|width * 2");
      assertThat(find(least, p -> above(p, "load", 6))).isInstanceOf(Answer.Impossible.class);
      Sheets most = sheets("C>", "R-1|> 3|width", "R-2|> 4|width * 2");
      assertThat(find(most, p -> isNumber(p, "load", "11"))).isInstanceOf(Answer.Found.class);
      assertThat(find(most, p -> isNumber(p, "load", "7"))).isInstanceOf(Answer.Impossible.class);
    }

    @Test
    @DisplayName("A row that gives nothing makes a sum nothing")
    void nothing() {
      Sheets sheets = sheets("C+", "R-1|> 3|5", "R-2|> 4|null");
      Claim isNothing = is(sheets.protocol(), "load", PossibleValues.nothing(ValueType.NUMBER));
      assertThat(find(sheets, p -> new Claim.All(List.of(isNothing, counts(p, "Loads", 0)))))
          .isInstanceOf(Answer.Found.class);
    }

    @Test
    @DisplayName("Amounts of any size and with any number of decimals are added exactly")
    void largeAndSmall() {
      Sheets sheets = sheets("C+", "R-1|> 3|100000000000000000000000", "R-2|> 4|0.0000000001");
      assertThat(find(sheets, p -> isNumber(p, "load", "100000000000000000000000.0000000001")))
          .isInstanceOf(Answer.Found.class);
      assertThat(find(sheets, p -> isNumber(p, "load", "0.0000000001")))
          .isInstanceOf(Answer.Impossible.class);
    }

    @Test
    @DisplayName("Where a sum has more digits than are kept it is rounded as an evaluation does")
    void rounded() {
      String large = "1000000000000000000000000";
      Sheets sheets = sheets("C+", "R-1|> 3|" + large, "R-2|> 4|0.0000000001");
      assertThat(
              find(
                  sheets,
                  p -> new Claim.All(List.of(counts(p, "Loads", 1), isNumber(p, "load", large)))))
          .isInstanceOf(Answer.Found.class);
      assertThat(find(sheets, p -> isNumber(p, "load", large + ".0000000001")))
          .isInstanceOf(Answer.Impossible.class);
    }
  }

  @Nested
  @DisplayName("Priorities")
  class Priority {

    private static Sheets sheets(String first, String second) {
      return new Sheets()
          .field("width", "number", "[0..6]")
          .field("wish", "choice", "low, high")
          .derived("grade", "choice", "low, high")
          .derived("load", "number", "-")
          .decision("Grades", "P", "-", "width", "grade|load", first, second);
    }

    @Test
    @DisplayName("A formula beside the value that orders the rows does not blur the order")
    void formulaBeside() {
      Sheets sheets = sheets("R-1|> 3|high|width + 1", "R-2|-|low|width");
      assertThat(find(sheets, p -> counts(p, "Grades", 0))).isInstanceOf(Answer.Impossible.class);
      assertThat(find(sheets, p -> counts(p, "Grades", 1))).isInstanceOf(Answer.Found.class);
    }

    @Test
    @DisplayName("Rows are ordered by the value that a formula gives")
    void formulaOrders() {
      Sheets sheets = sheets("R-1|-|wish|1", "R-2|> 3|low|2");
      assertThat(
              find(
                  sheets,
                  p ->
                      new Claim.All(
                          List.of(
                              counts(p, "Grades", 0),
                              above(p, "width", 3),
                              is(p, "wish", PossibleValues.of(Value.of("high")))))))
          .isInstanceOf(Answer.Impossible.class);
      assertThat(
              find(
                  sheets,
                  p -> new Claim.All(List.of(counts(p, "Grades", 0), above(p, "width", 3)))))
          .isInstanceOf(Answer.Found.class);
    }
  }

  @Nested
  @DisplayName("Values between which there is nothing")
  class Gaps {

    @Test
    @DisplayName("No date lies between two days")
    void days() {
      Sheets sheets =
          new Sheets()
              .field("day", "date", "[2026-01-01..2026-01-06]")
              .derived("grade", "choice", "low, high")
              .decision(
                  "Grades",
                  "U",
                  "-",
                  "day",
                  "grade",
                  "R-1|<= 2026-01-04|low",
                  "R-2|>= 2026-01-05|high");
      assertThat(find(sheets, p -> new Claim.NoRow(p.decision("Grades").orElseThrow())))
          .isInstanceOf(Answer.Impossible.class);
      assertThat(find(sheets, p -> counts(p, "Grades", 1))).isInstanceOf(Answer.Found.class);
    }

    @Test
    @DisplayName("No text lies before the empty text")
    void texts() {
      Sheets sheets =
          new Sheets()
              .field("note", "text", "-")
              .derived("grade", "choice", "low, high")
              .decision("Grades", "U", "-", "note", "grade", "R-1|\"\"|low", "R-2|> \"\"|high");
      assertThat(find(sheets, p -> new Claim.NoRow(p.decision("Grades").orElseThrow())))
          .isInstanceOf(Answer.Impossible.class);
      assertThat(find(sheets, p -> counts(p, "Grades", 0))).isInstanceOf(Answer.Found.class);
      assertThat(find(sheets, p -> counts(p, "Grades", 1))).isInstanceOf(Answer.Found.class);
    }
  }

  @Test
  @DisplayName("A contradiction elsewhere does not let findings be left out that matter")
  void smallestBesideContradiction() {
    Protocol protocol =
        new Sheets()
            .field("width", "number", "[0..6]")
            .field("depth", "number", "[0..6]")
            .derived("grade", "choice", "low, high")
            .derived("class", "choice", "low, high")
            .decision("Grades", "U", "-", "width", "grade", "R-1|> 3|low", "R-2|<= 3|high")
            .decision("Classes", "U", "-", "depth", "class", "R-3|-|low", "R-4|-|high")
            .protocol();
    CaseSearch search = search(protocol);
    Claim claim =
        new Claim.All(
            List.of(
                counts(protocol, "Grades", 0),
                new Claim.Matches(
                    protocol.decision("Classes").orElseThrow(),
                    protocol.decision("Classes").orElseThrow().rows().get(0))));
    Answer.Found found = (Answer.Found) search.find(claim);
    Answer.Found smallest = search.smallest(found, claim);
    assertThat(claim.truth(smallest.answers())).isEqualTo(Truth.TRUE);
    assertThat(smallest.findings().datum("width").orElseThrow().knowledge())
        .isEqualTo(Knowledge.RECORDED);
    assertThat(smallest.findings().datum("depth").orElseThrow().knowledge())
        .isEqualTo(Knowledge.MISSING);
  }

  @Test
  @DisplayName("A field that only one of two protocols asks for later is nothing to that one")
  void laterStage() {
    Protocol early = staged("-");
    Protocol late = staged("theatre");
    List<Protocol> both = List.of(early, late);
    CaseSearch search =
        CaseSearch.of(both.stream().map(Engine::of).toList(), Domain.shared(both), Effort.usual());
    Claim differ =
        new Claim.All(
            List.of(
                counts(early, "Grades", 0),
                new Claim.Of(1, new Claim.Not(counts(late, "Grades", 0)))));
    assertThat(search.find(differ)).isInstanceOf(Answer.Found.class);
    CaseSearch turned =
        CaseSearch.of(
            List.of(Engine.of(late), Engine.of(early)),
            Domain.shared(List.of(late, early)),
            Effort.usual());
    Claim same =
        new Claim.All(
            List.of(
                counts(late, "Grades", 0),
                new Claim.Of(1, new Claim.Not(counts(early, "Grades", 0)))));
    assertThat(turned.find(same)).isInstanceOf(Answer.Impossible.class);
    Claim other =
        new Claim.All(
            List.of(
                new Claim.Not(counts(late, "Grades", 0)),
                new Claim.Of(1, counts(early, "Grades", 0))));
    assertThat(turned.find(other)).isInstanceOf(Answer.Found.class);
  }

  @Test
  @DisplayName("A field of another type in each protocol is as open as each of them leaves it")
  void otherType() {
    Protocol number = staged("-");
    Protocol text =
        new Sheets()
            .field("width", "text", "-")
            .derived("grade", "choice", "low, high")
            .decision("Grades", "U", "-", "width", "grade", "R-1|\"wide\"|low")
            .protocol();
    assertThat(Domain.shared(List.of(number, text)).isEmpty()).isFalse();
    assertThat(Domain.shared(List.of(text, number)).isEmpty()).isFalse();
    assertThat(Domain.shared(List.of(number, staged("theatre"))).isEmpty()).isFalse();
  }

  @Test
  @DisplayName("A default row matches where no other row does")
  void defaultMatches() {
    Protocol protocol =
        new Sheets()
            .field("width", "number", "[0..6]")
            .derived("grade", "choice", "low, high")
            .decision("Grades", "U", "-", "width", "grade", "R-1|> 3|low", "default|-|high")
            .protocol();
    DecisionTable table = protocol.decision("Grades").orElseThrow();
    Claim matches = new Claim.Matches(table, table.otherwise().orElseThrow());
    assertThat(search(protocol).find(matches)).isInstanceOf(Answer.Found.class);
  }

  private static Protocol staged(String stage) {
    return new Sheets()
        .field("width", "given", "number", "[0..6]", stage)
        .derived("grade", "choice", "low, high")
        .decision("Grades", "U", "-", "width", "grade", "R-1|> 3|low")
        .protocol();
  }
}
