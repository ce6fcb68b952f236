package org.cotyla.protocol;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.cotyla.name.Names;

/** A kind of picture that a report can draw, with the parts that it is made of. */
public enum PictureKind {
  /** A round opening seen from its front, read by the hours of a clock: what of it is missing. */
  CLOCK_FACE(
      PictureRole.SECTOR_FROM,
      PictureRole.SECTOR_TO,
      PictureRole.ANTICLOCKWISE,
      PictureRole.INNER_ANGLE,
      PictureRole.CAP_ANGLE,
      PictureRole.SHARE,
      PictureRole.SHARE_LINE,
      PictureRole.FIGURE),
  /** A point of two numbers against zones in which it should lie. */
  ZONE_CHART(
      PictureRole.ACROSS,
      PictureRole.UP,
      PictureRole.ZONE_LEFT,
      PictureRole.ZONE_RIGHT,
      PictureRole.ZONE_BOTTOM,
      PictureRole.ZONE_TOP,
      PictureRole.FIGURE),
  /** What a number would be for every value of one finding, the others being as in the case. */
  CURVE(
      PictureRole.FINDING,
      PictureRole.FROM,
      PictureRole.TO,
      PictureRole.STEP,
      PictureRole.UP,
      PictureRole.LINE,
      PictureRole.FIGURE),
  /** What is done first, then, and then, and what leads from one to the next. */
  FLOW(PictureRole.PLAN, PictureRole.TURN, PictureRole.FIGURE),
  /** Lists under one title, with figures that go with them. */
  LISTS(PictureRole.LIST, PictureRole.FIGURE);

  private final List<PictureRole> roles;

  PictureKind(PictureRole... roles) {
    this.roles = List.of(roles);
  }

  /** The parts that such a picture can have. */
  public List<PictureRole> roles() {
    return roles;
  }

  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  public static Optional<PictureKind> of(String word) {
    return Arrays.stream(values())
        .filter(kind -> Names.key(kind.word()).equals(Names.key(word)))
        .findFirst();
  }

  public static List<String> words() {
    return Arrays.stream(values()).map(PictureKind::word).toList();
  }
}
