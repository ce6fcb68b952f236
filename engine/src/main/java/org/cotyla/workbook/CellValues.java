package org.cotyla.workbook;

import java.math.BigDecimal;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.cotyla.issue.CellRef;

/** Makes of what a file stores for a cell what stands in the grid. */
record CellValues(
    List<String> strings, CellStyles styles, boolean from1904, Set<String> linkingNames) {

  /**
   * What a file stores for a cell.
   *
   * @param type the format's letter for the kind of value
   * @param style the number of its style, or empty
   * @param value what is stored, or empty
   * @param inline the text that stands in the cell itself; it counts only when the type says so
   * @param formula the formula, when it has one; empty for a copy of a formula that stands
   *     elsewhere
   * @param linksOut whether the formula reads another workbook
   */
  record Stored(
      String type,
      String style,
      String value,
      Optional<String> inline,
      Optional<String> formula,
      boolean linksOut) {

    private boolean isInline() {
      return type.equals("inlineStr");
    }

    /** Some programs store a new text beside the old one, which every other program then shows. */
    private boolean isTorn() {
      return isInline() && !value.isEmpty() && !inline.orElse(value).equals(value);
    }

    private String content() {
      return isInline() ? inline.orElse(value) : value;
    }
  }

  /** The cell, blank when nothing is stored; an exception means that the file is damaged. */
  Cell cell(CellRef at, Stored stored) {
    if (stored.linksOut()) {
      return Cell.faulty(
          at,
          shown(stored),
          "W022",
          "the formula reads another workbook: `" + shown(stored) + "`",
          "write the value itself");
    }
    if (stored.isTorn()) {
      return Cell.faulty(
          at,
          TidyText.of(stored.content()),
          "W028",
          "the cell holds two texts, `"
              + TidyText.shortened(TidyText.of(stored.content()))
              + "` and `"
              + TidyText.shortened(TidyText.of(stored.value()))
              + "`",
          "type it again in a spreadsheet program and save the workbook");
    }
    boolean nothing = stored.content().isEmpty();
    if (nothing && stored.formula().isPresent() && !stored.type().equals("str")) {
      return Cell.faulty(
          at,
          shown(stored),
          "W023",
          "the formula `" + shown(stored) + "` has no stored value",
          "open the workbook in a spreadsheet program and save it, or write the value itself");
    }
    if (nothing) {
      return Cell.of(at, "");
    }
    return switch (stored.type()) {
      case "s" -> Cell.of(at, strings.get(Integer.parseInt(stored.value().strip())));
      case "str", "inlineStr" -> Cell.of(at, TidyText.unescaped(stored.content()));
      case "b" -> Cell.of(at, WorkbookPart.isTrue(stored.value().strip()) ? "true" : "false");
      case "e" -> error(at, TidyText.of(stored.value()));
      case "d" -> Cell.of(at, isoDate(stored.value().strip()));
      default -> number(at, stored);
    };
  }

  private static String shown(Stored stored) {
    return TidyText.shortened("=" + TidyText.of(stored.formula().orElse("")));
  }

  private static Cell error(CellRef at, String error) {
    return Cell.faulty(
        at,
        error,
        "W021",
        "`" + error + "` stands here, which is a formula's error and not a value",
        "put the formula right, or write the value itself");
  }

  private static String isoDate(String stored) {
    try {
      return stored.contains("T")
          ? NumberText.iso(LocalDateTime.parse(stored.replaceFirst("Z$", "")))
          : LocalDate.parse(stored).toString();
    } catch (DateTimeException notDate) {
      throw new IllegalArgumentException(notDate);
    }
  }

  private Cell number(CellRef at, Stored stored) {
    double number = Double.parseDouble(stored.value().strip());
    if (!Double.isFinite(number)) {
      throw new IllegalArgumentException("not a number");
    }
    String text =
        stored.formula().isPresent() ? NumberText.shown(number) : NumberText.exact(number);
    NumberFormat format = styles.format(stored.style());
    if (format == NumberFormat.PERCENT) {
      String seen = new BigDecimal(text).movePointRight(2).stripTrailingZeros().toPlainString();
      return Cell.faulty(
          at,
          text,
          "W024",
          "the cell shows " + seen + " %, but `" + text + "` is stored",
          "give the cell the number format General and write the number that is meant");
    }
    return format.isDate() ? date(at, number, text, format) : Cell.of(at, text);
  }

  private Cell date(CellRef at, double number, String text, NumberFormat format) {
    boolean part = format == NumberFormat.PART_OF_DATE;
    return NumberText.date(number, from1904)
        .map(date -> new Cell(at, date, Optional.empty(), part))
        .orElseGet(
            () ->
                Cell.faulty(
                    at,
                    text,
                    "W025",
                    "the cell has a date's format, but `" + text + "` is no date",
                    "give the cell the number format General, or write a date"));
  }
}
