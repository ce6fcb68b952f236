package org.cotyla.workbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.cotyla.workbook.SampleWorkbook.clear;
import static org.cotyla.workbook.SampleWorkbook.set;

import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.cotyla.evaluate.Engine;
import org.cotyla.issue.Issue;
import org.cotyla.protocol.Checks;
import org.cotyla.protocol.Protocol;
import org.cotyla.protocol.TestCase;
import org.cotyla.trial.Outcome;
import org.cotyla.trial.Trial;
import org.cotyla.trial.TrialRun;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

@DisplayName("The sheets Safeguards, Accepted and Cases")
class CheckSheetsTest {

  private static final String[][] SAFEGUARDS = {
    {"Safeguards of the workshop"},
    {"id", "when", "must", "what", "because", "source", "note"},
    {"", "rod length"},
    {"SF-1", "< 10", "hold", "grade: A", "short rods never bend", "HOUSE", "for people"},
    {},
    {"SF-2", "-", "be shown", "G-1", "said to everybody", "HOUSE"},
  };

  private static final String[][] ACCEPTED = {
    {"code", "about", "because", "by", "date"},
    {"W173", "G-2", "kept for the next size", "workshop lead", "2026-01-31"},
  };

  private static final String[][] CASES = {
    {"case", "stage", "given", "given", "expect", "expect", "because"},
    {"", "", "rod length", "finish", "grade", "rows"},
    {"a short rod", "", "12", "", "a", "G-1", "shorter than 30"},
    {"a rod of unsure length", "workshop", "20..40", "rough", "A or B", "", ""},
  };

  private static void add(XSSFWorkbook workbook) {
    SampleWorkbook.write(workbook, "Safeguards", SAFEGUARDS);
    SampleWorkbook.write(workbook, "Accepted", ACCEPTED);
    SampleWorkbook.write(workbook, "Cases", CASES);
  }

  private static byte[] changed(Consumer<XSSFWorkbook> change) {
    return SampleWorkbook.changed(
        workbook -> {
          add(workbook);
          change.accept(workbook);
        });
  }

  private static Protocol read(byte[] workbook) {
    return Workbooks.read("rods.xlsx", workbook, List.of());
  }

  @Test
  @DisplayName("are read, with every piece at its cell and columns for people left out")
  void areRead() {
    Checks checks = read(changed(book -> {})).checks();

    assertThat(checks.safeguards())
        .extracting(one -> one.id() + " " + one.demand().plain() + " " + one.demand().at().plain())
        .containsExactly("SF-1 hold: grade: A Safeguards!D4", "SF-2 be shown: G-1 Safeguards!D6");
    assertThat(checks.safeguards().get(0).tests())
        .extracting(one -> one.test().text() + " " + one.test().at().plain())
        .containsExactly("< 10 Safeguards!B4");
    assertThat(checks.safeguards().get(1).tests()).isEmpty();
    assertThat(checks.accepted())
        .extracting(one -> one.code() + " " + one.about() + " " + one.at().plain())
        .containsExactly("W173 G-2 Accepted!A2");
    TestCase first = checks.cases().get(0);
    assertThat(first.name()).isEqualTo("a short rod");
    assertThat(first.stage()).isEmpty();
    assertThat(first.given())
        .extracting(one -> one.field().name() + " " + one.text() + " " + one.at().plain())
        .containsExactly("rod length 12 Cases!C3");
    assertThat(first.expected())
        .extracting(one -> one.about() + " " + one.values() + " " + one.at().plain())
        .containsExactly("grade [A] Cases!E3", "rows [G-1] Cases!F3");
    TestCase second = checks.cases().get(1);
    assertThat(second.stage()).contains("workshop");
    assertThat(second.expected().get(0).values()).containsExactly("A", "B");
  }

  @Test
  @DisplayName("may be missing, and change no decision")
  void mayBeMissing() {
    Protocol with = read(changed(book -> {}));
    Protocol without = read(SampleWorkbook.soundBytes());

    assertThat(without.checks()).isEqualTo(Checks.none());
    assertThat(with.decisions()).hasSameSizeAs(without.decisions());
  }

  record Bad(String what, Consumer<XSSFWorkbook> change, String said) {
    @Override
    public String toString() {
      return what;
    }
  }

  static Stream<Bad> faults() {
    return Stream.of(
        new Bad(
            "no row of headings",
            clear("Safeguards!A2"),
            """
            error W042 Safeguards!A1: no row of the sheet Safeguards starts with `id`
                  help: above the table stands a row: id, when, ..., must, what, because, source"""),
        new Bad(
            "a slip in a heading",
            set("Safeguards!C2", "mst"),
            """
            error W044 Safeguards!C2: `mst` is not a heading of a sheet Safeguards
                  help: did you mean `must`? head a column for people `note`"""),
        new Bad(
            "a heading that is missing",
            clear("Safeguards!E2"),
            """
            error W043 Safeguards!A2: no column of the sheet Safeguards is headed `because`
                  help: the headings are: id, when, must, what, because, source"""),
        new Bad(
            "a safeguard without an id",
            clear("Safeguards!A6"),
            """
            error W048 Safeguards!A6: the row has content but no id
                  help: give it an id that was never used"""),
        new Bad(
            "no name under a heading",
            clear("Cases!D2"),
            """
            error W046 Cases!D2: a column headed `given` has no name beneath
                  help: write the name of what it is about"""),
        new Bad(
            "a demand that is none",
            set("Safeguards!C4", "held"),
            """
            error W200 Safeguards!C4: `held` is not a demand of a safeguard
                  help: did you mean `hold`? (never come first, be ruled out, be shown, hold)"""),
        new Bad(
            "a heading of Accepted that is missing",
            clear("Accepted!D1"),
            """
            error W038 Accepted!A1: no column is headed `by`
                  help: the headings are: code, about, because, by, date"""),
        new Bad(
            "cases without headings",
            clear("Cases!A1"),
            """
            error W042 Cases!A1: no row of the sheet Cases starts with `case`
                  help: above the table stands a row: case, stage, given, ..., expect, ..., because"""),
        new Bad(
            "a case without a name",
            clear("Cases!A3"),
            """
            error W048 Cases!A3: the row has content but no case
                  help: say in a few words which case it is"""),
        new Bad(
            "a given field that no case states",
            set("Cases!D2", "grade"),
            "error W220 Cases!D2: `grade` is not a field that a case states"),
        new Bad(
            "something that nobody can expect",
            set("Cases!E2", "graed"),
            """
            error W221 Cases!E2: `graed` is nothing that can be expected
                  help: did you mean `grade`?"""),
        new Bad(
            "a value that cannot be expected",
            set("Cases!E3", "C"),
            """
            error W222 Cases!E3: `C` cannot be expected of `grade`
                  help: expected one of: A, B, nothing"""),
        new Bad(
            "a case that expects nothing",
            clear("Cases!E4"),
            """
            error W223 Cases!A4: case `a rod of unsure length` expects nothing
                  help: write under `expect` what the answer should be"""),
        new Bad(
            "two cases of one name",
            set("Cases!A4", "A short rod"),
            """
            error W224 Cases!A4: the case `A short rod` already stands at Cases!A3
                  help: give one of the two another name"""));
  }

  @Test
  @DisplayName(
      "keep the protocol in use when a case expects a row that is gone, and fail that case")
  void aRowThatIsGone() {
    Protocol protocol = read(changed(set("Cases!F3", "G-9")));
    assertThat(protocol.remarks())
        .extracting(Issue::plain)
        .contains(
            """
            warning W222 Cases!F3: `G-9` is not the id of a row
                  help: the case fails as long as it is expected; did you mean `G-1`?""");
    TrialRun run = new TrialRun(Engine.of(protocol));
    Trial.ofWorkbook(protocol).forEach(run::add);
    assertThat(run.report().failed())
        .extracting(tried -> ((Outcome.Failed) tried.outcome()).differences().get(0).plain())
        .containsExactly("Cases!F3: rows: expected G-9, got the protocol has no such row");
  }

  @ParameterizedTest
  @MethodSource("faults")
  @DisplayName("tell every fault at its cell")
  void faultAtItsCell(Bad bad) {
    assertThat(Rejections.text(changed(bad.change()))).isEqualTo(bad.said());
  }
}
