package org.cotyla.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.cotyla.compile.SampleDraft;
import org.cotyla.evaluate.Engine;
import org.cotyla.evaluate.Recommendation;
import org.cotyla.finite.Domain;
import org.cotyla.finite.Effort;
import org.cotyla.issue.Severity;
import org.cotyla.protocol.DecisionTable;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

class ProtocolCheckTest {

  private static CheckedSample check(SampleDraft draft) {
    return CheckedSample.of(draft);
  }

  @Test
  @DisplayName("A gap is told by its fewest findings, with a case in it")
  void gap() {
    CheckedSample checked =
        check(new SampleDraft().cell(0, 1, 1, "< 20"))
            .says(
                "warning K101 Class!B1: no row for width from 20 up to 30 mm",
                "warning K101 Load!B1: no row for class C or nothing");
    Recommendation example = checked.remark("K101").example().orElseThrow();
    assertThat(CheckedSample.findings(example)).isEqualTo("width 25");
    assertThat(example.decision("Class").orElseThrow().byDefault()).isTrue();
  }

  @Test
  @DisplayName("A gap that an upstream decision keeps every case out of is none")
  void gapUpstream() {
    check(new SampleDraft().cell(1, 1, 1, "B, C")).says();
  }

  @Test
  @DisplayName("A table that lists or votes may be silent, and a default row closes every gap")
  void noGap() {
    check(new SampleDraft().cell(2, 0, 1, "C")).says();
    check(new SampleDraft().cell(0, 1, 1, "< 20").row(0, "default", "-", "-", "B")).says();
  }

  @Test
  @DisplayName("Two rows that match one case under U are a clash, also when they give the same")
  void clash() {
    CheckedSample checked =
        check(new SampleDraft().cell(0, 1, 1, "<= 40"))
            .says(
                "error K111 Class!A8: rows `K-1` and `K-2` (Class!A9) both match width above 30 up"
                    + " to 40 mm and grade low, but hit policy U allows one",
                "error K111 Class!A9: rows `K-2` and `K-3` (Class!A10) both match width above 30 up"
                    + " to 40 mm and grade high, but hit policy U allows one");
    Recommendation example = checked.remark("K111").example().orElseThrow();
    assertThat(example.faults()).hasSize(1);
    check(new SampleDraft().cell(0, 1, 1, "<= 40").cell(0, 1, 3, "A").cell(0, 2, 3, "A"))
        .says(
            "error K111 Class!A8: rows `K-1` and `K-2` (Class!A9) both match width above 30 up to"
                + " 40 mm and grade low, but hit policy U allows one; they give the same",
            "error K111 Class!A9: rows `K-2` and `K-3` (Class!A10) both match width above 30 up to"
                + " 40 mm and grade high, but hit policy U allows one; they give the same",
            "warning K121 Votes!A9: row `V-2` never counts: no case leads to `class` `not(A)`"
                + " (Votes!B9)");
  }

  @Test
  @DisplayName("Under A rows may meet where they agree, and clash where they do not")
  void any() {
    SampleDraft agreeing = new SampleDraft().head(0, 1, "A").cell(0, 1, 1, "<= 40");
    check(agreeing.cell(0, 1, 3, "A"))
        .says(
            "error K111 Class!A9: rows `K-2` and `K-3` (Class!A10) both match width above 30 up to"
                + " 40 mm and grade high and give different results, which hit policy A forbids");
  }

  @Test
  @DisplayName("Under A rows agree by what they give, however that is written")
  void anyByValue() {
    SampleDraft load = new SampleDraft().head(1, 1, "A");
    check(new SampleDraft().head(1, 1, "A").cell(1, 0, 2, "30").cell(1, 1, 2, "house line")).says();
    check(load.cell(1, 0, 2, "width * 2"))
        .says(
            "warning K112 Load!A8: whether rows `L-1` and `L-2` (Load!A9) can both match and give"
                + " different results is undecided: they agree in the 8 cases that were tried");
    CheckedSample different =
        check(new SampleDraft().head(1, 1, "A").cell(1, 0, 2, "width"))
            .says(
                "error K111 Load!A8: rows `L-1` and `L-2` (Load!A9) both match class A and give"
                    + " different results, which hit policy A forbids");
    assertThat(different.remark("K111").example().orElseThrow().faults()).hasSize(1);
  }

  @Test
  @DisplayName("A gap that hangs on another finding is told as some cases, never as a whole region")
  void gapInSomeCases() {
    SampleDraft draft =
        new SampleDraft()
            .head(0, 1, "F")
            .add(
                "Fields",
                "depth",
                "given",
                "number",
                "mm",
                "[0..120]",
                "-",
                "planning",
                "-",
                "M",
                "S")
            .cell(0, 0, 1, "> depth")
            .cell(0, 1, 1, "< depth")
            .cell(0, 2, 1, "> depth");
    check(draft)
        .says(
            "warning K101 Class!B1: no row for some cases of width with any value and grade low",
            "warning K101 Class!B1: no row for some cases of width with any value and grade high",
            "warning K101 Load!B1: no row for class C or nothing");
  }

  @Test
  @DisplayName("When more regions have no row than are shown, that is said")
  void moreGaps() {
    SampleDraft draft = new SampleDraft().when(0, 1, "depth");
    draft.add(
        "Fields", "depth", "given", "number", "mm", "[0..120)", "-", "planning", "-", "M", "S");
    draft.set("Fields", 0, "allowed", "[0..120)");
    for (int row = 0; row < 6; row++) {
      String step = "[" + 20 * row + ".." + 20 * (row + 1) + ")";
      String others = "not(" + step + ")";
      if (row < 3) {
        draft.cell(0, row, 1, step).cell(0, row, 2, others);
      } else {
        draft.row(0, "K-" + (row + 1), step, others, "A");
      }
    }
    CheckedSample checked = check(draft);
    assertThat(checked.report().remarks().stream().map(r -> r.issue().plain()))
        .contains(
            "note K103 Class!B1: more cases may have no row; only the first 5 regions are shown");
  }

  @Test
  @DisplayName("What one table's check meets by the way tells nothing to another's")
  void tablesApart() {
    Engine engine = Engine.of(new SampleDraft().protocol());
    SeenRows seen = new SeenRows();
    for (DecisionTable table : engine.protocol().decisions()) {
      new TableCheck(engine, Domain.of(engine.protocol()), table, Effort.usual(), seen, () -> {})
          .run();
    }
    assertThat(engine.protocol().allRows()).noneMatch(seen::contains);
  }

  @Test
  @DisplayName("Under P only rows of higher priority are named as what takes a row's cases")
  void shadowedByPriority() {
    SampleDraft draft = new SampleDraft().head(0, 1, "P").cell(0, 0, 3, "C").cell(0, 2, 3, "B");
    draft.cell(0, 2, 2, "-").row(0, "K-4", "> 40", "high", "C").row(0, "K-5", "> 30", "-", "A");
    assertThat(check(draft).remarks("K121").stream().map(r -> r.issue().message()))
        .contains(
            "row `K-4` never counts: every case that it matches is taken by `K-5` (Class!A12)");
  }

  @Test
  @DisplayName("Rows of an ordered list are not to be merged past a row that says something else")
  void mergeableInOrder() {
    SampleDraft apart = new SampleDraft().head(1, 1, "R");
    apart.cell(1, 1, 1, "A").row(1, "L-3", "C", "2");
    assertThat(check(apart).remarks("K132")).isEmpty();
    SampleDraft beside = new SampleDraft().head(1, 1, "R");
    beside.row(1, "L-3", "C", "twice");
    assertThat(check(beside).remarks("K132")).hasSize(1);
  }

  @Test
  @DisplayName("A field that only a safeguard's endpoint names is not idle")
  void readBySafeguard() {
    SampleDraft draft =
        new SampleDraft()
            .add(
                "Fields",
                "depth",
                "given",
                "number",
                "mm",
                "[0..9]",
                "-",
                "planning",
                "-",
                "M",
                "S");
    check(draft)
        .says("warning K151 Fields!A7: nothing reads the field `depth`, so asking for it is idle");
    draft.safeguard("S-1", "> depth", "-", "hold", "twice: >= 0", "Reason.", "S");
    check(draft).says();
  }

  @Test
  @DisplayName("What is undecided is said of a default row and of a value as well")
  void undecided() {
    SampleDraft draft = new SampleDraft().row(0, "default", "-", "-", "B");
    draft.add("Calculations", "sum", "width * width - 30 * width", "1", "M", "S");
    draft.when(0, 0, "sum").cell(0, 0, 1, "> 0").cell(0, 1, 1, "<= 0").cell(0, 2, 1, "> 0");
    Engine engine = Engine.of(draft.protocol());
    List<String> told =
        ProtocolCheck.of(engine, new Effort(1, 0, 0))
            .run(CheckedSample.TODAY, Progress.untold())
            .remarks()
            .stream()
            .map(remark -> remark.issue().plain())
            .toList();
    assertThat(told)
        .contains(
            "warning K122 Class!A11: whether the default row `default` ever counts is undecided:"
                + " the arithmetic was not settled within the limit",
            "note K142 Class!D7: whether a case leads to `A`, `B`, `C` of `class` is undecided:"
                + " the arithmetic was not settled within the limit");
  }

  @Test
  @DisplayName("A row that earlier rows take every case from never counts, and they are named")
  void shadowed() {
    check(new SampleDraft().head(0, 1, "F").row(0, "K-4", "> 50", "-", "B"))
        .says(
            "warning K121 Class!A11: row `K-4` never counts: every case that it matches is taken by"
                + " `K-1` (Class!A8), `K-3` (Class!A10)");
  }

  @Test
  @DisplayName("A row whose tests no case meets never counts, and the fewest such tests are named")
  void neverTogether() {
    check(new SampleDraft().when(1, 0, "class").row(1, "L-3", "C", "1").cell(0, 2, 3, "B"))
        .says(
            "warning K121 Load!A10: row `L-3` never counts: no case leads to `class` `C`"
                + " (Load!B10)");
  }

  @Test
  @DisplayName("A default row for which no case is left is idle")
  void idleDefault() {
    check(new SampleDraft().row(0, "default", "-", "-", "B"))
        .says(
            "warning K123 Class!A11: the default row `default` never counts: some other row matches"
                + " every case");
  }

  @Test
  @DisplayName("Where all rows speak, a row that stands there twice is a warning")
  void repeated() {
    check(new SampleDraft().row(2, "V-3", "A", "-", "rest", "favour", "2"))
        .says(
            "warning K131 Votes!A10: row `V-3` says the same as `V-1` (Votes!A8), so it speaks"
                + " twice");
  }

  @Test
  @DisplayName("Two rows that give the same for the same reason could be one")
  void mergeable() {
    CheckedSample checked = check(new SampleDraft().cell(0, 2, 3, "A"));
    assertThat(checked.remark("K132").issue().plain())
        .isEqualTo(
            "note K132 Class!A10: rows `K-1` (Class!A8) and `K-3` differ only in `grade` and give"
                + " the same for the same reason\n"
                + "      help: one row with both in that cell says the same");
  }

  @Test
  @DisplayName("A value of a choice that no case leads to is noted")
  void unreached() {
    CheckedSample checked = check(new SampleDraft().cell(0, 2, 3, "B"));
    assertThat(checked.remark("K141").issue().message())
        .isEqualTo("no case leads to `C` of `class`");
  }

  @Test
  @DisplayName("What nothing uses is told: fields, calculations, options and sources")
  void idle() {
    SampleDraft draft =
        new SampleDraft()
            .add(
                "Fields",
                "depth",
                "given",
                "number",
                "mm",
                "[0..9]",
                "-",
                "planning",
                "-",
                "M",
                "S")
            .add("Calculations", "half", "width / 2", "mm", "M", "S")
            .add("Sources", "T", "Another citation", "2021", "low");
    CheckedSample checked =
        check(draft)
            .says(
                "warning K151 Fields!A7: nothing reads the field `depth`, so asking for it is idle");
    assertThat(checked.remark("K152").issue().message())
        .isEqualTo("no table or formula reads the calculation `half`");
    assertThat(checked.remark("K153").issue().message())
        .isEqualTo("no row ever favours the option `brace`");
    assertThat(checked.remark("K154").issue().message())
        .isEqualTo("nothing leans on the source `T`");
  }

  @Test
  @DisplayName("A threshold beyond what the field may be is told at its cell")
  void beyond() {
    check(new SampleDraft().cell(0, 1, 1, "[-5..30]"))
        .says("warning K161 Class!B9: `[-5..30]` reaches beyond what `width` may be");
  }

  @Test
  @DisplayName("A review date that has passed is told")
  void review() {
    check(new SampleDraft().about("review due", "2026-05-31"))
        .says("warning K171 Protocol!B6: the protocol was due for review on 2026-05-31");
    check(new SampleDraft().about("review due", "2026-06-01")).says();
  }

  @Test
  @DisplayName("A warning that is accepted stays visible with its reason, and no longer counts")
  void accepted() {
    SampleDraft draft = new SampleDraft().cell(0, 1, 1, "< 20");
    draft.accepted("K101", "class", "Nobody is between 20 and 30.", "lead", "2026-05-01");
    CheckedSample checked =
        check(draft).says("warning K101 Load!B1: no row for class C or nothing");
    assertThat(checked.report().accepted())
        .singleElement()
        .satisfies(
            remark ->
                assertThat(remark.accepted().orElseThrow().because())
                    .isEqualTo("Nobody is between 20 and 30."));
    assertThat(checked.report().count(Severity.WARNING))
        .isEqualTo(check(new SampleDraft()).report().count(Severity.WARNING));
  }

  @Test
  @DisplayName("An acceptance of what is not there, or of an error, is of no use and is noted")
  void idleAcceptance() {
    SampleDraft draft = new SampleDraft().cell(0, 1, 1, "<= 40");
    draft.accepted("K111", "K-1", "It is meant so.", "lead", "2026-05-01");
    draft.accepted("K101", "class", "Nobody is there.", "lead", "2026-05-01");
    List<String> notes =
        check(draft).report().remarks().stream()
            .filter(remark -> remark.issue().code().equals("K181"))
            .map(remark -> remark.issue().message())
            .toList();
    assertThat(notes)
        .containsExactly(
            "`K111` about `K-1` is an error, which cannot be accepted",
            "nothing is left to accept: there is no `K101` about `class`");
  }

  @Test
  @DisplayName("Two runs say the same in the same order")
  void deterministic() {
    SampleDraft draft = new SampleDraft().cell(0, 1, 1, "<= 40").head(0, 1, "A");
    Engine engine = Engine.of(draft.protocol());
    CheckReport first = ProtocolCheck.of(engine).run(CheckedSample.TODAY, Progress.untold());
    CheckReport second = ProtocolCheck.of(engine).run(CheckedSample.TODAY, Progress.untold());
    assertThat(second.remarks().stream().map(Remark::issue))
        .containsExactlyElementsOf(first.remarks().stream().map(Remark::issue).toList());
  }

  @Test
  @DisplayName("Progress is told from the start, row by row, so that one long table is no silence")
  void progress() {
    List<String> told = new ArrayList<>();
    ProtocolCheck.of(Engine.of(new SampleDraft().protocol()))
        .run(
            CheckedSample.TODAY,
            (done, total) -> {
              synchronized (told) {
                told.add(done + " of " + total);
              }
            });
    assertThat(told)
        .startsWith("0 of 7")
        .containsExactlyInAnyOrder(
            "0 of 7", "1 of 7", "2 of 7", "3 of 7", "4 of 7", "5 of 7", "6 of 7", "7 of 7");
  }
}
