package org.cotyla.testcases.trade;

import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.cotyla.testcases.house.DefectPicture;
import org.cotyla.testcases.house.Draw;
import org.cotyla.testcases.house.DrawnBone;
import org.cotyla.testcases.house.OrdinaryCase;

/**
 * An invented year's worth of many departments: {@value #SIZE} complete revisions without infection
 * in which the socket is renewed, as a busy service might meet them.
 *
 * <p>Every share is invented, and chosen for plausibility only. Bone loss: class 1 in 30, 2A in 30,
 * 2B in 28, 2C in 6, 3A in 4 and 3B in 2 of a hundred. What goes with it is drawn around the
 * textbook picture of its class. Patients are about 70, 1 in 100 had radiotherapy, 1 in 200 has
 * tumour in the socket; porous metal is to hand in 92, a bone bank in 85, a custom device can be
 * had in 70 of a hundred. Nothing here was measured.
 */
final class OrdinaryMix {

  static final int SIZE = 3000;
  private static final int SEED = 1911;

  private OrdinaryMix() {}

  static List<OrdinaryCase> cases() {
    return IntStream.range(0, SIZE).mapToObj(i -> drawn(new Draw(SEED + 7919L * i))).toList();
  }

  private static OrdinaryCase drawn(Draw draw) {
    String sex = draw.oneOf("female", "male");
    OrdinaryCase drawn = OrdinaryCase.planned().with(DrawnBone.of(defect(draw), draw));
    return drawn
        .with(biology(draw))
        .with(patient(draw, sex))
        .with(hip(draw))
        .with(sizes(draw, sex, drawn))
        .with(toHand(draw));
  }

  private static DefectPicture defect(Draw draw) {
    int share = draw.between(1, 100);
    if (share <= 30) {
      return DefectPicture.CLASS_1;
    }
    if (share <= 60) {
      return DefectPicture.CLASS_2A;
    }
    if (share <= 88) {
      return DefectPicture.CLASS_2B;
    }
    if (share <= 94) {
      return DefectPicture.CLASS_2C;
    }
    return share <= 98 ? DefectPicture.CLASS_3A : DefectPicture.CLASS_3B;
  }

  private static Map<String, Object> biology(Draw draw) {
    return Map.of(
        "pelvic irradiation", draw.percent(1),
        "pelvic metastasis", draw.between(1, 200) == 1,
        "metabolic bone disease", draw.percent(4),
        "socket osteonecrosis", draw.percent(1),
        "inflammatory arthritis", draw.percent(5),
        "bone hardness", draw.percent(8) ? "sclerotic" : draw.mostly(80, "normal", "soft"));
  }

  private static Map<String, Object> patient(Draw draw, String sex) {
    int age = draw.around(70, 11, 32, 95);
    return Map.of(
        "sex",
        sex,
        "age",
        age,
        "life expectancy",
        draw.around(Math.max(3, 89 - age), 4, 1, 50),
        "demand",
        age > 80 ? draw.mostly(60, "low", "moderate") : draw.mostly(80, "moderate", "high"),
        "frailty",
        age > 80 ? draw.oneOf("fit", "vulnerable", "frail") : draw.mostly(90, "fit", "vulnerable"),
        "cognitive impairment",
        draw.percent(age > 80 ? 15 : 3),
        "neuromuscular disease",
        draw.mostly(95, "none", draw.oneOf("parkinson disease", "spasticity", "other")));
  }

  private static Map<String, Object> hip(Draw draw) {
    return Map.of(
        "reason for revision",
            draw.mostly(65, "loosening", draw.oneOf("wear", "dislocation", "malposition", "pain")),
        "cup fixation", draw.mostly(85, "loose", "uncertain"),
        "earlier cup", draw.mostly(70, "uncemented", "cemented"),
        "earlier approach", draw.percent(60) ? "posterior" : draw.oneOf("lateral", "anterior"),
        "cup position", draw.mostly(85, "well placed", "badly placed"),
        "years since last operation", draw.between(0, 22),
        "earlier revisions", draw.mostly(80, 0, draw.between(1, 3)),
        "abductors", draw.mostly(82, "working", draw.mostly(75, "weak", "absent")),
        "prior dislocations", draw.mostly(82, 0, draw.between(1, 5)),
        "leg lengthening planned", draw.around(10, 10, -15, 55));
  }

  private static Map<String, Object> sizes(Draw draw, String sex, OrdinaryCase bone) {
    int nativeSize = sex.equals("female") ? draw.around(47, 2, 42, 53) : draw.around(53, 2, 47, 60);
    int growth = bone.number("hip centre migration") / 6;
    int frontToBack = nativeSize + draw.between(3, 6) + growth / 2;
    int cup = frontToBack + draw.between(0, 3);
    return Map.of(
        "native diameter", nativeSize,
        "ap dimension", frontToBack,
        "vertical dimension", frontToBack + draw.between(0, 3) + growth,
        "planned cup diameter", cup,
        "planned head diameter", draw.mostly(65, 36, draw.mostly(75, 32, 28)));
  }

  private static Map<String, Object> toHand(Draw draw) {
    return Map.of(
        "porous metal to hand", draw.percent(92),
        "bone bank", draw.percent(85),
        "custom device obtainable", draw.percent(70),
        "days until operation", draw.between(10, 150),
        "date can move", draw.percent(90));
  }
}
