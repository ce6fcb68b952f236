package org.cotyla.issue;

/** Where an issue lies, in words that a person can follow. */
public sealed interface Place permits CellRef, Place.InCase, Place.InFile, Place.Whole {

  /** The place as it is printed before the message. */
  String plain();

  /** A field of a case, by its name as given; empty for the case as a whole. */
  record InCase(String field) implements Place {
    @Override
    public String plain() {
      return field.isEmpty() ? "case" : "case field `" + field + "`";
    }
  }

  /** A place in one of several files that were given. */
  record InFile(String file, Place place) implements Place {
    @Override
    public String plain() {
      return file + ": " + place.plain();
    }
  }

  /** A whole file or a whole protocol. */
  record Whole(String name) implements Place {
    @Override
    public String plain() {
      return name;
    }
  }
}
