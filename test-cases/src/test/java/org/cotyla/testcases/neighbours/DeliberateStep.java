package org.cotyla.testcases.neighbours;

import java.util.List;
import java.util.Set;
import java.util.function.BiPredicate;
import org.cotyla.testcases.house.Answer;

/**
 * A step to a lesser construct that the protocol takes on purpose when the bone becomes worse.
 *
 * @param from what led before
 * @param to what may lead after
 * @param when what holds of the answers before and after
 * @param reason why the protocol does so
 */
record DeliberateStep(
    Set<String> from, Set<String> to, BiPredicate<Answer, Answer> when, String reason) {

  private static final String AUGMENTS = "cup with porous metal augments";
  private static final String CUP_CAGE = "cup-cage";
  private static final String CAGE = "antiprotrusio cage with graft";
  private static final String TRIFLANGE = "custom triflange";

  /** All of them; the law of worse bone allows these and no others. */
  static List<DeliberateStep> all() {
    return List.of(
        new DeliberateStep(
            Set.of(CUP_CAGE),
            Set.of(AUGMENTS),
            (before, after) -> isRimless2C(before) && !isClass(after, "2C"),
            "A rimless medial defect is bridged because a cup would go inwards; once the loss is up"
                + " and out or up and in, porous metal with augments is the first line."),
        new DeliberateStep(
            Set.of(CUP_CAGE),
            Set.of(AUGMENTS, "impaction grafting with cemented cup"),
            (before, after) -> isClass(before, "1") && isClass(after, "2A"),
            "In class 1 there is nothing for an augment or graft to fill. Where its bone holds no"
                + " plain cup all the same, a cage is left; a cavity can be filled."),
        new DeliberateStep(
            Set.of(CUP_CAGE, TRIFLANGE),
            Set.of(AUGMENTS, CUP_CAGE, CAGE),
            (before, after) -> before.value("bone biology").equals("irradiated"),
            "In irradiated bone each of these holds, and they stand close together: the class, the"
                + " rim and the contact decide among them, not the amount of loss alone."),
        new DeliberateStep(
            Set.of("extra-large cup"),
            Set.of("hemispherical cup"),
            (before, after) -> after.rows().contains("VF-22") || after.rows().contains("VF-23"),
            "A very large cup reams what is left of a column, so without the column the ordinary"
                + " size does less harm."));
  }

  static boolean allows(Answer before, Answer after) {
    return all().stream()
        .anyMatch(
            step ->
                step.from.contains(before.construct())
                    && step.to.contains(after.construct())
                    && step.when.test(before, after));
  }

  private static boolean isClass(Answer answer, String name) {
    return answer.value("defect class").equals(name);
  }

  private static boolean isRimless2C(Answer answer) {
    return isClass(answer, "2C") && answer.value("rim support").equals("compromised");
  }
}
