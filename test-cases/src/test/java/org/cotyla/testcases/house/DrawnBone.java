package org.cotyla.testcases.house;

import java.util.Map;

/** Bone loss drawn around the textbook picture of a class. Every range is invented. */
public final class DrawnBone {

  private DrawnBone() {}

  /** The findings on films and CT that are not as in the ordinary case. */
  public static Map<String, Object> of(DefectPicture picture, Draw draw) {
    return switch (picture) {
      case CLASS_1 -> focal(draw);
      case CLASS_2A -> cavity(draw);
      case CLASS_2B -> upAndOut(draw);
      case CLASS_2C -> medial(draw);
      case CLASS_3A -> severeUpAndOut(draw);
      case CLASS_3B -> severeUpAndIn(draw);
    };
  }

  private static Map<String, Object> focal(Draw draw) {
    return Map.of(
        "hip centre migration", 0,
        "ischial lysis", draw.between(0, 3),
        "host bone contact", draw.between(65, 95),
        "rim loss", draw.between(0, 1));
  }

  private static Map<String, Object> cavity(Draw draw) {
    return Map.of(
        "hip centre migration", draw.between(4, 28),
        "migration direction", draw.mostly(80, "superomedial", "superior"),
        "ischial lysis", draw.between(0, 6),
        "teardrop lysis", draw.oneOf("none", "mild"),
        "host bone contact", draw.between(54, 88),
        "rim loss", draw.between(0, 1),
        "dome support", draw.mostly(85, "good", "partial"),
        "cavity shape", draw.mostly(75, "spherical", "irregular"));
  }

  private static Map<String, Object> upAndOut(Draw draw) {
    return Map.of(
        "hip centre migration", draw.between(5, 30),
        "migration direction", "superolateral",
        "ischial lysis", draw.between(0, 6),
        "teardrop lysis", draw.oneOf("none", "mild"),
        "host bone contact", draw.between(50, 78),
        "rim loss", draw.between(1, 3),
        "defect contained", draw.percent(75),
        "dome support", draw.mostly(70, "good", "partial"),
        "cavity shape", draw.mostly(60, "spherical", draw.oneOf("oblong", "irregular")));
  }

  private static Map<String, Object> medial(Draw draw) {
    return Map.of(
        "hip centre migration", draw.between(0, 15),
        "migration direction", "medial",
        "ischial lysis", draw.between(0, 6),
        "teardrop lysis", draw.oneOf("moderate", "severe"),
        "köhler line", draw.mostly(80, "broken", "reached"),
        "medial wall", draw.oneOf("thinned", "absent"),
        "host bone contact", draw.between(50, 75),
        "rim loss", draw.mostly(80, draw.between(0, 2), draw.between(4, 6)));
  }

  private static Map<String, Object> severeUpAndOut(Draw draw) {
    return Map.of(
        "hip centre migration", draw.between(31, 45),
        "migration direction", "superolateral",
        "ischial lysis", draw.between(4, 14),
        "teardrop lysis", "moderate",
        "host bone contact", draw.between(35, 62),
        "rim loss", draw.between(3, 5),
        "defect contained", draw.percent(35),
        "dome support", draw.oneOf("partial", "absent"),
        "posterior column", draw.mostly(70, "intact", "thinned"),
        "cavity shape", draw.oneOf("spherical", "oblong", "irregular"));
  }

  private static Map<String, Object> severeUpAndIn(Draw draw) {
    boolean parted = draw.percent(30);
    return Map.ofEntries(
        Map.entry("hip centre migration", draw.between(32, 60)),
        Map.entry("migration direction", "superomedial"),
        Map.entry("ischial lysis", draw.between(15, 35)),
        Map.entry("teardrop lysis", "obliterated"),
        Map.entry("köhler line", "broken"),
        Map.entry("medial wall", "absent"),
        Map.entry("host bone contact", draw.between(10, 42)),
        Map.entry("rim loss", draw.between(6, 9)),
        Map.entry("defect contained", draw.percent(10)),
        Map.entry("dome support", draw.oneOf("partial", "absent")),
        Map.entry("anterior column", draw.oneOf("intact", "thinned", "lost")),
        Map.entry("posterior column", draw.oneOf("thinned", "lost")),
        Map.entry("cavity shape", "irregular"),
        Map.entry("column fracture line", parted ? "both columns" : "none"),
        Map.entry("break onset", parted ? "long standing" : "none"));
  }
}
