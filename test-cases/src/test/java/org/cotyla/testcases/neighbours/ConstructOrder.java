package org.cotyla.testcases.neighbours;

import java.util.Map;

/**
 * How much bone loss a construct answers, so that one can be called lesser than another.
 *
 * <ol start="1">
 *   <li>host bone alone holds the cup, or a contained bed that is filled with graft;
 *   <li>host bone alone as well, but a cup of another size or shape reaches for more of it;
 *   <li>something beside the cup carries: an augment, a bulk graft, or a plate that closes a break
 *       between columns that are there;
 *   <li>the defect or the break is bridged from ilium to ischium, or wedged apart;
 *   <li>a device is made for what is left of all three bones.
 * </ol>
 *
 * <p>Two stand outside: staging answers infection, or that nothing else can be had; keeping the cup
 * answers that it is fixed and well placed, whatever the bone behind it.
 */
final class ConstructOrder {

  private static final Map<String, Integer> RUNGS =
      Map.ofEntries(
          Map.entry("hemispherical cup", 1),
          Map.entry("extra-large cup", 2),
          Map.entry("impaction grafting with cemented cup", 1),
          Map.entry("oblong cup", 2),
          Map.entry("cup with porous metal augments", 3),
          Map.entry("structural allograft with cup", 3),
          Map.entry("antiprotrusio cage with graft", 4),
          Map.entry("cup-cage", 4),
          Map.entry("column plate with cup", 3),
          Map.entry("distraction with cup and augments", 4),
          Map.entry("custom triflange", 5));

  private ConstructOrder() {}

  /** Whether the construct answers less bone loss than the other. */
  static boolean isLesser(String construct, String than) {
    return RUNGS.containsKey(construct)
        && RUNGS.containsKey(than)
        && RUNGS.get(construct) < RUNGS.get(than);
  }
}
