package org.cotyla.compare;

import static org.assertj.core.api.Assertions.assertThat;
import static org.cotyla.compare.Written.verdict;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("Results that are formulas")
class FormulaResultsTest {

  @Test
  @DisplayName("of a count's default row keep it from being compared, and it says so")
  void countWithDefault() {
    ProtocolComparison comparison = counted("width").against(counted("width + 5"));
    DecisionComparison count = Written.decision(comparison, "Count");
    assertThat(count.verdict()).isEqualTo(Verdict.INCOMPARABLE);
    assertThat(count.note().orElseThrow()).contains("default row").contains("formula");
  }

  @Test
  @DisplayName("of a count's default row that are constants are compared")
  void countWithConstantDefault() {
    assertThat(verdict(counted("2").against(counted("3")), "Count")).isEqualTo(Verdict.DIFFERS);
    assertThat(verdict(counted("2").against(counted("1 + 1")), "Count")).isEqualTo(Verdict.SAME);
  }

  @Test
  @DisplayName("that are added up cannot be compared, and the reason is given")
  void sums() {
    ProtocolComparison comparison = summed("width").against(summed("width + 1"));
    DecisionComparison sum = Written.decision(comparison, "Count");
    assertThat(sum.verdict()).isEqualTo(Verdict.INCOMPARABLE);
    assertThat(sum.note().orElseThrow()).contains("formulas");
  }

  @Test
  @DisplayName("in a list are no difference where they give the same number")
  void listOfFormulas() {
    for (String policy : new String[] {"C", "R"}) {
      ProtocolComparison comparison =
          listed(policy, "width + depth").against(listed(policy, "depth + width"));
      assertThat(verdict(comparison, "List")).isEqualTo(Verdict.UNDECIDED);
    }
  }

  @Test
  @DisplayName("in a list are no difference where what they read is written otherwise only")
  void listOfWhatChanged() {
    ProtocolComparison comparison = read("width + depth").against(read("depth + width"));
    assertThat(verdict(comparison, "List")).isNotEqualTo(Verdict.DIFFERS);
  }

  @Test
  @DisplayName("in a list differ where they give another number")
  void listThatDiffers() {
    ProtocolComparison comparison = listed("C", "width + depth").against(listed("C", "width + 1"));
    assertThat(verdict(comparison, "List")).isEqualTo(Verdict.DIFFERS);
  }

  private static Written counted(String otherwise) {
    return sheets()
        .derived("count", "number", "-")
        .decision("Count", "C#", "width", "count", "C-1|> 30|1", "default|-|" + otherwise);
  }

  private static Written summed(String result) {
    return sheets()
        .derived("count", "number", "-")
        .decision("Count", "C+", "width", "count", "C-1|> 30|" + result, "C-2|-|1");
  }

  private static Written listed(String policy, String result) {
    return sheets()
        .derived("entry", "number", "-")
        .decision("List", policy, "width", "entry", "E-1|> 30|" + result, "E-2|-|1");
  }

  private static Written read(String load) {
    return listed("C", "load * 2").calculation("load", load);
  }

  private static Written sheets() {
    return new Written().given("width", "number", "[0..60]").given("depth", "number", "[0..60]");
  }
}
