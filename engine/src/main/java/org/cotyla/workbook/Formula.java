package org.cotyla.workbook;

import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;

/** The little that is asked of a spreadsheet formula, which is never worked out here. */
final class Formula {

  private static final Pattern TEXT = Pattern.compile("\"[^\"]*\"");

  /** A workbook in square brackets; a table's column in brackets stands right after its name. */
  private static final Pattern OTHER_WORKBOOK =
      Pattern.compile("(?<![\\p{L}\\p{N}_.\\[\\]])\\[[^\\[\\]@#]+\\]['\\p{L}\\p{N}_!]");

  private static final Pattern WORD = Pattern.compile("[^\\p{L}\\p{N}_.\\\\]+");

  private Formula() {}

  /** Whether it reads another workbook, itself or by a name that does. */
  static boolean linksOut(String formula, Set<String> linkingNames) {
    String code = TEXT.matcher(formula).replaceAll("\"\"");
    if (OTHER_WORKBOOK.matcher(code).find()) {
      return true;
    }
    return !linkingNames.isEmpty()
        && WORD.splitAsStream(code.toLowerCase(Locale.ROOT)).anyMatch(linkingNames::contains);
  }
}
