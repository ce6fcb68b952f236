package org.cotyla.protocol;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.cotyla.name.Names;

/** What something is for a picture. */
public enum PictureRole {
  /** The hour at which the missing sector begins, 0 to 12. */
  SECTOR_FROM(Wants.NUMBER, Times.ONCE),
  /** The hour at which the missing sector ends, 0 to 12. */
  SECTOR_TO(Wants.NUMBER, Times.ONCE),
  /** Whether the sector goes anticlockwise from its beginning to its end. */
  ANTICLOCKWISE(Wants.YES_NO, Times.AT_MOST_ONCE),
  /** How deep the sector reaches: degrees from the pole, 0 there and 90 at the rim. */
  INNER_ANGLE(Wants.NUMBER, Times.AT_MOST_ONCE),
  /** The half-angle of a round patch that is missing at the pole, in degrees. */
  CAP_ANGLE(Wants.NUMBER, Times.AT_MOST_ONCE),
  /** A percentage, drawn as a bar from 0 to 100. */
  SHARE(Wants.NUMBER, Times.ANY),
  /** A line across the bars. */
  SHARE_LINE(Wants.NUMBER, Times.ANY),
  /** The number that goes across. */
  ACROSS(Wants.NUMBER, Times.ONCE),
  /** The number that goes up. */
  UP(Wants.NUMBER, Times.ONCE),
  /** The left side of the zone that the label names. */
  ZONE_LEFT(Wants.NUMBER, Times.ANY),
  ZONE_RIGHT(Wants.NUMBER, Times.ANY),
  ZONE_BOTTOM(Wants.NUMBER, Times.ANY),
  ZONE_TOP(Wants.NUMBER, Times.ANY),
  /** The finding that is varied. */
  FINDING(Wants.FINDING, Times.ONCE),
  /** The least value that it is given. */
  FROM(Wants.NUMBER, Times.ONCE),
  /** The greatest value that it is given. */
  TO(Wants.NUMBER, Times.ONCE),
  /** From one value to the next. */
  STEP(Wants.NUMBER, Times.ONCE),
  /** A level line. */
  LINE(Wants.NUMBER, Times.ANY),
  /** A plan, in order. */
  PLAN(Wants.ANYTHING, Times.AT_LEAST_ONCE),
  /** A list of what leads from the first plan to the second, then from that to the third. */
  TURN(Wants.LIST, Times.ANY),
  /** A list. */
  LIST(Wants.LIST, Times.AT_LEAST_ONCE),
  /** A value that is written beside the picture. */
  FIGURE(Wants.ANYTHING, Times.ANY);

  /** What a part must be. */
  public enum Wants {
    NUMBER,
    YES_NO,
    ANYTHING,
    /** A given number. */
    FINDING,
    /** The result of a decision that gives a list. */
    LIST
  }

  /** How often a part may stand in one picture. */
  public enum Times {
    ONCE,
    AT_MOST_ONCE,
    AT_LEAST_ONCE,
    ANY
  }

  private final Wants wants;
  private final Times times;

  PictureRole(Wants wants, Times times) {
    this.wants = wants;
    this.times = times;
  }

  public Wants wants() {
    return wants;
  }

  public boolean isRequired() {
    return times == Times.ONCE || times == Times.AT_LEAST_ONCE;
  }

  public boolean mayRepeat() {
    return times == Times.ANY || times == Times.AT_LEAST_ONCE;
  }

  /** The four sides that together make a zone. */
  public static List<PictureRole> zoneSides() {
    return List.of(ZONE_LEFT, ZONE_RIGHT, ZONE_BOTTOM, ZONE_TOP);
  }

  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  public static Optional<PictureRole> of(String word, List<PictureRole> among) {
    return among.stream()
        .filter(role -> Names.key(role.word()).equals(Names.key(word)))
        .findFirst();
  }
}
