package org.cotyla.cli.text;

/** The sign at the start of a line that tells what kind of line it is. */
enum Mark {
  FOR("+", "\u001B[32m"),
  AGAINST("-", "\u001B[33m"),
  RULED_OUT("x", "\u001B[31m"),
  OPEN("?", "\u001B[36m"),
  WARNING("!", "\u001B[1;31m"),
  ITEM("*", ""),
  NONE("", "");

  private final String sign;
  private final String colour;

  Mark(String sign, String colour) {
    this.sign = sign;
    this.colour = colour;
  }

  String sign() {
    return sign;
  }

  String colour() {
    return colour;
  }
}
