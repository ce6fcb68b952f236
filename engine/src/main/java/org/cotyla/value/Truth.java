package org.cotyla.value;

/** Whether a test holds over a set of possible values. */
public enum Truth {
  /** Every possible value satisfies the test. */
  TRUE,
  /** No possible value satisfies it. */
  FALSE,
  /** Some do and some do not, or it cannot be told. */
  OPEN;

  public static Truth of(boolean holds) {
    return holds ? TRUE : FALSE;
  }

  public Truth and(Truth other) {
    if (this == FALSE || other == FALSE) {
      return FALSE;
    }
    return this == TRUE && other == TRUE ? TRUE : OPEN;
  }

  public Truth or(Truth other) {
    return not().and(other.not()).not();
  }

  public Truth not() {
    return switch (this) {
      case TRUE -> FALSE;
      case FALSE -> TRUE;
      case OPEN -> OPEN;
    };
  }

  /** The truth over two alternatives, one of which is the case. */
  public Truth either(Truth other) {
    return this == other ? this : OPEN;
  }
}
