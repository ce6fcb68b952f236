package org.cotyla.retrospective;

import java.util.Optional;

/**
 * A column and what it is taken for.
 *
 * @param index its place, counted from 0
 * @param heading its heading
 * @param meaning what it says
 * @param unit the UCUM code of the unit of its numbers, when it is another than the field's
 * @param found how that was come by
 */
public record Column(
    int index, String heading, Meaning meaning, Optional<String> unit, Found found) {

  /** How a column's meaning was come by. */
  public enum Found {
    BY_NAME("by its name"),
    BY_PART("by part of its name"),
    BY_FILE("by the mapping file");

    private final String words;

    Found(String words) {
      this.words = words;
    }

    public String words() {
      return words;
    }
  }

  boolean isIgnored() {
    return meaning instanceof Meaning.Ignored;
  }
}
