package org.cotyla.trial;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import org.cotyla.compile.SampleDraft;
import org.cotyla.evaluate.Engine;
import org.cotyla.finding.Case;
import org.cotyla.issue.Issue;
import org.cotyla.issue.RejectedException;
import org.cotyla.json.ExpectationJson;
import org.cotyla.protocol.Protocol;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("Cases that are tried")
class TrialRunTest {

  private final Protocol protocol = new SampleDraft().protocol();
  private final Engine engine = Engine.of(protocol);

  private static final Map<String, Object> LOW = Map.of("width", 40, "grade", "low");

  private List<String> differences(Map<String, Object> given, String... claims) {
    List<Claim> all =
        java.util.Arrays.stream(claims)
            .map(claim -> claim.split("="))
            .map(parts -> new Claim(parts[0], List.of(parts[1].split(","))))
            .toList();
    return ClaimCheck.differences(engine.evaluate(Case.of(given)), all).stream()
        .map(Difference::plain)
        .toList();
  }

  @Test
  @DisplayName("pass when each claim holds")
  void holds() {
    assertThat(
            differences(
                LOW,
                "class=A",
                "first plan=rest",
                "first plan is certain=yes",
                "first is certain=yes",
                "not first=brace",
                "not ruled out=brace,rest",
                "rows=k-1,V-1",
                "rows not=K-2",
                "twice=80"))
        .isEmpty();
    assertThat(differences(Map.of("grade", "low"), "class=A,B", "may matter=width")).isEmpty();
  }

  @Test
  @DisplayName("fail with what was expected, what came, and the rows that decided")
  void fails() {
    assertThat(differences(LOW, "class=B"))
        .containsExactly("class: expected B, got A; by K-1 at Class!A8");
    assertThat(differences(LOW, "first plan=brace"))
        .containsExactly(
            "first plan: expected brace, got rest (rest 2, brace 0); by V-1 at Votes!A8");
    assertThat(differences(LOW, "rows=K-2"))
        .containsExactly("rows: expected K-2, got it does not fire; by K-1 at Class!A8");
    assertThat(differences(LOW, "rows=K-9"))
        .containsExactly("rows: expected K-9, got the protocol has no such row");
    assertThat(differences(LOW, "rows not=K-1"))
        .containsExactly("rows not: expected K-1, got it counts; by K-1 at Class!A8");
    assertThat(differences(LOW, "ruled out=brace"))
        .containsExactly("ruled out: expected brace, got available");
    assertThat(differences(LOW, "ruled out=crutch"))
        .containsExactly("ruled out: expected crutch, got the protocol has no such option");
    assertThat(differences(LOW, "not first=rest"))
        .containsExactly("not first: expected rest, got it can come first");
    assertThat(differences(LOW, "klass=A"))
        .containsExactly(
            "klass: expected A, got no derived field, calculation, ranking or list of that name");
    assertThat(differences(LOW, "may matter=width"))
        .containsExactly("may matter: expected width, got it is not missing in this case");
    assertThat(differences(LOW, "first plan is certain=no"))
        .containsExactly("first plan is certain: expected no, got yes (can be rest)");
  }

  @Test
  @DisplayName("fail when a row that must be listed only may be, for want of a finding")
  void mayBeListed() {
    Engine listing = Engine.of(new SampleDraft().head(1, 1, "C").protocol());
    List<Claim> claims = List.of(new Claim("Load", List.of("L-1", "L-2")));
    assertThat(ClaimCheck.differences(listing.evaluate(Case.of(LOW)), claims)).isEmpty();
    assertThat(
            ClaimCheck.differences(listing.evaluate(Case.of(Map.of("grade", "low"))), claims)
                .stream()
                .map(Difference::plain))
        .containsExactly("Load: expected L-1, got it only may be listed; by L-1 at Load!A8");
  }

  @Test
  @DisplayName("are refused with their faults when they do not fit the protocol, and others go on")
  void refused() {
    TrialRun run = new TrialRun(engine);
    List<Claim> claims = List.of(new Claim("class", List.of("A")));
    run.add(new Trial("Cases", "too wide", Case.of(Map.of("width", 900)), "", claims));
    run.add(new Trial("Cases", "low", Case.of(LOW), "", claims));
    TrialReport report = run.report();

    assertThat(report.tried()).extracting(Tried::passed).containsExactly(false, true);
    assertThat(report.refused()).hasSize(1);
    assertThat(report.allPassed()).isFalse();
    assertThat(report.unexercised())
        .extracting(one -> one.decision().name() + " " + one.row().id())
        .containsExactly("Class K-2", "Class K-3", "Votes V-2");
  }

  @Test
  @DisplayName("follow the variant whose choice the protocol has made")
  void variant() {
    Expectation expectation =
        ExpectationJson.read(
            "a.expected.json",
            bytes(
                """
                {"because": "Past the line.", "sources": ["S"], "expect": {"class": "A"},
                 "variants": [{"constant": "house line", "expression": "50",
                   "because": "Short of it.", "expect": {"class": "B"}}]}"""));
    Case given = Case.of(LOW);

    assertThat(Trial.of("s", "n", given, expectation, protocol).claims())
        .containsExactly(new Claim("class", List.of("A")));
    Trial moved =
        Trial.of(
            "s",
            "n",
            given,
            expectation,
            new SampleDraft().set("Calculations", 0, "expression", "50").protocol());
    assertThat(moved.claims()).containsExactly(new Claim("class", List.of("B")));
    assertThat(moved.because()).isEqualTo("Short of it. (with house line = 50)");
  }

  @Test
  @DisplayName("have expectations whose files are refused with what is wrong")
  void badExpectations() {
    assertThat(faults("{\"expect\": {\"class\": \"A\"}, \"becuase\": \"x\"}"))
        .containsExactly(
            "error C051 x.json: `becuase` is not a key of an expectation\n"
                + "      help: did you mean `because`? (because, sources, expect, variants)");
    assertThat(faults("{\"because\": \"x\"}"))
        .containsExactly(
            "error C052 x.json: nothing is expected\n"
                + "      help: name under `expect` what should be so");
    assertThat(faults("[]"))
        .containsExactly(
            "error C050 x.json: this is not an expectation\n"
                + "      help: it is an object: {\"expect\": ..}");
    assertThat(faults("{\"expect\": {\"a\": 1,}}"))
        .containsExactly(
            "error C050 x.json: this is not JSON at line 1, column 20\n"
                + "      help: often a comma is missing or too many, or a key stands twice");
    assertThat(faults("[".repeat(5000))).hasSize(1);
    assertThat(faults("")).hasSize(1);
    assertThat(faults(" ".repeat((1 << 20) + 1)))
        .containsExactly(
            "error C053 x.json: the file is larger than 1 MiB\n"
                + "      help: an expectation is far smaller");
  }

  private static List<String> faults(String json) {
    RejectedException refused =
        catchThrowableOfType(
            RejectedException.class, () -> ExpectationJson.read("x.json", bytes(json)));
    return refused.issues().stream().map(Issue::plain).toList();
  }

  private static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }
}
