package org.cotyla.check;

/** Told how far a long piece of work has come; may be called from several threads. */
@FunctionalInterface
public interface Progress {

  /**
   * @param done how many parts are done
   * @param total of how many
   */
  void at(int done, int total);

  static Progress untold() {
    return (done, total) -> {};
  }
}
