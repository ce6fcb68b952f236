package org.cotyla.testcases.house;

import java.util.Map;

/**
 * The textbook picture of each class of bone loss: measures well inside the criteria, and the
 * findings that go with them. The measures are those of the published criteria (PAP-TABLE-2021,
 * CLASS-TABLE-2020; the limits in millimetres PAPROSKY-1994, from memory); the rest is invented.
 */
public enum DefectPicture {
  CLASS_1("1", Map.of()),
  CLASS_2A(
      "2A",
      Map.of(
          "hip centre migration", 15,
          "migration direction", "superomedial",
          "ischial lysis", 3,
          "host bone contact", 68)),
  CLASS_2B(
      "2B",
      Map.of(
          "hip centre migration", 18,
          "migration direction", "superolateral",
          "ischial lysis", 4,
          "rim loss", 2,
          "host bone contact", 60)),
  CLASS_2C(
      "2C",
      Map.of(
          "hip centre migration", 5,
          "migration direction", "medial",
          "teardrop lysis", "severe",
          "köhler line", "broken",
          "medial wall", "absent",
          "host bone contact", 60)),
  CLASS_3A(
      "3A",
      Map.of(
          "hip centre migration",
          34,
          "migration direction",
          "superolateral",
          "ischial lysis",
          10,
          "teardrop lysis",
          "moderate",
          "rim loss",
          4,
          "defect contained",
          false,
          "host bone contact",
          45,
          "dome support",
          "partial")),
  CLASS_3B(
      "3B",
      Map.ofEntries(
          Map.entry("hip centre migration", 38),
          Map.entry("migration direction", "superomedial"),
          Map.entry("ischial lysis", 22),
          Map.entry("teardrop lysis", "obliterated"),
          Map.entry("köhler line", "broken"),
          Map.entry("rim loss", 8),
          Map.entry("medial wall", "absent"),
          Map.entry("defect contained", false),
          Map.entry("cavity shape", "irregular"),
          Map.entry("host bone contact", 35),
          Map.entry("dome support", "absent"),
          Map.entry("anterior column", "thinned"),
          Map.entry("posterior column", "thinned")));

  private final String name;
  private final Map<String, Object> findings;

  DefectPicture(String name, Map<String, Object> findings) {
    this.name = name;
    this.findings = findings;
  }

  /** The name of the class. */
  public String className() {
    return name;
  }

  /** The ordinary case with this bone loss. */
  public OrdinaryCase planned() {
    return OrdinaryCase.planned().with(findings);
  }
}
