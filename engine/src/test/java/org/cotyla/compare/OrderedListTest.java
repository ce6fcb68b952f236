package org.cotyla.compare;

import static org.assertj.core.api.Assertions.assertThat;
import static org.cotyla.compare.Written.verdict;

import java.util.stream.IntStream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("Lists whose order counts")
class OrderedListTest {

  @Test
  @DisplayName("ordered by priority are compared by their entries")
  void outputOrder() {
    Written old = listed("low, high", "E-1|> 30|low", "E-2|-|high");
    assertThat(verdict(old.against(listed("low, high", "E-2|-|high", "E-1|> 30|low")), "List"))
        .isEqualTo(Verdict.PROVEN_SAME);
    assertThat(verdict(old.against(listed("low, high", "E-1|> 40|low", "E-2|-|high")), "List"))
        .isEqualTo(Verdict.DIFFERS);
  }

  @Test
  @DisplayName("cannot be compared where the priorities changed, and say so")
  void otherPriorities() {
    Written old = listed("low, high", "E-1|> 30|low", "E-2|-|high");
    DecisionComparison list =
        Written.decision(old.against(listed("high, low", "E-1|> 30|low", "E-2|-|high")), "List");
    assertThat(list.verdict()).isEqualTo(Verdict.INCOMPARABLE);
    assertThat(list.note().orElseThrow()).contains("priorities");
  }

  @Test
  @DisplayName("that are too long cannot be compared, and say so")
  void tooLong() {
    DecisionComparison list = Written.decision(longList(10).against(longList(11)), "List");
    assertThat(list.verdict()).isEqualTo(Verdict.INCOMPARABLE);
    assertThat(list.note().orElseThrow()).contains("too many entries");
  }

  private static Written listed(String order, String... rows) {
    return new Written()
        .given("width", "number", "[0..60]")
        .derived("entry", "choice", order)
        .decision("List", "O", "width", "entry", rows);
  }

  private static Written longList(int first) {
    return new Written()
        .given("width", "number", "[0..60]")
        .derived("entry", "number", "-")
        .decision(
            "List",
            "R",
            "width",
            "entry",
            IntStream.range(0, 61)
                .mapToObj(i -> "E-" + i + "|> " + (i == 0 ? first : 5) + "|" + i)
                .toArray(String[]::new));
  }
}
