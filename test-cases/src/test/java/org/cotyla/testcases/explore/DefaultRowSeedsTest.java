package org.cotyla.testcases.explore;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Generated protocols whose default rows once led what matters astray: a list's default entry was
 * taken for certain, and for another entry than a row's with the same words. Source: this project's
 * own engine.
 */
@DisplayName("What a default row gives, where it may be that no row matches")
class DefaultRowSeedsTest {

  @ParameterizedTest(name = "protocol {0}")
  @DisplayName("is proven to change nothing only where it is the same by every filling")
  @ValueSource(longs = {152, 1259, 1347, 1907, 2508, 665_587})
  void proofs(long seed) {
    new WhatMattersLawTest().proofsHold(seed);
  }

  @ParameterizedTest(name = "protocol {0}")
  @DisplayName("is told apart from what a row gives only where the two differ")
  @ValueSource(longs = {519, 1637, 3171, 3345})
  void witnesses(long seed) {
    new WhatMattersLawTest().witnessesHold(seed);
  }

  @ParameterizedTest(name = "protocol {0}")
  @DisplayName("draws a line near a number only where the entry changes")
  @ValueSource(longs = 26_792)
  void lines(long seed) {
    new MarginsLawTest().nearest(seed);
  }
}
