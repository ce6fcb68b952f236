package org.cotyla.privacy;

import java.util.regex.Pattern;
import org.cotyla.issue.Issues;
import org.cotyla.issue.Place;

/**
 * What may be kept of a case and of who decided, so that nothing in it identifies a person. What
 * looks like a date or a long number is refused, since it is most likely one that does.
 */
public final class Wording {

  private static final int LONGEST_REFERENCE = 32;
  private static final int LONGEST_TEXT = 300;
  private static final int LONGEST_ROLE = 60;
  private static final int MOST_DIGITS = 8;

  private static final Pattern REFERENCE =
      Pattern.compile("[A-Za-z0-9](?:[A-Za-z0-9-]*[A-Za-z0-9])?");
  private static final Pattern ROLE = Pattern.compile("\\p{L}[\\p{L} -]*\\p{L}");
  private static final Pattern LONG_NUMBER = Pattern.compile("\\p{Nd}{6,}");

  /** As people group the digits of a number: 943 476 5919. */
  private static final Pattern GROUPED_NUMBER =
      Pattern.compile("\\p{Nd}(?:[ ./\\u00a0\\u2009\\u202f-]?\\p{Nd}){6,}");

  private static final Pattern DATE =
      Pattern.compile(
          "(?<!\\p{Nd})(?:\\p{Nd}{4}[-./ ]\\p{Nd}{1,2}[-./ ]\\p{Nd}{1,2}"
              + "|\\p{Nd}{1,2}[-./ ]\\p{Nd}{1,2}[-./ ](?:\\p{Nd}{4}|\\p{Nd}{2}))(?!\\p{Nd})");
  private static final String MONTH =
      "(?:jan|feb|mar|apr|may|jun|jul|aug|sep|oct|nov|dec)\\p{L}*\\.?";
  private static final Pattern NAMED_DATE =
      Pattern.compile(
          "(?i)\\b(?:\\p{Nd}{1,2}(?:st|nd|rd|th|\\.)?[ -]*"
              + MONTH
              + "|"
              + MONTH
              + "[ -]*\\p{Nd}{1,2}(?:st|nd|rd|th)?),?[ -]*(?:\\p{Nd}{4}|\\p{Nd}{2})\\b");

  private Wording() {}

  /** Whether it is a local reference of a case that says nothing of a person. */
  public static boolean isReference(String text) {
    Issues issues = new Issues();
    reference(text, issues);
    return !issues.hasErrors();
  }

  /** Whether it is a role, and not a person. */
  public static boolean isRole(String text) {
    return ROLE.matcher(text).matches() && text.length() <= LONGEST_ROLE;
  }

  /** Says what is wrong with the local reference of a case. */
  public static void reference(String reference, Issues issues) {
    Place place = new Place.Whole("case reference");
    boolean sound =
        REFERENCE.matcher(reference).matches() && reference.length() <= LONGEST_REFERENCE;
    if (!sound) {
      issues.error(
          "L010",
          place,
          "`" + cut(reference) + "` is not a case reference",
          "write letters, digits and hyphens, at most " + LONGEST_REFERENCE + ": R-2026-0042");
    } else if (identifies(reference)
        || reference.chars().filter(Character::isDigit).count() > MOST_DIGITS) {
      issues.error(
          "L011",
          place,
          "it looks like a date of birth or the number of a person",
          "use a number of your own that says nothing outside your house: at most 5 digits in a"
              + " row, 8 in all");
    }
  }

  /** Says what is wrong with a role. */
  public static void role(String role, Issues issues) {
    if (!isRole(role)) {
      issues.error(
          "L012",
          new Place.Whole("role"),
          "`" + cut(role) + "` is not a role",
          "write what somebody is, never who: letters, spaces and hyphens, at most "
              + LONGEST_ROLE);
    }
  }

  /** Says what is wrong with free words. */
  public static void text(String what, String text, Issues issues) {
    Place place = new Place.Whole(what);
    boolean control = text.codePoints().anyMatch(Character::isISOControl);
    if (text.isBlank() || text.length() > LONGEST_TEXT || control) {
      issues.error(
          "L013",
          place,
          control ? "the text has control characters" : "the text is empty or too long",
          "one or two sentences, at most " + LONGEST_TEXT + " characters, and nobody's name");
    } else if (identifies(text) || GROUPED_NUMBER.matcher(text).find()) {
      issues.error(
          "L014",
          place,
          "the text has a date or a long number in it, which may be that of a person",
          "say it without, and name nobody");
    }
  }

  private static boolean identifies(String text) {
    return LONG_NUMBER.matcher(text).find()
        || DATE.matcher(text).find()
        || NAMED_DATE.matcher(text).find();
  }

  private static String cut(String text) {
    return text.length() <= LONGEST_ROLE ? text : text.substring(0, LONGEST_ROLE) + "...";
  }
}
