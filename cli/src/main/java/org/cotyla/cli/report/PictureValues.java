package org.cotyla.cli.report;

import java.util.Optional;
import org.cotyla.expression.Expression;
import org.cotyla.expression.Scope;
import org.cotyla.protocol.Picture;
import org.cotyla.protocol.Picture.Part;
import org.cotyla.protocol.Picture.Shown;
import org.cotyla.protocol.PictureRole;
import org.cotyla.value.PossibleValues;

/** What the parts of a picture come to in one answer. */
record PictureValues(Scope scope, Picture picture) {

  Optional<PossibleValues> value(PictureRole role) {
    return picture.part(role).flatMap(this::value);
  }

  Optional<PossibleValues> value(Part part) {
    return formula(part).map(formula -> formula.evaluate(scope));
  }

  static Optional<Expression> formula(Part part) {
    return part.shows() instanceof Shown.Worked worked
        ? Optional.of(worked.expression())
        : Optional.empty();
  }

  Optional<NumberRange> range(PictureRole role) {
    return value(role).flatMap(NumberRange::of);
  }

  Optional<NumberRange> range(Part part) {
    return value(part).flatMap(NumberRange::of);
  }

  /** The number, when exactly one is possible. */
  Optional<Double> certain(PictureRole role) {
    return range(role).filter(NumberRange::isCertain).map(NumberRange::low);
  }

  String inWords(PictureRole role) {
    return range(role).map(NumberRange::plain).orElse("not known");
  }
}
