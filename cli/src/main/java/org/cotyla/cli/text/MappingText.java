package org.cotyla.cli.text;

import org.cotyla.retrospective.Column;
import org.cotyla.retrospective.ColumnMapping;
import org.cotyla.retrospective.Meaning;

/** What each column of past cases is taken for, as text. */
public final class MappingText {

  private final Page page;

  public MappingText(int width, Style style) {
    this(new Page(width, style));
  }

  MappingText(Page page) {
    this.page = page;
  }

  /** Every column. */
  public String write(ColumnMapping mapping) {
    page.heading("Columns used");
    mapping.used().forEach(this::used);
    ignored(mapping);
    return page.toString();
  }

  private void used(Column column) {
    page.marked(
        2,
        Mark.ITEM,
        column.heading()
            + " = "
            + column.meaning().word()
            + column.unit().map(unit -> ", in " + unit).orElse("")
            + ", "
            + column.found().words());
  }

  /** Those that were guessed from less than the whole name are to be looked at. */
  void guessed(ColumnMapping mapping) {
    mapping.used().stream()
        .filter(column -> column.found() == Column.Found.BY_PART)
        .forEach(this::used);
  }

  void ignored(ColumnMapping mapping) {
    page.heading("Columns ignored");
    if (mapping.ignored().isEmpty()) {
      page.paragraph(2, "None.");
    }
    for (Column column : mapping.ignored()) {
      String why = column.meaning() instanceof Meaning.Ignored ignored ? ignored.why() : "";
      page.marked(2, Mark.ITEM, column.heading() + ": " + why);
    }
  }
}
