package org.cotyla.testcases.house;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.cotyla.protocol.Field;

/**
 * Complete invented cases whose bone hangs together, one class as often as another, while patient,
 * biology, stability, implants and what is to hand are drawn finding by finding.
 */
public final class PlausibleCases {

  private static final String BONE = "2 Bone on films and CT";

  private PlausibleCases() {}

  /** The case of a seed; two in five are in theatre. */
  public static OrdinaryCase drawn(long seed) {
    Draw draw = new Draw(seed);
    OrdinaryCase hard = HardCases.drawn(seed);
    Map<String, Object> bone = new HashMap<>(ordinaryBone());
    bone.putAll(DrawnBone.of(draw.oneOf(List.of(DefectPicture.values())), draw));
    if (draw.percent(15)) {
      bone.put("column fracture line", "both columns");
      bone.put("break onset", draw.oneOf("recent", "long standing"));
    }
    OrdinaryCase drawn = hard.with(bone);
    return hard.isInTheatre() ? drawn.with(asPlanned(drawn)) : drawn;
  }

  private static Map<String, Object> ordinaryBone() {
    Map<String, Object> bone = new HashMap<>();
    for (Field field : House.engine().protocol().givenFields()) {
      Object value = OrdinaryFindings.PLANNING.get(field.name());
      if (field.group().equals(BONE) && value != null) {
        bone.put(field.name(), value);
      }
    }
    return bone;
  }

  private static Map<String, Object> asPlanned(OrdinaryCase drawn) {
    return Map.of(
        "theatre defect class", "as planned",
        "break in theatre", "none",
        "host bone contact in theatre", drawn.get("host bone contact"));
  }
}
