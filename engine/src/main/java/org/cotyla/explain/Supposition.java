package org.cotyla.explain;

import java.util.Map;
import java.util.Optional;
import org.cotyla.finding.Case;
import org.cotyla.finding.Given;
import org.cotyla.issue.Place;

/**
 * A finding supposed to be otherwise than a case states it.
 *
 * @param field the field by its name as given
 * @param given what is supposed of it; nothing when it is supposed not to be known
 * @param place where faults of it are said to be
 */
public record Supposition(String field, Optional<Given> given, Place place) {

  /** A supposition that is found by its field's name. */
  public Supposition(String field, Optional<Given> given) {
    this(field, given, new Place.Whole("change of `" + field + "`"));
  }

  /**
   * The field is supposed to have that value.
   *
   * @param value a number, a text, a boolean, a date or a {@link Given}
   * @throws IllegalArgumentException when it is none of these
   */
  public static Supposition of(String field, Object value) {
    Case.Finding finding = Case.of(Map.of(field, value)).findings().get(0);
    return new Supposition(field, Optional.of(finding.given()));
  }

  /** The field is supposed not to be known. */
  public static Supposition unknown(String field) {
    return new Supposition(field, Optional.empty());
  }

  /**
   * What a person wrote, as forms know it: {@code 34}, {@code 3.4 cm}, {@code 70..80}, {@code 2A or
   * 2B}; nothing makes the field unknown.
   */
  public static Supposition written(String field, String text) {
    return text.isBlank()
        ? unknown(field)
        : new Supposition(field, Optional.of(new Given.Written(text.strip(), Optional.empty())));
  }
}
