package org.cotyla.trial;

/**
 * A case that was tried.
 *
 * @param suite the sheet or folder that it stands in
 * @param name its name there
 * @param because why the expected answer is right; may be empty
 * @param outcome what became of it
 */
public record Tried(String suite, String name, String because, Outcome outcome) {

  public boolean passed() {
    return outcome instanceof Outcome.Passed;
  }
}
