package org.cotyla.protocol;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.cotyla.name.Names;

/** What can be expected of an answer besides the values of its names. */
public enum ExpectWord {
  /** Whether open data cannot change the first place of any ranking. */
  FIRST_IS_CERTAIN(Of.YES_NO),
  /** Options that cannot come first. */
  NOT_FIRST(Of.OPTIONS),
  RULED_OUT(Of.OPTIONS),
  NOT_RULED_OUT(Of.OPTIONS),
  /** Rows that count as certain. */
  ROWS(Of.ROWS),
  /** Rows that do not count. */
  ROWS_NOT(Of.ROWS),
  /** Missing data that may change some decision. */
  MAY_MATTER(Of.FIELDS),
  /** Missing data that change nothing. */
  CANNOT_MATTER(Of.FIELDS),
  MAY_CHANGE_FIRST_PLACE(Of.FIELDS),
  CANNOT_CHANGE_FIRST_PLACE(Of.FIELDS);

  /** What stands beneath the word. */
  public enum Of {
    YES_NO,
    OPTIONS,
    ROWS,
    FIELDS
  }

  private final Of of;

  ExpectWord(Of of) {
    this.of = of;
  }

  public Of of() {
    return of;
  }

  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  public static Optional<ExpectWord> of(String word) {
    return Arrays.stream(values())
        .filter(expect -> Names.key(expect.word()).equals(Names.key(word)))
        .findFirst();
  }

  public static List<String> words() {
    return Arrays.stream(values()).map(ExpectWord::word).toList();
  }
}
