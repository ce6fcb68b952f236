package org.cotyla.testcases.conformance;

/** What is asked lies beyond what the engine, or this small reader of DMN files, sets out to do. */
final class OutOfScopeException extends RuntimeException {

  private static final long serialVersionUID = 1L;

  OutOfScopeException(String reason) {
    super(reason);
  }
}
