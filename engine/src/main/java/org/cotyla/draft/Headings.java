package org.cotyla.draft;

import java.util.List;

/** The headings and keys of the workbook format, in the order in which they are usually written. */
public final class Headings {

  public static final List<String> ABOUT =
      List.of(
          "identifier",
          "title",
          "version",
          "status",
          "effective from",
          "review due",
          "owner",
          "approved by",
          "caution",
          "stages");
  public static final List<String> FIELDS =
      List.of(
          "name",
          "kind",
          "type",
          "unit",
          "allowed",
          "usual",
          "stage",
          "group",
          "meaning",
          "source",
          "measurement error");
  public static final List<String> OPTIONS =
      List.of("ranking", "option", "meaning", "needs", "lead time", "source");
  public static final List<String> CALCULATIONS =
      List.of("name", "expression", "unit", "meaning", "source");
  public static final List<String> SOURCES = List.of("key", "citation", "year", "certainty");
  public static final List<String> CHANGES =
      List.of("version", "date", "author role", "what changed", "why", "retired ids");
  public static final List<String> PICTURES =
      List.of("picture", "kind", "page", "role", "shows", "label");
  public static final List<String> REASONS = List.of("reason", "meaning");
  public static final List<String> OUTCOMES = List.of("outcome", "counts", "meaning");
  public static final List<String> DECISION_HEAD =
      List.of("decision", "hit policy", "asks", "ranks", "shown as");
  public static final List<String> DECISION_COLUMNS =
      List.of("id", "when", "then", "because", "source");
  public static final List<String> SAFEGUARDS =
      List.of("id", "when", "must", "what", "because", "source");
  public static final List<String> ACCEPTED = List.of("code", "about", "because", "by", "date");
  public static final List<String> CASES = List.of("case", "stage", "given", "expect", "because");

  private Headings() {}
}
