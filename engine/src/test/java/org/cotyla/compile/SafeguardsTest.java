package org.cotyla.compile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.cotyla.issue.Issue;
import org.cotyla.protocol.Acceptance;
import org.cotyla.protocol.Demand;
import org.cotyla.protocol.Safeguard;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

@DisplayName("Safeguards and accepted warnings")
class SafeguardsTest {

  private static SampleDraft demanding(String must, String what) {
    return noting().safeguard("SF-1", "> house line", "-", must, what, "Reason.", "S");
  }

  /** The sample with a list of notes, which a safeguard can ask to be shown. */
  private static SampleDraft noting() {
    return new SampleDraft()
        .add("Fields", "note", "derived", "text", "-", "-", "-", "-", "-", "M", "S")
        .head(1, 1, "C")
        .then(1, 0, "note")
        .set("Fields", 4, "kind", "given")
        .cell(1, 0, 2, "Bring a rope.")
        .cell(1, 1, 2, "Mind the step.");
  }

  private static Safeguard only(SampleDraft draft) {
    List<Safeguard> safeguards = draft.protocol().checks().safeguards();
    assertThat(safeguards).hasSize(1);
    return safeguards.get(0);
  }

  @Test
  @DisplayName("A safeguard keeps the tests that say something, its reason, sources and cell")
  void wholeSafeguard() {
    Safeguard safeguard = only(demanding("never come first", "Rest"));

    assertThat(safeguard.id()).isEqualTo("SF-1");
    assertThat(safeguard.because()).isEqualTo("Reason.");
    assertThat(safeguard.sources()).containsExactly("S");
    assertThat(safeguard.at().plain()).isEqualTo("Safeguards!A3");
    assertThat(safeguard.tests())
        .extracting(test -> test.input().symbol().name() + " " + test.test().text())
        .containsExactly("width > house line");
  }

  @Test
  @DisplayName("Each kind of demand is understood, names compared as everywhere")
  void demands() {
    assertThat(only(demanding("Never come first", "REST")).demand())
        .isInstanceOfSatisfying(
            Demand.NeverFirst.class,
            demand -> {
              assertThat(demand.ranking()).isEqualTo("plan");
              assertThat(demand.option()).isEqualTo("rest");
              assertThat(demand.plain()).isEqualTo("never come first: rest");
              assertThat(demand.at().plain()).isEqualTo("Safeguards!E3");
            });
    assertThat(only(demanding("be ruled out", "brace")).demand())
        .isInstanceOfSatisfying(
            Demand.RuledOut.class, demand -> assertThat(demand.option()).isEqualTo("brace"));
    assertThat(only(demanding("be shown", "l-2")).demand())
        .isInstanceOfSatisfying(
            Demand.RowCounts.class,
            demand -> {
              assertThat(demand.decision()).isEqualTo("Load");
              assertThat(demand.row()).isEqualTo("L-2");
            });
    assertThat(only(demanding("be shown", "Mind the step.")).demand())
        .isInstanceOfSatisfying(
            Demand.TextShown.class,
            demand -> {
              assertThat(demand.decision()).isEqualTo("Load");
              assertThat(demand.output().name()).isEqualTo("note");
              assertThat(demand.plain()).isEqualTo("be shown: Mind the step.");
            });
    assertThat(only(demanding("hold", "class: A, C")).demand())
        .isInstanceOfSatisfying(
            Demand.Holds.class,
            demand -> {
              assertThat(demand.name().name()).isEqualTo("class");
              assertThat(demand.plain()).isEqualTo("hold: class: A, C");
            });
    assertThat(only(demanding("hold", "first plan: not(brace)")).demand().plain())
        .isEqualTo("hold: first plan: not(brace)");
  }

  static Stream<Arguments> faults() {
    return Stream.of(
        arguments(
            demanding("never first", "rest"),
            "error W200 Safeguards!D3: `never first` is not a demand of a safeguard\n"
                + "      help: expected one of: never come first, be ruled out, be shown, hold"),
        arguments(
            demanding("be rule out", "rest"),
            "error W200 Safeguards!D3: `be rule out` is not a demand of a safeguard\n"
                + "      help: did you mean `be ruled out`?"
                + " (never come first, be ruled out, be shown, hold)"),
        arguments(
            demanding("", "rest"),
            "error W200 Safeguards!D3: the safeguard demands nothing\n"
                + "      help: expected one of: never come first, be ruled out, be shown, hold"),
        arguments(
            demanding("be shown", "-"),
            "error W201 Safeguards!E3: nothing stands here that must be shown\n"
                + "      help: write the id of a row, or the exact text of a result"),
        arguments(
            demanding("be ruled out", "brase"),
            "error W202 Safeguards!E3: `brase` is not an option\n"
                + "      help: did you mean `brace`? (rest, brace)"),
        arguments(
            demanding("be shown", "L-9"),
            "error W203 Safeguards!E3: `L-9` is neither the id of a row nor the text of a result\n"
                + "      help: did you mean `L-1`?"),
        arguments(
            demanding("be shown", "Mind the steps"),
            "error W203 Safeguards!E3: `Mind the steps` is neither the id of a row nor the text of"
                + " a result\n      help: did you mean `Mind the step.`?"),
        arguments(
            demanding("be shown", "A").cell(1, 0, 2, "A"),
            "error W204 Safeguards!E3: `A` is a result of several decisions: Class, Load\n"
                + "      help: write the id of the row that is meant"),
        arguments(
            demanding("hold", "class A"),
            "error W205 Safeguards!E3: `class A` is not a name and a test\n"
                + "      help: write a name, a colon and a test, as `some name: < 30`"),
        arguments(
            demanding("hold", "clas: A"),
            "error W154 Safeguards!E3: `clas` is neither a field, a calculation nor a decision's"
                + " result\n      help: did you mean `class`?"),
        arguments(
            demanding("hold", "class: D"),
            "error W162 Safeguards!E3: `D` is not a value of `class`\n"
                + "      help: expected one of: A, B, C"),
        arguments(
            demanding("hold", "grade: low"),
            "error W206 Safeguards!E3: `grade` is given by the case, so no protocol can hold it\n"
                + "      help: test it under `when`, and demand something that the protocol gives"),
        arguments(
            demanding("hold", "note: null"),
            "error W154 Safeguards!E3: `note` is a list, which no test can read\n"
                + "      help: demand that one of its entries must `be shown`"),
        arguments(
            noting().safeguard("SF-1", "3O", "-", "be ruled out", "brace", "Reason.", "S"),
            "error W162 Safeguards!B3: `3O` goes on with `O` after a complete test\n"
                + "      help: separate alternatives with a comma and a space"),
        arguments(
            noting().safeguard("K-1", "-", "-", "be ruled out", "brace", "Reason.", "S"),
            "error W161 Safeguards!A3: row id `K-1` is already used at Class!A8\n"
                + "      help: give one of the two an id that was never used"),
        arguments(
            noting().safeguard("SF-1", "-", "-", "be ruled out", "brace", "-", "S"),
            "error W123 Safeguards!F3: safeguard `SF-1` has no because\n"
                + "      help: give its reason in one sentence"),
        arguments(
            noting().safeguard("SF-1", "-", "-", "be ruled out", "brace", "Reason.", "T"),
            "error W122 Safeguards!G3: source `T` does not stand in the sheet Sources"),
        arguments(
            noting()
                .safeguardsWhen("width", "klass")
                .safeguard("SF-1", "-", "A", "be ruled out", "brace", "Reason.", "S"),
            "error W154 Safeguards!C2: `klass` is neither a field, a calculation nor a decision's"
                + " result\n      help: did you mean `class`?"),
        arguments(
            noting().accepted("W17", "K-1", "Reason.", "lead", "2026-01-31"),
            "error W210 Accepted!A2: `W17` is not the code of a warning\n"
                + "      help: write it as `cotyla check` prints it, as W173"),
        arguments(
            noting().accepted("W173", "-", "Reason.", "lead", "2026-01-31"),
            "error W211 Accepted!B2: the accepted warning does not say what it is about\n"
                + "      help: the id of a row, a name, or sheet!cell"),
        arguments(
            noting().accepted("W173", "K-1", "", "lead", "2026-01-31"),
            "error W211 Accepted!C2: the accepted warning does not say why it is accepted\n"
                + "      help: give the reason in one sentence"),
        arguments(
            noting().accepted("W173", "K-1", "Reason.", "", "2026-01-31"),
            "error W211 Accepted!D2: the accepted warning does not say who accepted it\n"
                + "      help: name a role, never a person"),
        arguments(
            noting().accepted("W173", "K-1", "Reason.", "lead", "soon"),
            "error W103 Accepted!E2: `soon` is not a date for `date`\n"
                + "      help: write year-month-day, as 2026-01-31"));
  }

  @ParameterizedTest(name = "{1}")
  @MethodSource("faults")
  @DisplayName("Every fault is told at its cell")
  void faultAtItsCell(SampleDraft draft, String told) {
    assertThat(draft.issues()).extracting(Issue::plain).containsExactly(told);
  }

  @Test
  @DisplayName("A test of a safeguard that can never hold is told as it is in a decision")
  void neverHolds() {
    SampleDraft draft = noting().safeguard("SF-1", "> 500", "-", "hold", "class: A", "Why.", "S");

    assertThat(draft.protocol().remarks())
        .extracting(Issue::plain)
        .containsExactly(
            "warning W173 Safeguards!B3: `> 500` can never hold: `width` is [0..120]\n"
                + "      help: check the number, and the allowed values in the sheet Fields");
  }

  @Test
  @DisplayName("An accepted warning keeps its code, subject, reason, role and date")
  void accepted() {
    SampleDraft draft = noting().accepted("w173", "L-2", "Held open.", "workshop lead", "-");
    Acceptance acceptance = draft.protocol().checks().accepted().get(0);

    assertThat(acceptance.code()).isEqualTo("W173");
    assertThat(acceptance.about()).isEqualTo("L-2");
    assertThat(acceptance.because()).isEqualTo("Held open.");
    assertThat(acceptance.by()).isEqualTo("workshop lead");
    assertThat(acceptance.date()).isEmpty();
    assertThat(acceptance.at().plain()).isEqualTo("Accepted!A2");
    assertThat(
            noting()
                .accepted("W173", "L-2", "R.", "lead", "2026-01-31")
                .protocol()
                .checks()
                .accepted()
                .get(0)
                .date())
        .isEqualTo(Optional.of(LocalDate.of(2026, 1, 31)));
  }
}
