package org.cotyla.expression;

/** How strictly cells are read. */
public enum Dialect {
  /**
   * As people write in a workbook: a choice's values need no quotes, yes and no stand for true and
   * false, a date may be bare, and signs typed by autocorrect are understood. Only S-FEEL.
   */
  KIND,
  /** As the DMN standard has it, with FEEL conditions on the input ({@code ? > 5}). */
  STRICT
}
