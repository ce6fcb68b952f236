package org.cotyla.dmn;

/** The XML namespaces of DMN 1.5, and the one of what the standard has no place for. */
final class Namespaces {

  static final String MODEL = "https://www.omg.org/spec/DMN/20230324/MODEL/";
  static final String FEEL = "https://www.omg.org/spec/DMN/20230324/FEEL/";
  static final String DIAGRAM = "https://www.omg.org/spec/DMN/20230324/DMNDI/";
  static final String BOUNDS = "http://www.omg.org/spec/DMN/20180521/DC/";
  static final String SHAPES = "http://www.omg.org/spec/DMN/20180521/DI/";

  /** Entries of the workbook that a DMN engine does not need, as extension elements. */
  static final String WORKBOOK = "urn:cotyla:dmn:1";

  private Namespaces() {}
}
