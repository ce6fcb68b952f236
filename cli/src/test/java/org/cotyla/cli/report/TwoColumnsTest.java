package org.cotyla.cli.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("Lists in two columns")
class TwoColumnsTest {

  private static final int LINE = 50;

  private final Markup markup = new Markup();
  private final List<String> written = new ArrayList<>();

  @Test
  @DisplayName("are cut where both columns are about equally high, in the order given")
  void even() {
    new TwoColumns(markup, List.of(block("", 4 * LINE, LINE, LINE, LINE, LINE, LINE))).write();
    assertThat(written).containsExactly("0", "1", "2", "3", "4", "5");
    assertThat(side(0)).contains("0", "1").doesNotContain("2");
    assertThat(side(1)).contains("2", "5").doesNotContain("1");
  }

  @Test
  @DisplayName("say a heading once, where its entries begin")
  void headings() {
    TwoColumns.Block first = block("First", LINE, LINE, LINE, LINE, LINE);
    new TwoColumns(markup, List.of(first, block("Second", LINE))).write();
    String page = markup.toString();
    assertThat(page.split("First", -1)).hasSize(2);
    assertThat(page.split("Second", -1)).hasSize(2);
    assertThat(side(1)).contains("Second");
  }

  @Test
  @DisplayName("take the whole width for one entry, and need none")
  void few() {
    new TwoColumns(markup, List.of(block("Only", LINE))).write();
    new TwoColumns(markup, List.of()).write();
    assertThat(markup.toString()).contains("Only").doesNotContain("side");
  }

  private String side(int number) {
    return markup.toString().split("class=\"side\"")[number + 1];
  }

  private TwoColumns.Block block(String label, int... letters) {
    List<TwoColumns.Entry> entries = new ArrayList<>();
    for (int size : letters) {
      String text = Integer.toString(entries.size());
      entries.add(
          new TwoColumns.Entry(
              size,
              () -> {
                written.add(text);
                markup.leaf("li", text);
              }));
    }
    return new TwoColumns.Block("h3", label, "ul", "", Collections.unmodifiableList(entries));
  }
}
